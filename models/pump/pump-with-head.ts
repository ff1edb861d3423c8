/** Multiplies the head of one pump, known from others by its curves. */

import { calibratedFit } from './calibrated-fit.ts';
import { type PumpMaker, pumpAtSetting } from './pump-at-setting.ts';
import type { PumpFit } from './pump-model.ts';

/**
 * Brings pumps to a setting, the one of the curves `fit` with its head times `head` [-]; pumps of other curves are as
 * they are.
 */
export function pumpWithHead({ head, fit }: { readonly head: number; readonly fit: PumpFit }): PumpMaker {
  const own = JSON.stringify(fit);
  // A pump is made at many settings, of the same curves.
  const known = new WeakMap<PumpFit, PumpFit>();
  return (model, place) => {
    const made =
      known.get(model.fit) ??
      (JSON.stringify(model.fit) === own ? calibratedFit(model.fit, { head, power: 1 }) : model.fit);
    known.set(model.fit, made);
    return pumpAtSetting({ ...model, fit: made }, place);
  };
}
