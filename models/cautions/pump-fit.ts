/** Gives the cautions about the curves fitted to a pump's points, whatever the loop. */

import { MET } from '../../curves/fit-piecewise-head.ts';
import { type HeadCurve, headAt } from '../../curves/head-curve.ts';
import { PERCENT } from '../../curves/percent.ts';
import type { PowerLaw } from '../../curves/power-law.ts';
import type { PumpModel } from '../pump/pump-model.ts';
import { headMisfit, type Misfit, powerMisfit } from './fit-misfit.ts';
import { type CautionOf, COMMON_PRACTICE, type Figures, topic } from './topic.ts';

export const PUMP_FIT = topic({
  'head-points-disagree': {
    severity: 'warning',
    sentence:
      'The head points lie far from any curve through them: one may be mistyped, or was taken at another speed than its setting says.',
    source:
      'root mean square of the residuals above 3 % of the largest head; published tables are met within 0.5 %',
  },
  'head-piecewise': {
    severity: 'note',
    sentence:
      'No smooth curve meets the head points within 1 % of the largest head, so the curve runs from point to point. Check the points about the knee.',
    source: 'monotone cubic by Fritsch and Carlson (1980) and Fritsch and Butland (1984)',
  },
  'head-shape-assumed': {
    severity: 'note',
    sentence:
      'Two head points do not determine the shape of the curve: a parabola is assumed, and `uncertainty` includes a straight line and a cube. Enter a third point.',
    source: COMMON_PRACTICE,
  },
  'head-below-zero': {
    severity: 'note',
    sentence:
      'The fitted head falls below zero before the largest entered flow: no figure of the pump holds out there.',
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
      'The power points follow an exponent of speed outside 2.5 to 3.3, or more than a quarter of the power at full speed does not go with speed: standby power may be missing, or the setting is not the speed.',
    source: 'affinity laws',
  },
  'power-exponent-assumed': {
    severity: 'note',
    sentence:
      'Power is entered at one speed only: for others 8 % of it is assumed not to go with speed, the rest with its cube. Measure the power at the setting that is used.',
    source: 'affinity laws',
  },
});

/** Exponents of power over speed that pumps show; outside, something else is in the points. */
const POWER_EXPONENTS = { least: 2.5, most: 3.3 } as const;

/** Share of the power at full speed, standby apart, above which a fixed loss is more than a motor has. */
const FIXED_SHARE_MOST = 0.25;

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
  const head = headMisfit(model);
  const power = powerMisfit(model);
  return [
    ...PUMP_FIT.when(
      head.meanSquareRoot > POOR.head,
      'head-points-disagree',
      [farthest('headPoints', head, 'of the largest head')],
      figures('headPoints', head, POOR.head),
    ),
    ...PUMP_FIT.when(headCurve.shape === 'piecewise', 'head-piecewise', [], {
      ...{ pointer: '/headPoints', value: head.meanSquareRoot, limit: MET },
    }),
    ...PUMP_FIT.when(headCurve.shape === 'assumed', 'head-shape-assumed', [], { pointer: '/headPoints' }),
    ...PUMP_FIT.when(fallsBelowZero(headCurve), 'head-below-zero'),
    ...PUMP_FIT.when(
      power.meanSquareRoot > POOR.power,
      'power-points-disagree',
      [farthest('powerPoints', power, 'of the fitted power')],
      figures('powerPoints', power, POOR.power),
    ),
    ...PUMP_FIT.when(powerLaw.exponentAssumed, 'power-exponent-assumed', [], { pointer: '/powerPoints' }),
    ...exponentCautions(powerLaw),
  ];
}

function exponentCautions({
  law,
  exponent,
  fixedPower,
  coefficient,
}: PowerLaw): readonly CautionOf<typeof PUMP_FIT>[] {
  const pointer = '/powerPoints';
  if (law === 'fixed-loss') {
    const value = fixedPower / (fixedPower + coefficient);
    const share = { pointer, value, limit: FIXED_SHARE_MOST };
    return PUMP_FIT.when(value > FIXED_SHARE_MOST, 'power-exponent', [], share);
  }
  const { least, most } = POWER_EXPONENTS;
  const limit = exponent < least ? least : most;
  const isOdd = exponent < least || exponent > most;
  return PUMP_FIT.when(isOdd, 'power-exponent', [], { pointer, value: exponent, limit });
}

const figures = (list: string, { meanSquareRoot, farthest: { index } }: Misfit, limit: number): Figures => ({
  pointer: `/${list}/${index}`,
  value: meanSquareRoot,
  limit,
});

const farthest = (list: string, { farthest: { index, share } }: Misfit, whole: string): string =>
  `farthest off: /${list}/${index}, by ${Math.round(PERCENT * Math.abs(share))} % ${whole}`;

/** Whether the curve ends below zero although no entered head does. */
function fallsBelowZero(curve: HeadCurve): boolean {
  return headAt(curve, curve.flowScale) < -ROUNDING * Math.abs(headAt(curve, 0));
}
