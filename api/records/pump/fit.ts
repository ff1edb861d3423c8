/** Fits the curves of an entered pump, or names the points that give none. */
import { failed, type Result } from '../../../curves/result.ts';
import type { Pump } from '../../../models/pump/pump.ts';
import { fitPump, type PumpFailure, type PumpFit } from '../../../models/pump/pump-model.ts';
import { type PathPart, toPointer } from '../../http/json-pointer.ts';
import { invalidRequest, type Problem } from '../../http/problem.ts';

interface Place {
  /** The member below the path of the failure. */
  readonly member?: string;
  readonly detail: string;
}

function placeOf(failure: PumpFailure): Place {
  switch (failure.code) {
    case 'speed-map-not-rising':
      return { member: failure.member, detail: 'must be above that of the point before' };
    case 'speed-map-too-short':
      return {
        member: 'setting',
        detail: `must reach the setting ${failure.needed} %: the map spans the settings`,
      };
    case 'too-few-distinct-flows':
      return {
        detail: `have ${failure.distinct} distinct flows at full speed; ${failure.needed} are needed, or two of which one is 0`,
      };
    case 'no-falling-curve':
      return { detail: 'give no head curve that falls with flow' };
    case 'no-points':
      return { detail: 'are needed' };
    case 'speed-not-positive':
      return { member: 'setting', detail: 'has no speed above 0' };
    case 'power-not-above-standby':
      return { member: 'power', detail: `must be above standbyPower, ${failure.standbyPower} W` };
    case 'power-beyond-range':
      return {
        detail: `give a power at setting ${failure.setting} % that no pump draws: one of them is far off the others`,
      };
    case 'power-falls-with-speed':
      return {
        member: 'power',
        detail: `is below the ${failure.slowerPower} W of point ${failure.slowerIndex}, at a lower speed`,
      };
  }
}

/** `at` is the place of the pump in the request's body. */
export function fitPumpOrProblem(pump: Pump, at: readonly PathPart[] = []): Result<PumpFit, Problem> {
  const fit = fitPump(pump);
  if (fit.ok) return fit;
  const { member, detail } = placeOf(fit.failure);
  const path = [...at, ...fit.failure.path, ...(member === undefined ? [] : [member])];
  return failed(invalidRequest([{ pointer: toPointer(path), detail }]));
}
