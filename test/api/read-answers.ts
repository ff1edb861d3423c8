/** Computed answers read by the fields that callers rely on. */
import { z } from 'zod';

const caution = z.object({
  code: z.string(),
  severity: z.enum(['note', 'warning', 'danger']),
  detail: z.string().min(1),
  source: z.string().min(1),
  pointer: z.string().optional(),
  value: z.number().optional(),
  limit: z.number().optional(),
  quantity: z.string().optional(),
});

const pump = z.object({ id: z.string().nullable(), name: z.string() });

const outlet = z.object({
  name: z.string(),
  flow: z.number(),
  requiredFlow: z.number().nullable(),
  margin: z.number().nullable(),
  velocity: z.number().nullable(),
});

const trim = z.object({
  branch: z.string(),
  outlets: z.array(z.string()),
  closed: z.boolean(),
  flow: z.number(),
  head: z.number().nullable(),
  lossCoefficient: z.number().nullable(),
  kv: z.number().nullable(),
});

const basis = z.object({
  modelVersion: z.string().min(1),
  loop: z.object({ id: z.string().nullable(), version: z.int().nullable() }).nullable(),
  pumps: z.array(z.object({ id: z.string().nullable(), version: z.int().nullable() })),
});

const interval = z.object({ low: z.number(), high: z.number() });

const duty = z.object({
  candidate: z.int(),
  pump,
  count: z.int(),
  setting: z.number(),
  speed: z.number(),
  flow: z.number(),
  head: z.number(),
  power: z.number(),
  efficiency: z.number(),
  turnover: z.number().nullable(),
  annualEnergy: z.number(),
  annualCost: z.number().nullable(),
  limitingOutlet: z.string().nullable(),
  outlets: z.array(outlet),
  trims: z.array(trim),
  perPump: z.object({ flow: z.number(), power: z.number() }),
  uncertainty: z.object({
    ...{ flow: interval, power: interval, annualEnergy: interval },
    laws: z.object({ power: interval, annualEnergy: interval }),
  }),
  npsh: z.object({ available: z.number(), required: z.number().optional(), ratio: z.number().optional() }),
  suctionPressure: z.number(),
  notChecked: z.array(z.string()),
  cautions: z.array(caution),
});

const units = z.record(z.string(), z.string());

const requiredDuty = z.object({ flow: z.number(), head: z.number(), limitingOutlet: z.string() }).nullable();

export const dutyPointAnswer = duty.extend({
  intersections: z.array(z.object({ flow: z.number(), head: z.number(), stable: z.boolean() })),
  summary: z.string(),
  basis,
  units,
});

export const recommendationAnswer = z.object({
  best: duty.nullable(),
  ranking: z.array(duty),
  rejected: z.array(
    z.object({
      candidate: z.int(),
      pump,
      count: z.int(),
      reason: z.string(),
      reasons: z.array(z.string()).min(1),
      detail: z.string(),
      shortfall: z
        .object({ outlet: z.string(), setting: z.number(), flow: z.number(), requiredFlow: z.number() })
        .nullable(),
    }),
  ),
  counts: z.object({ candidates: z.int(), feasible: z.int(), rejected: z.int() }),
  requiredDuty,
  assumptions: z.object({ price: z.number().nullable(), currency: z.string(), hoursPerDay: z.number() }),
  summary: z.string(),
  cautions: z.array(caution),
  basis,
  units,
});

export const systemCurveAnswer = z.object({
  points: z.array(
    z.object({
      flow: z.number(),
      head: z.number(),
      outlets: z.array(z.object({ name: z.string(), flow: z.number() })),
    }),
  ),
  requiredDuty,
  basis,
  units,
});

export const curvesAnswer = z.object({
  headFit: z.object({
    shape: z.enum(['sum-of-powers', 'piecewise', 'assumed']),
    exponents: z.array(z.int()).optional(),
    coefficients: z.array(z.number()).optional(),
    knots: z.array(z.object({ flow: z.number(), head: z.number(), slope: z.number() })).optional(),
    flowScale: z.number(),
    range: z.object({ min: z.number(), max: z.number() }),
    r2: z.number().optional(),
    standardError: z.number().optional(),
    residuals: z.array(z.number()),
    leaveOneOut: z.number().optional(),
  }),
  powerFit: z.object({
    law: z.enum(['exponent', 'fixed-loss']),
    fixedPower: z.number(),
    exponent: z.number(),
    exponentAssumed: z.boolean(),
    coefficient: z.number(),
    flowTerms: z.array(z.number()),
    standbyPower: z.number(),
    r2: z.number().optional(),
    standardError: z.number().optional(),
  }),
  bestEfficiencyPoint: z.object({ flow: z.number(), head: z.number(), efficiency: z.number() }).nullable(),
  table: z.array(
    z.object({
      setting: z.number(),
      flow: z.number(),
      head: z.number(),
      power: z.number(),
      efficiency: z.number(),
    }),
  ),
  cautions: z.array(caution),
  basis,
});

export const problemAnswer = z.strictObject({
  type: z.string(),
  code: z.string(),
  title: z.string().min(1),
  status: z.int(),
  detail: z.string().min(1),
  instance: z.string(),
  requestId: z.string().min(1),
  errors: z
    .array(
      z
        .strictObject({
          pointer: z.string().optional(),
          parameter: z.string().optional(),
          header: z.string().optional(),
          detail: z.string().min(1),
          line: z.int().optional(),
          limit: z.number().optional(),
          actual: z.number().optional(),
        })
        .refine(
          ({ pointer, parameter, header }) =>
            [pointer, parameter, header].filter((place) => place !== undefined).length === 1,
        ),
    )
    .max(50)
    .optional(),
  limit: z.number().optional(),
  actual: z.number().optional(),
  usedBy: z.array(z.object({ kind: z.string(), id: z.string(), name: z.string() })).optional(),
});
