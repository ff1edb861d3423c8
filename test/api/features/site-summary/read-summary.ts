/** The summary of a site read by the fields that callers rely on. */
import { z } from 'zod';
import type { AppUnderTest } from '../../app-under-test.ts';
import { answered } from '../../stocked-app.ts';

const record = z.object({ id: z.string(), name: z.string() });
const saved = z.object({
  setting: z.number(),
  annualEnergySaving: z.number(),
  annualCostSaving: z.number().nullable(),
});
const attention = z.object({
  annualHours: z.number(),
  annualParts: z.number(),
  annualCost: z.number().nullable(),
});

const summary = z.object({
  counts: z.object({
    loops: z.int(),
    scheduled: z.int(),
    withoutPump: z.int(),
    withoutRequirement: z.int(),
    unsolved: z.int(),
    installedPumps: z.int(),
    storedPumps: z.int(),
  }),
  power: z.number(),
  annualEnergy: z.number(),
  annualCost: z.number().nullable(),
  currency: z.string(),
  belowRequired: z.object({
    count: z.int(),
    loops: z.array(
      z.object({
        loop: record,
        outlet: z.string(),
        flow: z.number(),
        requiredFlow: z.number(),
        margin: z.number(),
        phase: z.string().nullable(),
      }),
    ),
  }),
  canTurnDown: z.object({
    count: z.int(),
    loops: z.array(saved.extend({ loop: record, installedSetting: z.number() })),
  }),
  upkeep: attention.extend({ service: attention, tasks: attention }),
  largestSavings: z.array(
    saved.extend({
      loop: record,
      kind: z.enum(['setting', 'pump']),
      pump: record.nullable(),
      count: z.int(),
      purchaseCost: z.number().nullable(),
      payback: z.object({ simple: z.number().nullable(), beyondTurnDown: z.number().nullable() }),
      turnDown: saved.nullable(),
    }),
  ),
  assumptions: z.object({ year: z.int(), price: z.number().nullable(), tariff: z.string().nullable() }),
  summary: z.string().min(1),
  cautions: z.array(z.object({ code: z.string() })),
});

export const summaryOf = async ({ call }: AppUnderTest, query = '') =>
  answered(summary, await call(`/v1/summary${query}`));
