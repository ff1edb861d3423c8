/** Gives the cautions about what a pump's motor is made for. */
import type { DutyFigures } from '../duty/duty-point.ts';
import type { Pump } from '../pump/pump.ts';
import { type CautionOf, topic } from './topic.ts';

export const MOTOR = topic({
  'motor-overload': {
    severity: 'warning',
    sentence:
      'The pump draws more than its motor bears for long: it overheats and may burn out. Lower the setting, or throttle the loop.',
    source: 'rated power as entered',
  },
});

/** Judges the power of each pump at a duty; nothing where its rated power is not entered. */
export function motorCautions(
  { ratedPower: limit = Number.POSITIVE_INFINITY }: Pick<Pump, 'ratedPower'>,
  { power, count }: Pick<DutyFigures, 'power' | 'count'>,
): readonly CautionOf<typeof MOTOR>[] {
  const value = power / count;
  const drawn = { pointer: '/ratedPower', value, limit, quantity: 'power' } as const;
  return MOTOR.when(value > limit, 'motor-overload', [], drawn);
}
