/** Draws the life-cycle cost of each option as a bar of its elements. */
import { COST_ELEMENTS } from '../../../models/money/option-costs.ts';
import { linearAxis } from '../../drawing/kit/axis.ts';
import { INKS } from '../../drawing/kit/palette.ts';
import type { Plot } from '../../drawing/kit/plot.ts';
import type { Panel } from '../../drawing/kit/sheet.ts';
import { TYPE, words } from '../../drawing/kit/words.ts';
import { type Markup, markup } from '../../drawing/markup/markup.ts';
import { isolatedName, plainName, shortened } from '../../drawing/markup/name-text.ts';
import { sayNumber } from '../../wording/numbers-in-words.ts';
import type { ChartedComparison, ChartedOption } from './chart-figures.ts';
import { fillOf } from './element-fills.ts';

/** [px] */
const ROW = { height: 46, name: 16, bar: 20 } as const;
const GAP = 6;
/** Beside the name of an option. */
const NOTE_ROOM = 120;
/** Room for the sum at the end of the longest bar, as a share of it. */
const SUM_ROOM = 1.14;

interface Piece {
  readonly element: (typeof COST_ELEMENTS)[number];
  readonly from: number;
  readonly until: number;
}

/** Costs to the right of 0, what comes back to the left. */
function pieces({ elements }: ChartedOption): readonly Piece[] {
  let [spent, back] = [0, 0];
  return COST_ELEMENTS.flatMap((element) => {
    const value = elements[element];
    if (value === 0) return [];
    const from = value > 0 ? spent : back;
    if (value > 0) spent += value;
    else back += value;
    return [{ element, from, until: from + value }];
  });
}

export function costBars({ options, currency }: ChartedComparison, chart: string): Panel {
  const ends = options.flatMap((option) => pieces(option).map(({ until }) => until));
  return {
    axis: { name: '', from: 0, until: 1, ticks: [] },
    across: linearAxis({
      name: 'present value',
      unit: currency,
      values: ends.map((end) => (end > 0 ? SUM_ROOM * end : end)),
    }),
    height: ROW.height * options.length + GAP,
    inside: (plot) => options.map((option, place) => barDrawn(plot, option, { place, chart, currency })),
  };
}

function barDrawn(
  plot: Plot,
  option: ChartedOption,
  { place, chart, currency }: { readonly place: number; readonly chart: string; readonly currency: string },
): Markup {
  const top = plot.top + place * ROW.height;
  const barTop = top + ROW.name + GAP;
  const all = pieces(option);
  const rects = all.map(({ element, from, until }) => {
    const [left, right] = [plot.x(Math.min(from, until)), plot.x(Math.max(from, until))];
    return markup`<rect x="${left}" y="${barTop}" width="${right - left}" height="${ROW.bar}" fill="${fillOf(chart, element)}" stroke="${INKS.ink}" stroke-width="0.7"/>`;
  });
  const end = all.reduce((most, { until }) => Math.max(most, until), 0);
  const sum = `${sayNumber(option.presentValue, SUM_DIGITS)} ${currency}`;
  const room = { width: plot.width - NOTE_ROOM, size: TYPE.usual };
  const name = `${isolatedName(shortened(plainName(option.name), room))}${option.feasible ? '' : ' (does not serve)'}`;
  return markup`${words(name, [plot.left + GAP, top + ROW.name])}${rects}${words(sum, [plot.x(end) + GAP, barTop + ROW.bar - GAP], { isBold: true })}`;
}

const SUM_DIGITS = 5;
