/** Draws a control chart of each measure on a loop: its days, its baseline with the band around it, and what happened. */
import { type Axis, linearAxis } from '../../drawing/kit/axis.ts';
import { dateAxis } from '../../drawing/kit/date-axis.ts';
import type { LegendRow } from '../../drawing/kit/legend.ts';
import { type MarkStyle, mark } from '../../drawing/kit/marks.ts';
import type { Ink, LineStyle } from '../../drawing/kit/palette.ts';
import type { Plot } from '../../drawing/kit/plot.ts';
import { bandBetween, lineThrough, straight } from '../../drawing/kit/series.ts';
import { drawSheet, type Panel } from '../../drawing/kit/sheet.ts';
import type { Markup } from '../../drawing/markup/markup.ts';
import { plainName, shortName } from '../../drawing/markup/name-text.ts';
import { sayNumber } from '../../wording/numbers-in-words.ts';
import type { ChartedEvent, ChartedSeries, ConditionFigures } from './chart-figures.ts';

const HEIGHT = 170;
const MEASURED: MarkStyle = { shape: 'circle', ink: 'slate', isFilled: false, size: 28 };
const BAND: Ink = 'haze';
const LEVEL: LineStyle = { ink: 'deep', width: 2 };
const AS_PREDICTED: LineStyle = { ink: 'deep', width: 1.4, dash: '5 4' };
const EVENTS = {
  cleaning: { ink: 'sea', width: 1.6, dash: '2 3' },
  service: { ink: 'ink', width: 1.6, dash: '8 3' },
  change: { ink: 'rust', width: 1.6, dash: '6 2 2 2' },
} as const satisfies Record<ChartedEvent['kind'], LineStyle>;
const EVENT_WORDS = {
  cleaning: 'cleaning of the screen',
  service: 'service of the pump',
  change: 'about when the change began',
} as const satisfies Record<ChartedEvent['kind'], string>;
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
    panels: series.length === 0 ? [emptyPanel()] : series.map((one) => controlPanel(one, figures)),
    legend: legendOf(figures),
    notes: [...(series.length === 0 ? ['There are no readings to compare.'] : []), summary],
  });
}

const residualAxis = (name: string, unit: string, values: readonly number[]): Axis =>
  linearAxis({ name, unit, values: [...values, LEAST_SPAN, -LEAST_SPAN], ticks: 4 });

const emptyPanel = (): Panel => ({ axis: residualAxis('departure', '%', []), height: HEIGHT });

function controlPanel(
  { name, unit, points, band }: ChartedSeries,
  { from, until, baseline, events }: ConditionFigures,
): Panel {
  const ends = band === null ? [] : [band.low, band.high];
  const values = [...points.map(({ percent }) => percent), ...ends];
  return {
    axis: residualAxis(`${name}, departure`, unit, values),
    height: HEIGHT,
    inside: (plot) => [
      band === null
        ? null
        : bandBetween(
            plot,
            [from, until].map((x) => ({ x, low: band.low, high: band.high })),
            BAND,
          ),
    ],
    over: (plot) => [
      straight([plot.left, plot.y(0)], [plot.left + plot.width, plot.y(0)], AS_PREDICTED),
      band === null || baseline === null
        ? null
        : levelDrawn(plot, { from, until, baseline, level: band.level }),
      ...events.map(({ at, kind }) =>
        straight([plot.x(at), plot.top], [plot.x(at), plot.top + plot.height], EVENTS[kind]),
      ),
      ...points.map(({ time, percent }) => mark([plot.x(time), plot.y(percent)], MEASURED)),
    ],
  };
}

/** Over the time of the baseline itself. */
function levelDrawn(
  plot: Plot,
  {
    from,
    until,
    baseline,
    level,
  }: Pick<ConditionFigures, 'from' | 'until'> & {
    readonly baseline: NonNullable<ConditionFigures['baseline']>;
    readonly level: number;
  },
): Markup | null {
  const ends = [Math.max(from, baseline.from), Math.min(until, baseline.until)];
  return lineThrough(
    plot,
    ends.map((x) => ({ x, y: level })),
    LEVEL,
  );
}

function legendOf({ series, events }: ConditionFigures): readonly LegendRow[] {
  if (series.length === 0) return [];
  const hasBand = series.some(({ band }) => band !== null);
  const kinds = new Set(events.map(({ kind }) => kind));
  return [
    { sample: { mark: MEASURED }, text: 'measured, median of a day' },
    { sample: { line: AS_PREDICTED }, text: 'as predicted' },
    ...(hasBand
      ? [
          { sample: { line: LEVEL }, text: 'mean of the baseline' },
          { sample: { band: BAND }, text: 'where 95 % of the days lie while nothing changes' },
        ]
      : []),
    ...[...kinds].map((kind): LegendRow => ({ sample: { line: EVENTS[kind] }, text: EVENT_WORDS[kind] })),
  ];
}

function descriptionOf({ loopName, summary, series }: ConditionFigures): string {
  const lines = series.map(({ name, points, band }) => {
    const figure = (percent: number) => sayNumber(percent, 3);
    const baseline =
      band === null
        ? ''
        : `; baseline ${figure(band.level)} %, band ${figure(band.low)} to ${figure(band.high)} %`;
    return `${points.length} days of ${name}${baseline}.`;
  });
  return [
    `Departures of what was measured on ${plainName(loopName)} from what is predicted.`,
    summary,
    ...lines,
  ].join(' ');
}
