/** Marks what was measured in the chart of a loop. */

import { inUnit } from '../../drawing/in-units.ts';
import type { LegendRow } from '../../drawing/kit/legend.ts';
import { mark } from '../../drawing/kit/marks.ts';
import type { Plot } from '../../drawing/kit/plot.ts';
import { straight } from '../../drawing/kit/series.ts';
import type { Markup } from '../../drawing/markup/markup.ts';
import type { LoopFigures, MeasuredPoint } from './figures.ts';
import { MEASURED, MEASURED_ELSEWHERE, MEASURED_FLOW } from './styles.ts';

/** [px] */
const TICK = 9;

/** A flow without a head, at the setting that is shown, is a tick at the foot of the plot. */
export function measuredMarks({ measured, system }: LoopFigures, plot: Plot): readonly Markup[] {
  const [flowIn, headIn] = [inUnit('flow', system), inUnit('head', system)];
  const foot = plot.top + plot.height;
  return measured.flatMap(({ flow, head, isAtSetting }) => {
    const x = plot.x(flowIn(flow));
    if (head !== null) {
      return [mark([x, plot.y(headIn(head))], isAtSetting ? MEASURED : MEASURED_ELSEWHERE)];
    }
    return isAtSetting ? [straight([x, foot], [x, foot - TICK], MEASURED_FLOW)] : [];
  });
}

export function measuredLegend({ measured }: LoopFigures): readonly LegendRow[] {
  const has = (is: (point: MeasuredPoint) => boolean) => measured.some(is);
  return [
    ...(has(({ head, isAtSetting }) => head !== null && isAtSetting)
      ? [{ sample: { mark: MEASURED }, text: 'measured at this setting' }]
      : []),
    ...(has(({ head, isAtSetting }) => head !== null && !isAtSetting)
      ? [{ sample: { mark: MEASURED_ELSEWHERE }, text: 'measured at other settings' }]
      : []),
    ...(has(({ head, isAtSetting }) => head === null && isAtSetting)
      ? [{ sample: { line: MEASURED_FLOW }, text: 'flow measured at this setting without a head' }]
      : []),
  ];
}
