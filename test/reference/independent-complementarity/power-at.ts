/** A pump's power at a speed and a flow, and the interval that its laws leave. */

import type { PowerChoice } from './power-choice.ts';
import type { Law } from './power-laws.ts';

/** Speed ratio and flow [m3/s] of one pump. */
export interface PowerPlace {
  readonly ratio: number;
  readonly flow: number;
}

export interface Interval {
  readonly low: number;
  readonly high: number;
}

type Beyond = 'held' | 'tangent';

/** g at x: inside the measured flows exp(b1 x + b2 x^2), beyond them held or along the tangent, not below 0. */
function shapeAt({ data }: PowerChoice, { flowTerms }: Law, x: number, beyond: Beyond): number {
  const end = Math.min(data.high, Math.max(data.low, x));
  const [b1 = 0, b2 = 0] = flowTerms;
  const value = Math.exp(b1 * end + b2 * end ** 2);
  if (beyond === 'held' || x === end) return value;
  return Math.max(0, value * (1 + (b1 + 2 * b2 * end) * (x - end)));
}

function lawPower(choice: PowerChoice, law: Law, at: PowerPlace, beyond: Beyond): number {
  const speedPart = law.fixed + law.coefficient * at.ratio ** law.exponent;
  return choice.data.standby + speedPart * shapeAt(choice, law, choice.data.xAt(at), beyond);
}

/** Power [W] of one pump by the chosen law; beyond the measured flows it follows the tangent only where that rises. */
export const powerAt = (choice: PowerChoice, at: PowerPlace): number =>
  Math.max(lawPower(choice, choice.chosen, at, 'held'), lawPower(choice, choice.chosen, at, 'tangent'));

const SAME = 1e-9;

const isMeasuredSpeed = ({ data }: PowerChoice, ratio: number): boolean =>
  ratio >= data.slowest * (1 - SAME) && ratio <= data.fastest * (1 + SAME);

/** Least and greatest power [W] of one pump over some flows [m3/s]; `tolerance` is that of the high pump's power. */
export function powerBand(
  choice: PowerChoice,
  { ratio, flows, tolerance }: { ratio: number; flows: readonly number[]; tolerance: number },
): Interval {
  const laws = isMeasuredSpeed(choice, ratio) ? [choice.chosen] : choice.all;
  const powers = laws.flatMap((law) =>
    flows.flatMap((flow) =>
      (['held', 'tangent'] as const).map((beyond) => lawPower(choice, law, { ratio, flow }, beyond)),
    ),
  );
  return { low: Math.min(...powers), high: (1 + tolerance) * Math.max(...powers) };
}

/** Whether the power at a place rests on more than the measured speeds and flows. */
export function isExtrapolated(choice: PowerChoice, at: PowerPlace): boolean {
  const { data } = choice;
  const x = data.xAt(at);
  const slack = SAME * Math.max(1, Math.abs(x));
  return (
    (data.speeds > 1 && !isMeasuredSpeed(choice, at.ratio)) || x < data.low - slack || x > data.high + slack
  );
}
