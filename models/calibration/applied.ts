/** A calibration in use: what is computed on a loop and its pump rests on it from then on. */

import type { Loop } from '../loop/loop.ts';
import type { CalibratedAssurance } from '../pump/calibrated-fit.ts';
import { calibratedFit } from '../pump/calibrated-fit.ts';
import type { Factors } from '../pump/factors.ts';
import type { PumpFit } from '../pump/pump-model.ts';
import type { SettledParameter } from './next-readings.ts';

/** Plain JSON. Times in ms since 1970-01-01T00:00Z. */
export interface AppliedCalibration {
  readonly parameters: readonly SettledParameter[];
  readonly factors: Factors;
  /** Where the limiting margin is at the low end of its interval. */
  readonly worstCase: Pick<Factors, 'friction' | 'head'>;
  /** The pump whose head and power the factors are about, with the curves that they multiply. */
  readonly pump: { readonly id: string; readonly fit: PumpFit };
  /** The readings it rests on. */
  readonly from: number;
  readonly to: number;
  readonly readingCount: number;
  readonly modelVersion: string;
}

const calibratedLoops = new WeakMap<Loop, WeakMap<AppliedCalibration, Loop>>();

/** The loop with its friction multiplied; the same object for the same two, so that it is compiled once. */
export function calibratedLoop(loop: Loop, calibration: AppliedCalibration | null | undefined): Loop {
  if (calibration === null || calibration === undefined) return loop;
  const known = calibratedLoops.get(loop) ?? new WeakMap<AppliedCalibration, Loop>();
  calibratedLoops.set(loop, known);
  const made = known.get(calibration) ?? {
    ...loop,
    frictionMultiplier: calibration.factors.friction * loop.frictionMultiplier,
  };
  known.set(calibration, made);
  return made;
}

/** Whether factors of head and power are about a pump: not once its points have changed. */
export const isAbout = (
  { pump }: Pick<AppliedCalibration, 'pump'>,
  { id, fit }: { readonly id: string | null; readonly fit: PumpFit },
): boolean => pump.id === id && JSON.stringify(pump.fit) === JSON.stringify(fit);

/** What the bad end of a calibration takes of the loop and its pump as calibrated. */
export const calibratedAssurance = ({
  factors,
  worstCase: badEnd,
  pump,
}: AppliedCalibration): CalibratedAssurance => ({
  calibration: {
    friction: badEnd.friction / factors.friction,
    head: badEnd.head / factors.head,
    fit: calibratedFit(pump.fit, factors),
  },
});

const calibratedFits = new WeakMap<AppliedCalibration, PumpFit>();

/** The curves of a pump on the loop: multiplied where the calibration is about it, else as they are. */
export function fitOnLoop(
  pump: { readonly id: string | null; readonly fit: PumpFit },
  calibration: AppliedCalibration | null | undefined,
): PumpFit {
  if (calibration === null || calibration === undefined || !isAbout(calibration, pump)) return pump.fit;
  const known = calibratedFits.get(calibration) ?? calibratedFit(pump.fit, calibration.factors);
  calibratedFits.set(calibration, known);
  return known;
}
