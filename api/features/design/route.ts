/** Answers which pipe sizes, which pump and which setting cost least over the years. */
import { success } from '../../../curves/result.ts';
import { markupText } from '../../drawing/markup/markup.ts';
import { PAGE_EXAMPLE } from '../../drawing/page-example.ts';
import { SVG_EXAMPLE } from '../../drawing/svg-example.ts';
import type { Api } from '../../http/api.ts';
import { defineRoute } from '../../http/define-route.ts';
import { example } from '../../http/examples.ts';
import { jsonAnswer } from '../../http/json-answer.ts';
import { jsonBody } from '../../http/json-body.ts';
import { pageAnswer } from '../../http/page-answer.ts';
import { noQuery } from '../../http/route.ts';
import { densityOfLoop } from '../../question/sources.ts';
import { siteDate } from '../schedule/day-figures.ts';
import { designAnswer } from './answer.ts';
import { designSchema } from './answer-schema.ts';
import { frontierChart } from './chart.ts';
import { computeDesign } from './design.ts';
import { designReport } from './report/report.ts';
import { designRequest } from './request-schema.ts';
import { designTable } from './table.ts';

const common = () =>
  ({
    method: 'post',
    tag: 'Choose',
    query: noQuery,
    body: jsonBody({ schema: designRequest, density: densityOfLoop, example: example('design-kelp-flume') }),
    problems: ['no-requirement', 'unsolved', 'unavailable'],
  }) as const;

function answerRoute(api: Api): void {
  const { clock, workers } = api.deps;
  defineRoute(
    api,
    {
      ...common(),
      path: '/v1/designs',
      operationId: 'computeDesign',
      summary: 'Compute a design of pipes and pump',
      description:
        'Searches all listed sizes, pumps and settings for the least cost over the years: pump, energy, pipes and trim valves. Each outlet receives exactly its required flow, by trims at each split and at the pump; designs without trims are not searched. Pumps are taken as newly bought. A calibration of a stored loop is left out. The answer is proven to be the cheapest of this class, or states by how much it may not be. At most 500 runs and 200 pumps; nothing is stored.',
      answer: jsonAnswer({
        schema: designSchema,
        description:
          'The best design with its loop, the best of each other pump, and the frontier of cost and head.',
        example: example('answers/design'),
        table: designTable,
      }),
    },
    async ({ body, system, store }) => {
      const computed = await computeDesign({ store, clock, workers }, { body, system });
      if (!computed.ok) return computed;
      const answer = designAnswer(computed.value, { system, rankingLimit: body.rankingLimit });
      const { site, tariff } = computed.value;
      return success({ body: answer, validator: { basis: [answer.basis, site.version, tariff, body] } });
    },
  );
}

function chartRoute(api: Api): void {
  const { clock, workers } = api.deps;
  defineRoute(
    api,
    {
      ...common(),
      path: '/v1/designs/chart.svg',
      operationId: 'computeDesignChart',
      etag: 'none',
      summary: 'Draw a design',
      description:
        'The request of POST /v1/designs, answered with the least cost of pipes against the head that they require, the designs marked.',
      answer: pageAnswer({
        mediaType: 'image/svg+xml',
        description:
          'The picture, to be shown or printed as it is; it holds no script and refers to nothing.',
        example: SVG_EXAMPLE,
      }),
    },
    async ({ body, system, store }) => {
      const computed = await computeDesign({ store, clock, workers }, { body, system });
      if (!computed.ok) return computed;
      const answer = designAnswer(computed.value, { system, rankingLimit: body.rankingLimit });
      const loopName = computed.value.loop.document.name;
      return success({ body: markupText(frontierChart({ loopName, answer, system }, { id: 'frontier' })) });
    },
  );
}

function reportRoute(api: Api): void {
  const { clock, workers, version: program } = api.deps;
  defineRoute(
    api,
    {
      ...common(),
      path: '/v1/designs/report',
      operationId: 'computeDesignReport',
      etag: 'none',
      summary: 'Print the report of a design',
      description:
        'The request of POST /v1/designs, answered with one page to print: the design, sizes and trims, pumps side by side, a picture, assumptions, cautions and sources.',
      answer: pageAnswer({
        mediaType: 'text/html',
        description: 'The page, complete in itself: no script, no reference to anything outside.',
        example: PAGE_EXAMPLE,
      }),
    },
    async ({ body, system, store }) => {
      const computed = await computeDesign({ store, clock, workers }, { body, system });
      if (!computed.ok) return computed;
      const answer = designAnswer(computed.value, { system, rankingLimit: body.rankingLimit });
      const { site, loop } = computed.value;
      const date = siteDate(site.document.timeZone, clock().getTime());
      return success({
        body: designReport({
          ...{ loopName: loop.document.name, answer, system, date, program },
          ...{ siteName: site.document.name, siteVersion: site.version },
        }),
      });
    },
  );
}

export function designRoutes(api: Api): void {
  answerRoute(api);
  chartRoute(api);
  reportRoute(api);
}
