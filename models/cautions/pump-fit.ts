/** Gives the cautions about the curves fitted to a pump's points, whatever the loop. */

import { type HeadCurve, headAt } from '../../curves/head-curve.ts';
import { PERCENT } from '../../curves/percent.ts';
import type { PumpModel } from '../pump/pump-model.ts';
import { headMisfit, type Misfit, powerMisfit } from './fit-misfit.ts';
import { type CautionOf, topic } from './topic.ts';

export const PUMP_FIT = topic({
  'head-points-disagree': {
    severity: 'warning',
    sentence:
      'The head points lie far from any curve through them: one may be mistyped, or was taken at another speed than its setting says.',
    source:
      'root mean square of the residuals above 3 % of the largest head; published tables are met within 0.5 %',
  },
  'head-below-zero': {
    severity: 'note',
    sentence:
      'The fitted head falls below zero before the largest entered flow: nothing told of the pump holds out there.',
    source: 'rule of the head-curve fit',
  },
  'power-points-disagree': {
    severity: 'warning',
    sentence:
      'The power points lie far from the law fitted to them: one may be mistyped, or was taken at another speed than its setting says.',
    source: 'root mean square of entered over fitted power, standby apart, above 10 %',
  },
  'power-exponent': {
    severity: 'warning',
    sentence:
      'The power points follow an exponent of speed outside 2.5 to 3.3: standby power may be missing, or the setting is not the speed.',
    source: 'affinity laws',
  },
  'power-exponent-assumed': {
    severity: 'note',
    sentence: 'Power is entered at one speed only: the cube law was assumed for the others.',
    source: 'affinity laws',
  },
});

/** Exponents of power over speed that pumps show; outside, something else is in the points. */
const POWER_EXPONENTS = { least: 2.5, most: 3.3 } as const;

/**
 * Root mean square misfits above which points contradict one another. Published tables are met within 0.005 of the largest
 * head; one head of a handful read 20 % wrong gives 0.03 and more. Powers are read off less well, and go with their cube.
 */
const POOR = { head: 0.03, power: 0.1 } as const;
/** Heads below this share of the largest are rounding. */
const ROUNDING = 1e-9;

/** Judges how the entered points lie about the curves fitted to them. */
export function fitCautions(model: PumpModel): readonly CautionOf<typeof PUMP_FIT>[] {
  const { powerLaw, headCurve } = model.fit;
  const { exponent, exponentAssumed } = powerLaw;
  const isOdd = exponent < POWER_EXPONENTS.least || exponent > POWER_EXPONENTS.most;
  const head = headMisfit(model);
  const power = powerMisfit(model);
  return [
    ...PUMP_FIT.when(head.meanSquareRoot > POOR.head, 'head-points-disagree', [
      farthest('headPoints', head, 'of the largest head'),
    ]),
    ...PUMP_FIT.when(fallsBelowZero(headCurve), 'head-below-zero'),
    ...PUMP_FIT.when(power.meanSquareRoot > POOR.power, 'power-points-disagree', [
      farthest('powerPoints', power, 'of the fitted power'),
    ]),
    ...PUMP_FIT.when(exponentAssumed, 'power-exponent-assumed'),
    ...PUMP_FIT.when(isOdd, 'power-exponent'),
  ];
}

const farthest = (list: string, { farthest: { index, share } }: Misfit, whole: string): string =>
  `farthest off: /${list}/${index}, by ${Math.round(PERCENT * Math.abs(share))} % ${whole}`;

/** Whether the curve ends below zero although no entered head does. */
function fallsBelowZero(curve: HeadCurve): boolean {
  return headAt(curve, curve.flowScale) < -ROUNDING * Math.abs(headAt(curve, 0));
}
