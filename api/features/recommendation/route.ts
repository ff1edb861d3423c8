/** Answers which pump at which setting serves a loop at the least cost. */
import { success } from '../../../curves/result.ts';
import { HOURS_DEFAULT } from '../../fields/running-fields.ts';
import type { Api } from '../../http/api.ts';
import { defineRoute } from '../../http/define-route.ts';
import { example } from '../../http/examples.ts';
import { jsonAnswer } from '../../http/json-answer.ts';
import { jsonBody } from '../../http/json-body.ts';
import { noBody } from '../../http/request-body.ts';
import { noQuery } from '../../http/route.ts';
import { allCandidates, findCandidates } from '../../question/candidates.ts';
import { candidateRequests, densityOfLoop, findStoredLoop } from '../../question/sources.ts';
import { tariffPrice } from '../../question/tariff-price.ts';
import { findLoop } from '../../records/loop/kind.ts';
import { findSite } from '../../records/site/kind.ts';
import { recommendationSchema } from './answer-schema.ts';
import { type RecommendationDeps, recommend } from './recommendation.ts';
import { RANKING_DEFAULT, recommendationQuery, recommendationRequest } from './request-schema.ts';
import { rankingTable } from './table.ts';

const PROBLEMS = ['no-requirement', 'unsolved', 'unavailable'] as const;

const answer = () =>
  jsonAnswer({
    schema: recommendationSchema,
    description: 'The cheapest pump and setting, the ranking, and why others do not serve.',
    example: example('answers/recommendation'),
    table: rankingTable,
  });

function byBody(api: Api, deps: RecommendationDeps): void {
  const { clock } = api.deps;
  defineRoute(
    api,
    {
      method: 'post',
      path: '/v1/recommendations',
      operationId: 'recommend',
      summary: 'Which pump at which setting?',
      description:
        'Judges every candidate at the smallest setting at which all outlets get their flow and all limits hold, and ranks them by the cost of a year. Loop and pumps by id or inline; nothing is stored.',
      tag: 'recommendations',
      query: noQuery,
      body: jsonBody({
        schema: recommendationRequest,
        density: densityOfLoop,
        example: example('recommendation-kelp-flume'),
      }),
      problems: PROBLEMS,
      answer: answer(),
    },
    async ({ body, system, store }) => {
      const { loop: asked, pumps, tariff: _tariff, ...options } = body;
      const loop = await findStoredLoop(store, asked);
      if (!loop.ok) return loop;
      const candidates =
        pumps === undefined
          ? await allCandidates(store, 1)
          : await findCandidates(store, candidateRequests(pumps));
      if (!candidates.ok) return candidates;
      const site = await findSite(store);
      const tariff = await tariffPrice({ store, clock }, site, body, { pointer: '/tariff' });
      if (!tariff.ok) return tariff;
      const answered = await recommend(deps, {
        site,
        tariff: tariff.value,
        loop: loop.value,
        candidates: candidates.value,
        options,
        places: {
          loop: { pointer: '/loop' },
          balancing: { pointer: '/balancing' },
          currency: { pointer: '/currency' },
        },
        system,
      });
      if (!answered.ok) return answered;
      // The query of this question is its body.
      const { body: found, validator } = answered.value;
      return success({ body: found, validator: { basis: [validator.basis, body] } });
    },
  );
}

function byQuery(api: Api, deps: RecommendationDeps): void {
  const { clock } = api.deps;
  defineRoute(
    api,
    {
      method: 'get',
      path: '/v1/loops/{loopId}/recommendation',
      operationId: 'getRecommendation',
      summary: 'Which pump at which setting, for a stored loop?',
      description: 'The question of POST /v1/recommendations as a query, for programs that only read.',
      tag: 'recommendations',
      query: recommendationQuery,
      body: noBody,
      problems: PROBLEMS,
      answer: answer(),
    },
    async ({ params, query, system, store }) => {
      const { pump, count = 1, price, hoursPerDay = HOURS_DEFAULT } = query;
      const { balancing = 'as-built', rankingLimit = RANKING_DEFAULT } = query;
      const loop = await findLoop(store, params.loopId, null);
      if (!loop.ok) return loop;
      const place = { parameter: 'pump' };
      const requests = pump?.split(',').map((id) => ({ pump: id, count, path: [], place }));
      const candidates =
        requests === undefined ? await allCandidates(store, count) : await findCandidates(store, requests);
      if (!candidates.ok) return candidates;
      const site = await findSite(store);
      const tariff = await tariffPrice({ store, clock }, site, query, { parameter: 'tariff' });
      if (!tariff.ok) return tariff;
      return recommend(deps, {
        site,
        tariff: tariff.value,
        loop: loop.value,
        candidates: candidates.value,
        options: {
          price,
          currency: undefined,
          hoursPerDay,
          balancing,
          rankingLimit,
          detail: 'plain',
          objective: query.objective,
        },
        places: { loop: null, balancing: { parameter: 'balancing' }, currency: { parameter: 'price' } },
        system,
      });
    },
  );
}

export function recommendationRoutes(api: Api, deps: RecommendationDeps): void {
  byBody(api, deps);
  byQuery(api, deps);
}
