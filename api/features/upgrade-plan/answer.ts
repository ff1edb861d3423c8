/** Answers a stored upgrade plan. */

import type { z } from '@hono/zod-openapi';
import { planCautions } from '../../../models/cautions/plan.ts';
import type { LeftOut } from '../../../models/upgrade-plan/left-out.ts';
import { candidateAt, type PlanQuestion } from '../../../models/upgrade-plan/upgrade.ts';
import { upgradeValue } from '../../../models/upgrade-plan/upgrade-value.ts';
import { recordBody } from '../../fields/record-fields.ts';
import type { WithoutUnits } from '../../http/answer-form.ts';
import { sayNumber } from '../../wording/numbers-in-words.ts';
import type { upgradePlanSchema } from './answer-schema.ts';
import type { UpgradePlanRecord } from './contract.ts';
import { outlivedUpgrades } from './outlived.ts';
import { upgradePlanSentence } from './sentence.ts';

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
    summary: upgradePlanSentence(document),
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
    summary: upgradePlanSentence(document),
  };
}

/** Why a candidate is not in a plan. */
function leftOutWords(one: LeftOut, question: PlanQuestion, currency: string): string {
  const { cost, notBefore = 1, group = '' } = candidateAt(question, one.candidate);
  const money = (amount: number): string => `${sayNumber(amount)} ${currency}`;
  switch (one.reason) {
    case 'outside-plan':
      return `It may not be made before year ${notBefore}, and the plan ends with year ${question.years}.`;
    case 'does-not-pay': {
      const loss =
        one.value === 0
          ? 'what it saves and keeps of its value only just meets its cost'
          : `its cost exceeds what it saves and keeps of its value by ${money(-one.value)} of present value`;
      return `It does not pay: even in its best year, year ${one.year}, ${loss}.`;
    }
    case 'over-budget':
      return `It costs ${money(cost)}, and in the years in which it would pay the budget reaches ${money(one.most)} at most (year ${one.year}).`;
    case 'group': {
      const chosen = candidateAt(question, one.chosen).name;
      const otherwise = one.fits
        ? `in its place it would be worth ${money(one.value)} of present value`
        : 'in its place it would not fit the budget beside the rest of the plan';
      return `Its group "${group}" allows one, and ${chosen} is made: ${otherwise}.`;
    }
    case 'no-room':
      return `It would pay, but the budget is better spent on the rest of the plan: it would take ${money(one.missing)} more for year ${one.year} to make it as well.`;
  }
}
