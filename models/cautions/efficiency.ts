/** Gives the cautions about an efficiency that pumps of its size do not reach. */
import type { DutyFigures } from '../duty/duty-point.ts';
import { type CautionOf, COMMON_PRACTICE, topic } from './topic.ts';

export const EFFICIENCY = topic({
  'efficiency-implausible': {
    severity: 'warning',
    sentence:
      'Head, flow and power give an efficiency that pumps of this size do not have: a point may be in another unit, or the power may leave out the motor.',
    source: `${COMMON_PRACTICE}: at most 0.55 below 250 W, 0.70 below 2 kW; not looked up`,
  },
});

/** Wire-to-water efficiencies that pumps drawing less than `below` [W] do not exceed; smallest first. */
const HIGHEST = [
  { below: 250, efficiency: 0.55 },
  { below: 2000, efficiency: 0.7 },
] as const;

/** The efficiency [-] that a pump which draws `power` [W] does not exceed; null where none is set. */
export const highestEfficiency = (power: number): number | null =>
  HIGHEST.find(({ below }) => power < below)?.efficiency ?? null;

/** Judges the efficiency of a duty by the power of one of its pumps. */
export function efficiencyCautions({
  efficiency: value,
  power,
  count,
}: Pick<DutyFigures, 'efficiency' | 'power' | 'count'>): readonly CautionOf<typeof EFFICIENCY>[] {
  const limit = highestEfficiency(power / count);
  return limit === null ? [] : EFFICIENCY.when(value > limit, 'efficiency-implausible', [], { value, limit });
}
