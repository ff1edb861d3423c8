/** Draws how far measurements on a loop depart from what is predicted, and their trend. */

import { type Axis, linearAxis } from '../../drawing/kit/axis.ts';
import { dateAxis } from '../../drawing/kit/date-axis.ts';
import type { LegendRow } from '../../drawing/kit/legend.ts';
import { type MarkStyle, mark } from '../../drawing/kit/marks.ts';
import type { LineStyle } from '../../drawing/kit/palette.ts';
import { lineThrough, straight } from '../../drawing/kit/series.ts';
import { drawSheet, type Panel } from '../../drawing/kit/sheet.ts';
import type { Markup } from '../../drawing/markup/markup.ts';
import { plainName, shortName } from '../../drawing/markup/name-text.ts';
import { sayNumber } from '../../wording/numbers-in-words.ts';
import type { ConditionFigures, ResidualSeries } from './figures.ts';

const HEIGHT = 170;
const MEASURED: MarkStyle = { shape: 'circle', ink: 'slate', isFilled: false, size: 28 };
const TREND: LineStyle = { ink: 'rust', width: 2.4 };
const AS_PREDICTED: LineStyle = { ink: 'deep', width: 1.4, dash: '5 4' };
/** A plot in which nothing departs still has this height [%]. */
const LEAST_SPAN = 2;

export function conditionChart(figures: ConditionFigures, { id }: { readonly id: string }): Markup {
  const { loopName, verdict, summary, series } = figures;
  return drawSheet({
    id,
    title: `${shortName(loopName)}: measured against predicted`,
    subtitle: `Found: ${verdict}`,
    description: descriptionOf(figures),
    axis: dateAxis(figures),
    panels: series.length === 0 ? [emptyPanel()] : series.map(residualPanel),
    legend: legendOf(series),
    notes: [...(series.length === 0 ? ['There are no readings to compare.'] : []), summary],
  });
}

const residualAxis = (name: string, unit: string, values: readonly number[]): Axis =>
  linearAxis({ name, unit, values: [...values, LEAST_SPAN, -LEAST_SPAN], ticks: 4 });

const emptyPanel = (): Panel => ({ axis: residualAxis('departure', '%', []), height: HEIGHT });

function residualPanel({ name, unit, points, trend }: ResidualSeries): Panel {
  const ends = trend === null ? [] : [trend.from, trend.until];
  return {
    axis: residualAxis(
      `${name}, departure`,
      unit,
      [...points, ...ends].map(({ percent }) => percent),
    ),
    height: HEIGHT,
    over: (plot) => [
      straight([plot.left, plot.y(0)], [plot.left + plot.width, plot.y(0)], AS_PREDICTED),
      ...points.map(({ time, percent }) => mark([plot.x(time), plot.y(percent)], MEASURED)),
      lineThrough(
        plot,
        ends.map(({ time, percent }) => ({ x: time, y: percent })),
        TREND,
      ),
    ],
  };
}

function trendWords({ name, trend }: ResidualSeries): string {
  if (trend === null) return '';
  const { perYear, low, high } = trend;
  return `${name}: ${sayNumber(perYear, 3)} % a year, between ${sayNumber(low, 3)} and ${sayNumber(high, 3)} (95 %)`;
}

function legendOf(series: readonly ResidualSeries[]): readonly LegendRow[] {
  if (series.length === 0) return [];
  return [
    { sample: { mark: MEASURED }, text: 'measured, median of a day or of some days' },
    { sample: { line: AS_PREDICTED }, text: 'as predicted' },
    ...series.flatMap((one): readonly LegendRow[] =>
      one.trend === null ? [] : [{ sample: { line: TREND }, text: `trend of ${trendWords(one)}` }],
    ),
  ];
}

function descriptionOf({ loopName, summary, series }: ConditionFigures): string {
  const lines = series.map((one) => {
    const { name, points } = one;
    const trend = trendWords(one);
    return `${points.length} departures of ${name}${trend === '' ? '' : `; trend of ${trend}`}.`;
  });
  return [
    `Departures of what was measured on ${plainName(loopName)} from what is predicted.`,
    summary,
    ...lines,
  ].join(' ');
}
