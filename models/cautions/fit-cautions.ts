/** The cautions that the fits of a pump's head and power give, whatever the loop. */
import { type HeadCurve, headAt } from '../../curves/head-curve.ts';
import type { PumpModel } from '../pump/pump-model.ts';
import { type Caution, caution } from './catalogue.ts';
import { headMisfit, type Misfit, powerMisfit } from './fit-misfit.ts';

/** Exponents of power over speed that pumps show; outside, something else is in the points. */
const POWER_EXPONENTS = { least: 2.5, most: 3.3 } as const;

/**
 * Root mean square misfits above which points contradict one another. Published tables are met within 0.005 of the largest
 * head; one head of a handful read 20 % wrong gives 0.03 and more. Powers are read off less well, and go with their cube.
 */
const POOR = { head: 0.03, power: 0.1 } as const;
/** Heads below this share of the largest are rounding. */
const ROUNDING = 1e-9;
const PERCENT = 100;

export function fitCautions(model: PumpModel): readonly Caution[] {
  const { powerLaw, headCurve } = model.fit;
  const { exponent, exponentAssumed } = powerLaw;
  const isOdd = exponent < POWER_EXPONENTS.least || exponent > POWER_EXPONENTS.most;
  const head = headMisfit(model);
  const power = powerMisfit(model);
  return [
    ...(head.meanSquareRoot > POOR.head
      ? [caution('head-points-disagree', [farthest('headPoints', head, 'of the largest head')])]
      : []),
    ...(fallsBelowZero(headCurve) ? [caution('head-below-zero')] : []),
    ...(power.meanSquareRoot > POOR.power
      ? [caution('power-points-disagree', [farthest('powerPoints', power, 'of the fitted power')])]
      : []),
    ...(exponentAssumed ? [caution('power-exponent-assumed')] : []),
    ...(isOdd ? [caution('power-exponent')] : []),
  ];
}

const farthest = (list: string, { farthest: { index, share } }: Misfit, whole: string): string =>
  `farthest off: /${list}/${index}, by ${Math.round(PERCENT * Math.abs(share))} % ${whole}`;

/** Whether the curve ends below zero although no entered head does. */
function fallsBelowZero(curve: HeadCurve): boolean {
  return headAt(curve, curve.flowScale) < -ROUNDING * Math.abs(headAt(curve, 0));
}
