/** The summary of a site read by the fields that callers rely on. */
import { z } from 'zod';
import type { AppUnderTest } from '../../app-under-test.ts';
import { answered } from '../../stocked-app.ts';

const record = z.object({ id: z.string(), name: z.string() });
const saved = z.object({ setting: z.number(), energySaved: z.number(), costSaved: z.number().nullable() });
const attention = z.object({ hours: z.number(), parts: z.number(), cost: z.number().nullable() });

const summary = z.object({
  loops: z.object({
    total: z.int(),
    scheduled: z.int(),
    withoutPump: z.int(),
    withoutRequirement: z.int(),
    unsolved: z.int(),
  }),
  devices: z.int(),
  storedPumps: z.int(),
  power: z.number(),
  annualEnergy: z.number(),
  annualCost: z.number().nullable(),
  currency: z.string(),
  short: z.object({
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
  aboveNeed: z.object({
    count: z.int(),
    loops: z.array(saved.extend({ loop: record, installedSetting: z.number() })),
  }),
  attention: attention.extend({ service: attention, tasks: attention }),
  savings: z.array(
    saved.extend({
      loop: record,
      kind: z.enum(['setting', 'pump']),
      pump: record.nullable(),
      count: z.int(),
      purchase: z.number().nullable(),
      simplePayback: z.number().nullable(),
      paybackBeyondSetting: z.number().nullable(),
      settingAlone: saved.nullable(),
    }),
  ),
  assumptions: z.object({ year: z.int(), price: z.number().nullable(), tariff: z.string().nullable() }),
  summary: z.string().min(1),
  cautions: z.array(z.object({ code: z.string() })),
});

export const summaryOf = async ({ call }: AppUnderTest, query = '') =>
  answered(summary, await call(`/v1/summary${query}`));
