/** Makes, stores, lists, reads and deletes upgrade plans. */
import { failed, success } from '../../../curves/result.ts';
import type { Api } from '../../http/api.ts';
import { defineRoute } from '../../http/define-route.ts';
import { example } from '../../http/examples.ts';
import { jsonAnswer } from '../../http/json-answer.ts';
import { jsonBody } from '../../http/json-body.ts';
import { listQuery, nextCursor, pageRequest } from '../../http/list-query.ts';
import { noContent } from '../../http/no-content.ts';
import { problem } from '../../http/problem.ts';
import { noBody } from '../../http/request-body.ts';
import { noQuery } from '../../http/route.ts';
import { findSite } from '../../records/site/kind.ts';
import { writeProblem } from '../../records/write-problems.ts';
import { upgradePlanAnswer, upgradePlanItem } from './answer.ts';
import { upgradePlanList, upgradePlanSchema } from './answer-schema.ts';
import type { UpgradePlanRecord } from './contract.ts';
import { upgradePlanRequest } from './schema.ts';
import { upgradePlanListTable, upgradePlanTable } from './table.ts';
import { makeUpgradePlan } from './upgrade-plan.ts';

const collection = { path: '/v1/upgrade-plans', tag: 'money' } as const;
const one = { path: '/v1/upgrade-plans/{planId}', tag: 'money', query: noQuery } as const;

const storedPlan = (description: string, status: 200 | 201 = 200) =>
  jsonAnswer({
    schema: upgradePlanSchema,
    description,
    example: example('answers/upgrade-plan'),
    table: upgradePlanTable,
    status,
  });

const answerOf = (record: UpgradePlanRecord) => ({
  body: upgradePlanAnswer(record),
  validator: { version: record.version },
});

function makingRoute(api: Api): void {
  const { store, clock, newId, workers } = api.deps;
  defineRoute(
    api,
    {
      ...collection,
      method: 'post',
      operationId: 'createUpgradePlan',
      summary: 'Which upgrades in which year?',
      description:
        'Chooses among the candidates, and a year for each, what is worth most in present value under a budget a year; tells why each other one stays out and what 1 % more budget would be worth. The plan is stored.',
      query: noQuery,
      body: jsonBody({ schema: upgradePlanRequest, example: example('upgrade-plan') }),
      answer: storedPlan('The plan as it is stored.', 201),
      problems: ['unavailable'],
    },
    async ({ body, siteId }) => {
      const { name, currency, years, budget, carryOver, discountRate, candidates } = body;
      const question = { years, budget, carryOver, discountRate, candidates };
      const site = await findSite(store);
      const plan = await makeUpgradePlan({ workers, site }, { name, currency, question });
      if (!plan.ok) return plan;
      const kept = { siteId, id: newId(), document: plan.value, now: clock().getTime() };
      const { record } = await store.insertUpgradePlan(kept);
      return success({ ...answerOf(record), location: `/v1/upgrade-plans/${record.id}` });
    },
  );
}

function listRoute(api: Api): void {
  const { store } = api.deps;
  defineRoute(
    api,
    {
      ...collection,
      method: 'get',
      operationId: 'listUpgradePlans',
      summary: 'List upgrade plans',
      description: 'Stored plans in the order of their creation, page by page, without their candidates.',
      query: listQuery,
      body: noBody,
      answer: jsonAnswer({
        schema: upgradePlanList,
        description: 'A page of plans.',
        example: example('answers/upgrade-plans'),
        table: upgradePlanListTable,
      }),
    },
    async ({ siteId, query }) => {
      const page = await store.listUpgradePlans(pageRequest(siteId, query));
      return success({ body: { items: page.records.map(upgradePlanItem), next: nextCursor(page) } });
    },
  );
}

function routesOfOne(api: Api): void {
  const { store } = api.deps;
  defineRoute(
    api,
    {
      ...one,
      method: 'get',
      operationId: 'getUpgradePlan',
      summary: 'Read an upgrade plan',
      description: 'A stored plan as it was made.',
      body: noBody,
      answer: storedPlan('The plan.'),
    },
    async ({ params, siteId }) => {
      const record = await store.getUpgradePlan({ siteId, id: params.planId });
      return record === undefined
        ? failed(problem('not-found', 'There is no upgrade plan with this id.'))
        : success(answerOf(record));
    },
  );
  defineRoute(
    api,
    {
      ...one,
      method: 'delete',
      operationId: 'deleteUpgradePlan',
      summary: 'Delete an upgrade plan',
      description: 'Deletes a stored plan.',
      conditional: true,
      body: noBody,
      answer: noContent('The plan is gone.'),
    },
    async ({ params, siteId, expectedVersion }) => {
      const deleted = await store.deleteUpgradePlan({ siteId, id: params.planId, expectedVersion });
      return deleted.outcome === 'deleted'
        ? success({ body: null })
        : failed(writeProblem(deleted, 'upgrade plan'));
    },
  );
}

export function upgradePlanRoutes(api: Api): void {
  makingRoute(api);
  listRoute(api);
  routesOfOne(api);
}
