/** Draws the settings, flow, power and price of a loop through one day. */

import { inUnit, quantityAxis } from '../../drawing/in-units.ts';
import { type Axis, linearAxis } from '../../drawing/kit/axis.ts';
import { INKS } from '../../drawing/kit/palette.ts';
import type { ChartPoint, Plot } from '../../drawing/kit/plot.ts';
import { lineThrough } from '../../drawing/kit/series.ts';
import { drawSheet, type Panel } from '../../drawing/kit/sheet.ts';
import { TYPE, words } from '../../drawing/kit/words.ts';
import { type Markup, markup } from '../../drawing/markup/markup.ts';
import { isolatedName, plainName, shortened, shortName } from '../../drawing/markup/name-text.ts';
import { FULL_SETTING } from '../../fields/full-setting.ts';
import { unitInForce } from '../../units/convert.ts';
import type { DayFigures, DayStep } from './day.ts';
import { DAY_LINE, SHORT_LINE } from './day-styles.ts';
import { dayDescription, dayLegend, dayNotes, daySubtitle } from './day-words.ts';

const HEIGHT = { phases: 24, setting: 110, flow: 90, power: 90, price: 80 } as const;
const TICKS = 4;
/** A name in less room than this says nothing [px]. */
const NAME_ROOM = 26;

export function dayChart(figures: DayFigures, { id }: { readonly id: string }): Markup {
  const { loopName, date } = figures;
  return drawSheet({
    id,
    title: `${shortName(loopName)}: settings through ${date}`,
    subtitle: daySubtitle(figures),
    description: dayDescription(figures),
    axis: clockAxis(figures),
    panels: [
      ...phasePanels(figures),
      settingPanel(figures),
      quantityPanel(figures, { of: 'flow', name: 'flow' }),
      quantityPanel(figures, { of: 'power', name: 'electrical power' }),
      ...pricePanels(figures),
    ],
    legend: dayLegend(figures),
    notes: dayNotes(figures),
  });
}

const clockAxis = ({ from, until, clock, timeZone }: DayFigures): Axis => ({
  name: `time of day, ${timeZone}`,
  from,
  until,
  ticks: clock.map(({ at, label }) => ({ value: at, label })),
});

/** Each figure holds until the next; the last to the end of the day. */
const held = <Step extends { readonly from: number; readonly until: number }>(
  steps: readonly Step[],
  figure: (step: Step) => number,
): readonly ChartPoint[] =>
  steps.flatMap((step) => [
    { x: step.from, y: figure(step) },
    { x: step.until, y: figure(step) },
  ]);

/** Neighbouring steps of one phase are one run of it. */
function phaseRuns({ steps }: DayFigures): readonly Pick<DayStep, 'from' | 'until' | 'phase'>[] {
  const runs: Pick<DayStep, 'from' | 'until' | 'phase'>[] = [];
  for (const { from, until, phase } of steps) {
    const last = runs.at(-1);
    if (last !== undefined && last.phase === phase) runs[runs.length - 1] = { ...last, until };
    else runs.push({ from, until, phase });
  }
  return runs;
}

/** None without a schedule: then no phase has a name. */
function phasePanels(figures: DayFigures): readonly Panel[] {
  if (figures.steps.every(({ phase }) => phase === null)) return [];
  const runs = phaseRuns(figures);
  return [
    {
      axis: { name: 'phase', from: 0, until: 1, ticks: [] },
      height: HEIGHT.phases,
      inside: (plot) => runs.map((run, place) => phaseDrawn(plot, run, place % 2 === 0)),
    },
  ];
}

function phaseDrawn(
  plot: Plot,
  { from, until, phase }: Pick<DayStep, 'from' | 'until' | 'phase'>,
  isShaded: boolean,
): Markup {
  const [left, width] = [plot.x(from), plot.x(until) - plot.x(from)];
  const middle = [left + width / 2, plot.top + plot.height / 2 + TYPE.small / 3] as const;
  const name = isolatedName(shortened(plainName(phase ?? ''), { width: width - 4, size: TYPE.small }));
  const label = width < NAME_ROOM ? null : words(name, middle, { size: TYPE.small, anchor: 'middle' });
  return markup`<rect x="${left}" y="${plot.top}" width="${width}" height="${plot.height}" fill="${isShaded ? INKS.haze : INKS.paper}" stroke="${INKS.slate}" stroke-width="0.6"/>${label}`;
}

function settingPanel({ steps }: DayFigures): Panel {
  const axis = linearAxis({ name: 'setting', unit: '%', values: [FULL_SETTING], ticks: TICKS });
  const short = steps.filter(({ feasible }) => !feasible);
  return {
    axis,
    height: HEIGHT.setting,
    over: (plot) => [
      ...short.map((step) =>
        lineThrough(
          plot,
          held([step], ({ setting }) => setting),
          SHORT_LINE,
        ),
      ),
      lineThrough(
        plot,
        held(steps, ({ setting }) => setting),
        DAY_LINE,
      ),
    ],
  };
}

function quantityPanel(
  { steps, system }: DayFigures,
  { of, name }: { readonly of: 'flow' | 'power'; readonly name: string },
): Panel {
  const convert = inUnit(of, system);
  return {
    axis: quantityAxis({ name, quantity: of, system, values: steps.map((step) => step[of]), ticks: TICKS }),
    height: HEIGHT[of],
    inside: (plot) => [
      lineThrough(
        plot,
        held(steps, (step) => convert(step[of])),
        DAY_LINE,
      ),
    ],
  };
}

function pricePanels({ prices, currency, system }: DayFigures): readonly Panel[] {
  if (prices === null) return [];
  const unit = `${currency}/${unitInForce('energy', system)}`;
  const values = prices.map(({ price }) => price);
  return [
    {
      axis: linearAxis({ name: 'price', unit, values, ticks: TICKS }),
      height: HEIGHT.price,
      inside: (plot) => [
        lineThrough(
          plot,
          held(prices, ({ price }) => price),
          DAY_LINE,
        ),
      ],
    },
  ];
}
