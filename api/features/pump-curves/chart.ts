/** Draws the head and power of a pump at several settings, as fitted and as entered. */
import { bestEfficiencyPoint } from '../../../models/pump/best-efficiency.ts';
import { pumpAtSetting } from '../../../models/pump/pump-at-setting.ts';
import type { PumpModel } from '../../../models/pump/pump-model.ts';
import { inUnit, quantityAxis } from '../../drawing/in-units.ts';
import type { LegendRow } from '../../drawing/kit/legend.ts';
import { type MarkStyle, mark } from '../../drawing/kit/marks.ts';
import type { LineStyle } from '../../drawing/kit/palette.ts';
import type { ChartPoint, Plot } from '../../drawing/kit/plot.ts';
import { bandBetween, lineThrough } from '../../drawing/kit/series.ts';
import { drawSheet, type Panel } from '../../drawing/kit/sheet.ts';
import { words } from '../../drawing/kit/words.ts';
import type { Markup } from '../../drawing/markup/markup.ts';
import { shortName } from '../../drawing/markup/name-text.ts';
import { DEFAULT_DENSITY } from '../../units/schema-context.ts';
import type { UnitSystem } from '../../units/unit-system.ts';
import { say, sayNumber } from '../../wording/numbers-in-words.ts';
import { type FlowPoint, type HeadBand, headBand, pumpPoints } from './drawn-curves.ts';
import { type EnteredPower, enteredPower } from './entered-power.ts';
import { shownSettings } from './shown-settings.ts';

const FULL: LineStyle = { ink: 'deep', width: 2.4 };
const SLOWER: LineStyle = { ink: 'deep', width: 1.4 };
const ENTERED: MarkStyle = { shape: 'circle', ink: 'ink', isFilled: false };
const WITHOUT_FLOW: MarkStyle = { shape: 'triangle', ink: 'ink', isFilled: false };
const BEST: MarkStyle = { shape: 'star', ink: 'rust', isFilled: true, size: 110 };
const HEIGHT = { head: 250, power: 160 } as const;

interface Curve {
  readonly setting: number;
  readonly points: readonly FlowPoint[];
}

interface Figures {
  readonly model: PumpModel;
  readonly curves: readonly Curve[];
  readonly band: readonly HeadBand[];
  readonly power: readonly EnteredPower[];
  readonly best: ReturnType<typeof bestEfficiencyPoint>;
  readonly system: UnitSystem;
}

export function pumpChart(
  model: PumpModel,
  { id, system }: { readonly id: string; readonly system: UnitSystem },
): Markup {
  const { entered: pump, fit } = model;
  const curves = shownSettings(pump).map((setting) => {
    const at = pumpAtSetting(model, { setting, count: 1 });
    return { setting, points: pumpPoints(at, { from: 0, until: at.flowScale }) };
  });
  const { max } = pump.settings;
  const until = pumpAtSetting(model, { setting: max, count: 1 }).flowScale;
  const figures: Figures = {
    model,
    curves,
    band: headBand(model, { setting: max, count: 1, until }),
    power: enteredPower(model),
    best: bestEfficiencyPoint(fit, { density: DEFAULT_DENSITY }),
    system,
  };
  const flows = [...curves.flatMap(({ points }) => points), ...pump.headPoints, ...figures.power].map(
    ({ flow }) => flow,
  );
  return drawSheet({
    id,
    title: `${shortName(pump.name)}: head and power`,
    subtitle: `Each line is one setting of the controller, as fitted to the entered points`,
    description: descriptionOf(figures),
    axis: quantityAxis({ name: 'flow', quantity: 'flow', system, values: flows, ticks: 7 }),
    panels: [headPanel(figures), powerPanel(figures)],
    legend: legendOf(figures),
    notes: ['Curves rest on the entered points. They never replace the limits that the maker states.'],
  });
}

const settingName = (setting: number): string => `${sayNumber(setting)} %`;

/** A line has its name at its end. */
function curveNames({ curves, system }: Figures, plot: Plot, of: 'head' | 'power'): readonly Markup[] {
  const [flow, value] = [inUnit('flow', system), inUnit(of, system)];
  return curves.flatMap(({ setting, points }) => {
    const end = points.at(-1);
    if (end === undefined) return [];
    return [
      words(settingName(setting), [plot.x(flow(end.flow)) + 6, plot.y(value(end[of])) + 4], { ink: 'deep' }),
    ];
  });
}

function curveLines(
  { curves, system }: Figures,
  plot: Plot,
  of: 'head' | 'power',
): readonly (Markup | null)[] {
  const [flow, value] = [inUnit('flow', system), inUnit(of, system)];
  return curves.map(({ points }, place) =>
    lineThrough(
      plot,
      points.map((point): ChartPoint => ({ x: flow(point.flow), y: value(point[of]) })),
      place === 0 ? FULL : SLOWER,
    ),
  );
}

function headPanel(figures: Figures): Panel {
  const { model, curves, band, best, system } = figures;
  const [flow, head] = [inUnit('flow', system), inUnit('head', system)];
  const heads = [...curves.flatMap(({ points }) => points), ...model.entered.headPoints].map(
    (point) => point.head,
  );
  const at = (plot: Plot, point: { readonly flow: number; readonly head: number }) =>
    [plot.x(flow(point.flow)), plot.y(head(point.head))] as const;
  return {
    axis: quantityAxis({
      name: 'head',
      quantity: 'head',
      system,
      values: [...heads, ...band.map(({ high }) => high)],
    }),
    height: HEIGHT.head,
    inside: (plot) => [
      bandBetween(
        plot,
        band.map((one) => ({ x: flow(one.flow), low: head(one.low), high: head(one.high) })),
        'haze',
      ),
      ...curveLines(figures, plot, 'head'),
    ],
    over: (plot) => [
      ...curveNames(figures, plot, 'head'),
      ...model.entered.headPoints.map((point) => mark(at(plot, point), ENTERED)),
      best === null ? null : mark(at(plot, best), BEST),
    ],
  };
}

function powerPanel(figures: Figures): Panel {
  const { curves, power: entered, system } = figures;
  const [flow, power] = [inUnit('flow', system), inUnit('power', system)];
  const values = [...curves.flatMap(({ points }) => points), ...entered].map((point) => point.power);
  return {
    axis: quantityAxis({ name: 'electrical power', quantity: 'power', system, values, ticks: 4 }),
    height: HEIGHT.power,
    inside: (plot) => curveLines(figures, plot, 'power'),
    over: (plot) => [
      ...curveNames(figures, plot, 'power'),
      ...entered.map((point) =>
        mark(
          [plot.x(flow(point.flow)), plot.y(power(point.power))],
          point.isFlowKnown ? ENTERED : WITHOUT_FLOW,
        ),
      ),
    ],
  };
}

const bandWords = ({ entered: pump }: PumpModel): string =>
  pump.grade === undefined
    ? 'where the head may lie at the highest setting, by the scatter of the points (95 %)'
    : `where the head may lie at the highest setting, by acceptance grade ${pump.grade} and the scatter of the points`;

const bestWords = ({ best, system }: Figures): string =>
  best === null
    ? ''
    : `best efficiency at full speed: ${sayNumber(100 * best.efficiency, 3)} % wire to water at ${say(best.flow, 'flow', system)} and ${say(best.head, 'head', system)}`;

function legendOf(figures: Figures): readonly LegendRow[] {
  const { band, best, power, model } = figures;
  const isFlowless = power.some(({ isFlowKnown }) => !isFlowKnown);
  return [
    { sample: { line: FULL }, text: 'fitted, at the highest setting; thinner lines: lower settings' },
    { sample: { mark: ENTERED }, text: 'entered points' },
    ...(isFlowless ? [{ sample: { mark: WITHOUT_FLOW }, text: 'power entered without its flow' }] : []),
    ...(best === null ? [] : [{ sample: { mark: BEST }, text: bestWords(figures) }]),
    ...(band.length === 0 ? [] : [{ sample: { band: 'haze' as const }, text: bandWords(model) }]),
  ];
}

function descriptionOf(figures: Figures): string {
  const { model, curves, system } = figures;
  const lines = curves.map(({ setting, points }) => {
    const [first, last] = [points[0], points.at(-1)];
    if (first === undefined || last === undefined) return '';
    const to = `${say(last.head, 'head', system)} and ${say(last.power, 'power', system)} at ${say(last.flow, 'flow', system)}`;
    return `At ${settingName(setting)}: from ${say(first.head, 'head', system)} and ${say(first.power, 'power', system)} at no flow to ${to}.`;
  });
  const best = bestWords(figures);
  return [
    `Two plots over flow: head above, electrical power below. ${model.entered.headPoints.length} points of head and ${model.entered.powerPoints.length} of power were entered.`,
    ...lines,
    ...(best === '' ? [] : [`The ${best}.`]),
  ].join(' ');
}
