/** Answers the summary of a site from its figures. */

import type { z } from '@hono/zod-openapi';
import { HOURS_PER_DAY } from '../../../models/calendar/time-factors.ts';
import { siteCautions } from '../../../models/cautions/plan.ts';
import type { Attention } from '../../../models/maintenance/attention.ts';
import type { SavingEntry } from '../../../models/site-summary/site-totals.ts';
import { basisOf } from '../../fields/basis.ts';
import type { WithoutUnits } from '../../http/answer-form.ts';
import type { PumpRecord } from '../../records/pump/kind.ts';
import { recordReference } from '../../store/record-reference.ts';
import type { UnitSystem } from '../../units/unit-system.ts';
import type { summarySchema } from './answer-schema.ts';
import { siteSummarySentence } from './sentence.ts';
import type { SiteSummary } from './site-summary.ts';

type Answer = WithoutUnits<z.output<ReturnType<typeof summarySchema>>>;

export function summaryAnswer(summed: SiteSummary, system: UnitSystem): Answer {
  const { site, totals, pumps, attention, tariff, price, year } = summed;
  const { loops: total, scheduled, withoutPump, withoutRequirement, unsolved } = totals;
  const named = totals.savings.flatMap(({ candidate }) => pumpAt(pumps, candidate) ?? []);
  const { hours, parts, cost } = attention.all;
  return {
    loops: { total, scheduled, withoutPump, withoutRequirement, unsolved },
    devices: summed.devices,
    storedPumps: pumps.length,
    power: totals.power,
    annualEnergy: totals.annualEnergy,
    annualCost: totals.annualCost,
    currency: site.document.currency,
    short: { count: totals.short.count, loops: [...totals.short.worst] },
    aboveNeed: { count: totals.above.count, loops: [...totals.above.most] },
    attention: {
      service: attentionAnswer(attention.service),
      tasks: attentionAnswer(attention.tasks),
      ...{ hours, parts, cost },
    },
    savings: totals.savings.map((one) => savingAnswer(one, pumpAt(pumps, one.candidate))),
    assumptions: { year, price, tariff: tariff?.name ?? null, hoursPerDay: HOURS_PER_DAY },
    summary: siteSummarySentence(summed, system),
    cautions: [
      ...siteCautions({
        shortLoops: totals.short.worst.map(({ loop }) => loop.name),
        offersPumps: named.length > 0,
      }),
    ],
    basis: basisOf({ loop: null, pumps: named }),
  };
}

const attentionAnswer = ({ hours, parts, cost }: Attention) => ({ hours, parts, cost });

function pumpAt(pumps: readonly PumpRecord[], candidate: number | null): PumpRecord | null {
  if (candidate === null) return null;
  const pump = pumps[candidate];
  if (pump === undefined) throw new Error(`invariant: there is no pump ${candidate}`);
  return pump;
}

function savingAnswer(
  { loop, count, setting, energySaved, costSaved, settingAlone }: SavingEntry,
  pump: PumpRecord | null,
): Answer['savings'][number] {
  const price = pump === null ? 0 : (pump.document.price ?? null);
  const purchase = price === null ? null : count * price;
  return {
    loop,
    kind: pump === null ? 'setting' : 'pump',
    pump: pump === null ? null : recordReference(pump),
    count,
    setting,
    energySaved,
    costSaved,
    purchase,
    simplePayback: purchase === null || costSaved === null ? null : purchase / costSaved,
    paybackBeyondSetting:
      pump === null ? null : beyondSetting({ purchase, costSaved, alone: settingAlone?.costSaved ?? 0 }),
    settingAlone: pump === null ? null : settingAlone,
  };
}

function beyondSetting({
  purchase,
  costSaved,
  alone,
}: {
  readonly purchase: number | null;
  readonly costSaved: number | null;
  readonly alone: number;
}): number | null {
  if (purchase === null || costSaved === null) return null;
  return costSaved > alone ? purchase / (costSaved - alone) : null;
}
