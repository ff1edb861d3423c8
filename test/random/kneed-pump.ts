/** An invented pump whose points are few, or fall off at the end as no sum of powers does. */
import type { HeadPoint } from '../../models/pump/pump.ts';
import type { Draw } from './draw.ts';
import type { ExtendedPump } from './extended-loop.ts';

/** Points of full speed with a steep end put to them. */
function kneed(draw: Draw, full: readonly HeadPoint[]): readonly HeadPoint[] {
  const last = full.at(-1);
  if (last === undefined) throw new Error('a pump without points');
  const fall = draw.between(0.4, 0.7);
  const beyond = [
    { flow: 1.04, head: fall },
    { flow: 1.07, head: fall * draw.between(0.2, 0.5) },
  ];
  return [
    ...full,
    ...beyond.map(({ flow, head }) => ({ flow: flow * last.flow, head: head * last.head, setting: 100 })),
  ];
}

/** The same pump, sometimes with two points alone, sometimes with a knee. */
export function withOtherPoints(draw: Draw, pump: ExtendedPump): ExtendedPump {
  const full = pump.headPoints.filter(({ setting }) => setting === 100);
  const [first, last] = [full[0], full.at(-1)];
  if (draw.chance(0.15) && first !== undefined && last !== undefined)
    return { ...pump, headPoints: [first, last] };
  return draw.chance(0.2) ? { ...pump, headPoints: kneed(draw, full) } : pump;
}
