/** Makes, stores, lists, reads and deletes upgrade plans. */
import { success } from '../../../curves/result.ts';
import type { Api } from '../../http/api.ts';
import { example } from '../../http/examples.ts';
import { jsonAnswer } from '../../http/json-answer.ts';
import { jsonBody } from '../../http/json-body.ts';
import { plainList } from '../../records/list-records.ts';
import { mountKeptRecords } from '../../records/mount-records.ts';
import { findSite } from '../../records/site/kind.ts';
import { upgradePlanAnswer, upgradePlanItem } from './answer.ts';
import { upgradePlanList, upgradePlanSchema } from './answer-schema.ts';
import type { UpgradePlanRecord } from './contract.ts';
import { UPGRADE_PLANS } from './kind.ts';
import { upgradePlanRequest } from './schema.ts';
import { upgradePlanListTable, upgradePlanTable } from './table.ts';
import { makeUpgradePlan } from './upgrade-plan.ts';

const WORDS = {
  operation: ['UpgradePlan', 'UpgradePlans'],
  summary: ['an upgrade plan', 'upgrade plans'],
  answer: ['plan', 'plans'],
  problem: 'upgrade plan',
} as const;

const OPERATIONS = {
  create: {
    summary: 'Which upgrades in which year?',
    description:
      'Chooses among the candidates, and a year for each, what is worth most in present value under a budget a year, and states why each other one stays out and what 1 % more budget would be worth. The plan is stored.',
    problems: ['unavailable'],
  },
  list: {
    description: 'Stored plans in the order of their creation, page by page, without their candidates.',
  },
  read: { description: 'A stored plan as it was made.' },
  delete: { description: 'Deletes a stored plan.' },
} as const;

const answerOf = (record: UpgradePlanRecord) => ({
  body: upgradePlanAnswer(record),
  validator: { version: record.version },
});

export function upgradePlanRoutes(api: Api): void {
  const { workers } = api.deps;
  mountKeptRecords(api, UPGRADE_PLANS, {
    collection: '/v1/upgrade-plans',
    one: '/v1/upgrade-plans/{planId}',
    idOf: ({ planId }) => planId,
    tag: 'money',
    words: WORDS,
    operations: OPERATIONS,
    body: jsonBody({ schema: upgradePlanRequest, example: example('upgrade-plan') }),
    async ready({ body, store }) {
      const { name, currency, years, budget, carryOver, discountRate, candidates } = body;
      const question = { years, budget, carryOver, discountRate, candidates };
      const site = await findSite(store);
      const plan = await makeUpgradePlan({ workers, site }, { name, currency, question });
      return plan.ok ? success({ document: plan.value }) : plan;
    },
    answer: (words) =>
      jsonAnswer({
        schema: upgradePlanSchema,
        example: example('answers/upgrade-plan'),
        table: upgradePlanTable,
        ...words,
      }),
    answerOf,
    list: plainList({
      kind: UPGRADE_PLANS,
      answer: (words) =>
        jsonAnswer({
          schema: upgradePlanList,
          example: example('answers/upgrade-plans'),
          table: upgradePlanListTable,
          ...words,
        }),
      bodyOf: (records, next) => ({ items: records.map(upgradePlanItem), next }),
    }),
  });
}
