/** The cautions that the fit of a pump's power gives, whatever the loop. */
import type { PumpModel } from '../pump-model.ts';
import { type Caution, caution } from './catalogue.ts';

/** Exponents of power over speed that pumps show; outside, something else is in the points. */
const POWER_EXPONENTS = { least: 2.5, most: 3.3 } as const;

export function fitCautions({ fit: { powerLaw } }: PumpModel): readonly Caution[] {
  const { exponent, exponentAssumed } = powerLaw;
  const isOdd = exponent < POWER_EXPONENTS.least || exponent > POWER_EXPONENTS.most;
  return [
    ...(exponentAssumed ? [caution('power-exponent-assumed')] : []),
    ...(isOdd ? [caution('power-exponent')] : []),
  ];
}
