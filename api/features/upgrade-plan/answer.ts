/** A stored upgrade plan as its answer tells it. */
import type { z } from '@hono/zod-openapi';
import { planCautions } from '../../../models/cautions/plan.ts';
import { candidateAt } from '../../../models/upgrade-plan/upgrade.ts';
import { upgradeValue } from '../../../models/upgrade-plan/upgrade-value.ts';
import { recordBody } from '../../fields/record-fields.ts';
import type { WithoutUnits } from '../../http/answer-form.ts';
import type { upgradePlanSchema } from './answer-schema.ts';
import type { UpgradePlanRecord } from './contract.ts';
import { leftOutWords } from './left-out-sentence.ts';
import { outlivedUpgrades } from './outlived.ts';
import { upgradePlanSummary } from './sentence.ts';

type Answer = WithoutUnits<z.output<ReturnType<typeof upgradePlanSchema>>>;

export function upgradePlanAnswer(record: UpgradePlanRecord): Answer {
  const { document } = record;
  const { question, currency, plan: found } = document;
  const { plan, leftOut, moreBudget } = found;
  return {
    ...recordBody({ ...record, document: { name: document.name } }),
    ...question,
    candidates: [...question.candidates],
    budget: [...question.budget],
    currency,
    presentValue: plan.presentValue,
    status: plan.status,
    gap: plan.gap,
    items: plan.items.map(({ candidate, year }) => {
      const upgrade = candidateAt(question, candidate);
      const presentValue = upgradeValue(upgrade, year, question);
      return { candidate, name: upgrade.name, year, cost: upgrade.cost, presentValue };
    }),
    leftOut: leftOut.map((one) => ({
      candidate: one.candidate,
      name: candidateAt(question, one.candidate).name,
      reason: one.reason,
      detail: leftOutWords(one, question, currency),
      missing: one.reason === 'no-room' ? one.missing : null,
    })),
    spending: [...found.spending],
    moreBudget: {
      budget: [...moreBudget.budget],
      presentValue: moreBudget.plan.presentValue,
      gain: moreBudget.plan.presentValue - plan.presentValue,
      status: moreBudget.plan.status,
      gap: moreBudget.plan.gap,
    },
    summary: upgradePlanSummary(document),
    cautions: [
      ...planCautions({
        outlived: outlivedUpgrades(question, plan.items),
        isProven: plan.status !== 'time-limit',
      }),
    ],
    basis: { modelVersion: document.modelVersion, loop: null, pumps: [] },
  };
}

/** In a list. */
export function upgradePlanItem(record: UpgradePlanRecord) {
  const { document } = record;
  const { question, currency, plan: found } = document;
  const { presentValue, status, gap } = found.plan;
  return {
    ...recordBody({ ...record, document: { name: document.name } }),
    years: question.years,
    currency,
    presentValue,
    status,
    gap,
    summary: upgradePlanSummary(document),
  };
}
