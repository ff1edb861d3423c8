/** Answers with the picture of a loop's day. */
import { z } from '@hono/zod-openapi';
import { failed, success } from '../../../curves/result.ts';
import { dayOfText } from '../../../models/calendar/civil-text.ts';
import { solving } from '../../../models/network/solve-failure.ts';
import { markupText } from '../../drawing/markup/markup.ts';
import { SVG_EXAMPLE } from '../../drawing/svg-example.ts';
import { calendarDate } from '../../fields/clock-fields.ts';
import type { Api } from '../../http/api.ts';
import { defineRoute } from '../../http/define-route.ts';
import { pageAnswer } from '../../http/page-answer.ts';
import { noBody } from '../../http/request-body.ts';
import { unsolvedProblem } from '../../question/solve-problems.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import { dayChart } from './day-chart.ts';
import { dayFigures, siteDay } from './day-figures.ts';
import type { PlanCache } from './plan-cache.ts';

const YEARS = { first: 1971, last: 2200 } as const;

const inRange = (text: string): boolean => {
  const year = Number(text.slice(0, 4));
  return year >= YEARS.first && year <= YEARS.last;
};

const query = (context: SchemaContext) =>
  z.strictObject({
    date: calendarDate(context, {
      description: "A day of the site's calendar, 1971 to 2200; today where it is left out.",
      example: '2026-03-29',
    })
      .refine(inRange, `must be in the years ${YEARS.first} to ${YEARS.last}`)
      .optional(),
  });

export function dayChartRoute(api: Api, plans: PlanCache): void {
  const { clock, version } = api.deps;
  defineRoute(
    api,
    {
      method: 'get',
      path: '/v1/loops/{loopId}/day.svg',
      operationId: 'getDayChart',
      summary: 'A picture of the day of a loop',
      description:
        'Phases, settings, flow, electrical power and price through one day of the site, hour by hour as its clocks show them, with what the day uses and costs. Without a schedule, the recommendation for the installed pump all day. Axes are in the units in force.',
      tag: 'schedules',
      query,
      body: noBody,
      problems: ['no-installed-pump', 'no-requirement', 'unsolved'],
      answer: pageAnswer({
        mediaType: 'image/svg+xml',
        description:
          'The picture, to be shown or printed as it is; it holds no script and refers to nothing.',
        example: SVG_EXAMPLE,
      }),
    },
    async ({ params, query: { date }, store, system }) => {
      const found = await plans.find(store, params.loopId);
      if (!found.ok) return found;
      const { planned } = found.value;
      const today = siteDay(planned.sources.site.document.timeZone, clock().getTime());
      const day = (date === undefined ? null : dayOfText(date)) ?? today;
      const drawn = solving(() =>
        markupText(dayChart(dayFigures(found.value, { day, system }), { id: 'day' })),
      );
      if (!drawn.ok) return failed(unsolvedProblem(drawn.failure));
      return success({
        body: drawn.value,
        validator: { basis: [version, planned.basis, planned.versions, day] },
      });
    },
  );
}
