/** Answers with the picture and the printable report of a comparison. */
import { failed, type Result, success } from '../../../curves/result.ts';
import { markupText } from '../../drawing/markup/markup.ts';
import { PAGE_EXAMPLE } from '../../drawing/page-example.ts';
import { SVG_EXAMPLE } from '../../drawing/svg-example.ts';
import type { Api } from '../../http/api.ts';
import { defineRoute } from '../../http/define-route.ts';
import { pageAnswer } from '../../http/page-answer.ts';
import { type Problem, problem } from '../../http/problem.ts';
import { noBody } from '../../http/request-body.ts';
import { noQuery } from '../../http/route.ts';
import { findSite } from '../../records/site/kind.ts';
import type { SiteStore } from '../../store/store.ts';
import { siteDate } from '../schedule/day-figures.ts';
import { comparisonChart } from './chart.ts';
import type { ComparisonRecord } from './contract.ts';
import { COMPARISONS } from './kind.ts';
import { comparisonReport } from './report/report.ts';
import { isStale } from './sources.ts';

const common = { method: 'get', tag: 'money', query: noQuery, body: noBody } as const;

async function findComparison(store: SiteStore, id: string): Promise<Result<ComparisonRecord, Problem>> {
  const record = await store.of(COMPARISONS).get(id);
  return record === undefined
    ? failed(problem('not-found', 'There is no comparison with this id.'))
    : success(record);
}

function chartRoute(api: Api): void {
  defineRoute(
    api,
    {
      ...common,
      path: '/v1/comparisons/{comparisonId}/chart.svg',
      operationId: 'getComparisonChart',
      summary: 'A picture of a comparison',
      description:
        'The life-cycle cost of each option stacked by element, and how it adds up year by year, with the break-even marked.',
      answer: pageAnswer({
        mediaType: 'image/svg+xml',
        description:
          'The picture, to be shown or printed as it is; it holds no script and refers to nothing.',
        example: SVG_EXAMPLE,
      }),
    },
    async ({ params, store }) => {
      const found = await findComparison(store, params.comparisonId);
      if (!found.ok) return found;
      const { id, version, document } = found.value;
      const { name, figures } = document;
      const body = markupText(comparisonChart({ ...figures, name }, { id: 'comparison' }));
      return success({ body, validator: { basis: [api.deps.version, id, version] } });
    },
  );
}

function reportRoute(api: Api): void {
  const { clock, version: program } = api.deps;
  defineRoute(
    api,
    {
      ...common,
      path: '/v1/comparisons/{comparisonId}/report',
      operationId: 'getComparisonReport',
      summary: 'The printable report of a comparison',
      description:
        'One page to print, on A4 in metric units and on Letter in US units: which option costs least, the options side by side and by element, a picture, what runs, what the answer hangs on, assumptions, cautions, sources, and the versions of the data; it says where they have moved since.',
      answer: pageAnswer({
        mediaType: 'text/html',
        description: 'The page, complete in itself: no script, no reference to anything outside.',
        example: PAGE_EXAMPLE,
      }),
    },
    async ({ params, system, store }) => {
      const found = await findComparison(store, params.comparisonId);
      if (!found.ok) return found;
      const { id, version, createdAt, document } = found.value;
      const stale = await isStale(store, document);
      const site = await findSite(store);
      const date = siteDate(site.document.timeZone, clock().getTime());
      const body = comparisonReport({
        siteName: site.document.name,
        comparison: {
          ...document.figures,
          name: document.name,
          createdAt: new Date(createdAt).toISOString(),
          id,
          stale,
        },
        date,
        program,
        system,
      });
      return success({ body, validator: { basis: [program, date, site.version, id, version, stale] } });
    },
  );
}

export function comparisonPageRoutes(api: Api): void {
  chartRoute(api);
  reportRoute(api);
}
