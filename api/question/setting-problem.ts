/** Refuses a setting that the controller of a pump does not have. */
import type { Pump } from '../../models/pump/pump.ts';
import { invalidRequest, type Problem } from '../http/problem.ts';

/** Null inside min..max, on the grid or off it. */
export function settingProblem({ settings: { min, max } }: Pump, setting: number): Problem | null {
  if (setting >= min && setting <= max) return null;
  return invalidRequest([
    { parameter: 'setting', detail: `must be within ${min}..${max} %, the settings of the pump` },
  ]);
}
