/** Draws the life-cycle cost of options by element, and its sum over the years. */

import { linearAxis } from '../../drawing/kit/axis.ts';
import { mark } from '../../drawing/kit/marks.ts';
import type { Plot } from '../../drawing/kit/plot.ts';
import { lineThrough } from '../../drawing/kit/series.ts';
import { drawSheet, type Panel } from '../../drawing/kit/sheet.ts';
import type { Markup } from '../../drawing/markup/markup.ts';
import { shortName } from '../../drawing/markup/name-text.ts';
import type { ChartedComparison, ChartedOption } from './chart-figures.ts';
import { breakEvenYear, comparisonDescription, comparisonLegend } from './chart-words.ts';
import { costBars } from './cost-bars.ts';
import { elementPatterns } from './element-fills.ts';
import { BREAK_EVEN, OPTIONS_SHOWN, optionStyle } from './option-styles.ts';

const HEIGHT = 240;

export function comparisonChart(figures: ChartedComparison, { id }: { readonly id: string }): Markup {
  const shown = { ...figures, options: figures.options.slice(0, OPTIONS_SHOWN) };
  const left = figures.options.length - shown.options.length;
  const years = shown.options.flatMap(({ years: all }) => all.map(({ year }) => year));
  return drawSheet({
    id,
    title: shortName(figures.name),
    subtitle: `Present values in ${figures.currency}: by element, and added up year by year`,
    description: comparisonDescription(shown),
    axis: linearAxis({ name: 'end of year', unit: null, values: years, ticks: 8 }),
    panels: [costBars(shown, id), cumulatedPanel(shown)],
    legend: comparisonLegend(shown, id),
    notes: left === 0 ? [] : [`${left} more options are not drawn.`],
    patterns: elementPatterns(id),
  });
}

function cumulatedPanel({ options, currency }: ChartedComparison): Panel {
  const values = options.flatMap(({ years }) => years.map(({ cumulated }) => cumulated));
  return {
    axis: linearAxis({ name: 'cost so far', unit: currency, values }),
    height: HEIGHT,
    inside: (plot) => options.map((option, place) => optionLine(plot, option, place)),
    over: (plot) => [
      ...options.flatMap((option, place) => optionMarks(plot, option, place)),
      ...options.map((option) => breakEvenMark(plot, option)),
    ],
  };
}

const optionLine = (plot: Plot, { years }: ChartedOption, place: number): Markup | null =>
  lineThrough(
    plot,
    years.flatMap(({ year, running, cumulated }, place) => {
      const before = years[place - 1];
      const paid = { x: year, y: cumulated };
      return before === undefined ? [paid] : [{ x: year, y: before.cumulated + running }, paid];
    }),
    optionStyle(place).line,
  );

/** At both ends of its line. */
function optionMarks(plot: Plot, { years }: ChartedOption, place: number): readonly Markup[] {
  const ends = [years[0], years.at(-1)];
  return ends.flatMap((end) =>
    end === undefined ? [] : [mark([plot.x(end.year), plot.y(end.cumulated)], optionStyle(place).mark)],
  );
}

function breakEvenMark(plot: Plot, option: ChartedOption): Markup | null {
  const breakEven = breakEvenYear(option);
  if (breakEven === null) return null;
  const value = valueAt(option, breakEven);
  return value === null ? null : mark([plot.x(breakEven), plot.y(value)], BREAK_EVEN);
}

/** On its line: inside a year by what runs through it. */
function valueAt({ years }: ChartedOption, year: number): number | null {
  const [before, after] = [years[Math.floor(year)], years[Math.ceil(year)]];
  if (before === undefined || after === undefined) return null;
  return before.cumulated + (year - Math.floor(year)) * after.running;
}
