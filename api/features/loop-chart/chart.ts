/** Draws the curve of a pump against the system curve of a loop, and the duty point where they meet. */

import { pumpAtSetting } from '../../../models/pump/pump-at-setting.ts';
import { inUnit, quantityAxis } from '../../drawing/in-units.ts';
import { mark } from '../../drawing/kit/marks.ts';
import type { LineStyle } from '../../drawing/kit/palette.ts';
import type { Plot } from '../../drawing/kit/plot.ts';
import { bandBetween, straight } from '../../drawing/kit/series.ts';
import { drawSheet, type Panel } from '../../drawing/kit/sheet.ts';
import type { Markup } from '../../drawing/markup/markup.ts';
import { shortName } from '../../drawing/markup/name-text.ts';
import { dataEnd, type FlowPoint, type HeadBand, headBand, pumpPoints } from '../pump-curves/drawn-curves.ts';
import { BEYOND_LINE, headLine, PUMP_LINE } from '../pump-curves/pump-line.ts';
import type { LoopFigures } from './figures.ts';
import { measuredMarks } from './measured-marks.ts';
import { DUTY, OTHER_CROSSING, REQUIRED, SYSTEM_LINE } from './styles.ts';
import { loopDescription, loopLegend, loopSubtitle } from './words.ts';

const GUIDE: LineStyle = { ink: 'slate', width: 1, dash: '2 4' };
const HEIGHT = 290;
/** What the system curve may still rise by above everything else. */
const ABOVE = 1.12;
const ASIDE = 1.12;

interface Curves {
  readonly pump: readonly FlowPoint[];
  readonly beyond: readonly FlowPoint[];
  readonly band: readonly HeadBand[];
  readonly until: number;
}

export function loopChart(figures: LoopFigures, { id }: { readonly id: string }): Markup {
  const { loopName, system } = figures;
  const curves = curvesOf(figures);
  return drawSheet({
    id,
    title: `${shortName(loopName)}: pump and system`,
    subtitle: loopSubtitle(figures),
    description: loopDescription(figures),
    axis: quantityAxis({ name: 'total flow', quantity: 'flow', system, values: [curves.until], ticks: 7 }),
    panels: [headPanel(figures, curves)],
    legend: loopLegend(figures, {
      isBeyond: curves.beyond.length > 0,
      isUncertain: curves.band.length > 0,
      isCrossedAgain: otherCrossings(figures).length > 0,
    }),
    notes: [
      'Estimates from the entered points and pipework. They never replace the limits of the maker, local code or licensed practice.',
    ],
  });
}

/** Flow [m3/s] up to which a loop's chart goes, so that the duty, what is needed and the pump's own points show. */
export function chartedFlow({
  required,
  shown,
  measured,
}: Pick<LoopFigures, 'required' | 'shown' | 'measured'>): number | null {
  const flows = [
    ...measured.map(({ flow }) => ASIDE * flow),
    ...(required === null ? [] : [ASIDE * required.flow]),
    ...(shown === null ? [] : [ASIDE * shown.duty.flow, dataEnd(shown.model, shown.duty)]),
  ];
  return flows.length === 0 ? null : Math.max(...flows);
}

function curvesOf(figures: LoopFigures): Curves {
  const { shown, needed } = figures;
  const until = Math.max(chartedFlow(figures) ?? 0, ...needed.map(({ flow }) => flow));
  if (shown === null) return { pump: [], beyond: [], band: [], until };
  const { model, duty } = shown;
  const end = dataEnd(model, duty);
  const pump = pumpAtSetting(model, duty);
  const beyond = until > end ? pumpPoints(pump, { from: end, until }) : [];
  return {
    pump: pumpPoints(pump, { from: 0, until: end }),
    beyond: beyond.filter(({ head }) => head >= 0),
    band: headBand(model, { ...duty, until: end }),
    until,
  };
}

function headPanel(figures: LoopFigures, curves: Curves): Panel {
  const { needed, required, shown, system, measured } = figures;
  const [flow, head] = [inUnit('flow', system), inUnit('head', system)];
  const heads = [
    ...curves.pump.map((point) => point.head),
    ...curves.band.map(({ high }) => high),
    ...(required === null ? [] : [required.head]),
    ...(shown === null ? [] : [shown.duty.head]),
    ...measured.flatMap((point) => point.head ?? []),
  ];
  const most = heads.length === 0 ? Number.POSITIVE_INFINITY : ABOVE * Math.max(...heads);
  const values = [...heads, ...needed.map((point) => Math.min(point.head, most))];
  const at = (plot: Plot, point: { readonly flow: number; readonly head: number }) =>
    [plot.x(flow(point.flow)), plot.y(head(point.head))] as const;
  const band = curves.band.map((one) => ({ x: flow(one.flow), low: head(one.low), high: head(one.high) }));
  return {
    axis: quantityAxis({ name: 'head', quantity: 'head', system, values }),
    height: HEIGHT,
    inside: (plot) => [
      bandBetween(plot, band, 'haze'),
      headLine(plot, curves.pump, { system, style: PUMP_LINE }),
      headLine(plot, curves.beyond, { system, style: BEYOND_LINE }),
      headLine(plot, needed, { system, style: SYSTEM_LINE }),
      ...(shown === null ? [] : guides(plot, at(plot, shown.duty))),
    ],
    over: (plot) => [
      ...measuredMarks(figures, plot),
      ...otherCrossings(figures).map((crossing) => mark(at(plot, crossing), OTHER_CROSSING)),
      required === null ? null : mark(at(plot, required), REQUIRED),
      shown === null ? null : mark(at(plot, shown.duty), DUTY),
    ],
  };
}

/** From the duty to both axes. */
const guides = (plot: Plot, [x, y]: readonly [number, number]): readonly Markup[] => [
  straight([x, y], [x, plot.top + plot.height], GUIDE),
  straight([plot.left, y], [x, y], GUIDE),
];

/** Crossings further than rounding from the duty. */
const APART = 1e-6;

const otherCrossings = ({ shown }: LoopFigures) =>
  shown === null
    ? []
    : shown.crossings.filter(
        ({ flow }) => Math.abs(flow - shown.duty.flow) > APART * Math.max(flow, shown.duty.flow),
      );
