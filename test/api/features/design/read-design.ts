/** Designs over HTTP, read by the fields that callers rely on. */
import { z } from 'zod';

const pump = z.object({ id: z.string().nullable(), name: z.string() });
const caution = z.object({ code: z.string(), severity: z.string() });

const row = z.object({
  candidate: z.int(),
  pump,
  count: z.int(),
  setting: z.number(),
  flow: z.number(),
  requiredHead: z.number(),
  head: z.number(),
  power: z.number(),
  annualEnergy: z.number(),
  annualCost: z.number(),
  presentValue: z.number(),
  pumpCost: z.number(),
  energyCost: z.number(),
  pipeCost: z.number(),
  trimCost: z.number(),
});

const best = row.extend({
  runs: z.array(
    z.object({
      pointer: z.string(),
      pipe: z.union([z.string(), z.object({ insideDiameter: z.number() })]),
      length: z.number(),
      velocity: z.number(),
      head: z.number(),
      cost: z.number(),
    }),
  ),
  trims: z.array(z.object({ pointer: z.string(), head: z.number().nullable(), kv: z.number().nullable() })),
  sizeChanges: z.array(
    z.object({
      pointer: z.string(),
      direction: z.enum(['smaller', 'larger']),
      candidate: z.int().optional(),
      cost: z.number().optional(),
      saving: z.number().optional(),
      presentValue: z.number().optional(),
    }),
  ),
  closeTo: z.array(z.int()),
  uncertainty: z.object({ power: z.object({ low: z.number(), high: z.number() }) }),
  npsh: z.object({ available: z.number() }),
  notChecked: z.array(z.string()),
  cautions: z.array(caution),
  loop: z.record(z.string(), z.unknown()),
});

export const designAnswer = z.object({
  best: best.nullable(),
  ranking: z.array(row),
  frontier: z.array(z.object({ head: z.number(), cost: z.number() })),
  rejected: z.array(
    z.object({
      candidate: z.int(),
      reason: z.string(),
      reasons: z.array(z.string()),
      detail: z.string(),
      pointer: z.string().optional(),
    }),
  ),
  solution: z.enum(['optimal', 'bounded']),
  optimalityGap: z.number(),
  counts: z.object({
    candidates: z.int(),
    feasible: z.int(),
    rejected: z.int(),
    lists: z.int(),
  }),
  assumptions: z.object({
    currency: z.string(),
    years: z.int(),
    limits: z.object({ pipeVelocity: z.number().nullable() }),
  }),
  summary: z.string(),
  cautions: z.array(caution),
  basis: z.object({ loop: z.object({ id: z.string().nullable() }).nullable() }),
  units: z.record(z.string(), z.string()),
});

/** The best of an answer that must have one. */
export function bestOf({ best: found, summary }: z.output<typeof designAnswer>): z.output<typeof best> {
  if (found === null) throw new Error(summary);
  return found;
}
