/** States in words whether the pump does what it was set to. */
import type { ZoneOffsets } from '../../../models/calendar/zone-offsets.ts';
import { DIFFERS } from '../../../models/schedule/reading-state.ts';
import { clockWords } from '../../clock/clock-words.ts';
import type { Quantity } from '../../units/table.ts';
import type { UnitSystem } from '../../units/unit-system.ts';
import { sayAgainst, saySignedPercent } from '../../wording/against-limit.ts';
import { say, sayNumber } from '../../wording/numbers-in-words.ts';
import type { LatestReading } from './latest-reading.ts';

const DIGITS = 3;

/** `At 12:03 the pump was stopped: 0.5 W at 62 %.` `near`: the instant whose day is not stated. */
export function readingWords(
  { reading, verdict }: LatestReading,
  { zone, system, near }: { readonly zone: ZoneOffsets; readonly system: UnitSystem; readonly near: number },
): string {
  const at = `At ${clockWords(zone, reading.time, near)}`;
  const setting = `${sayNumber(reading.setting)} %`;
  const measured = [
    ...(reading.power === undefined ? [] : [say(reading.power, 'power', system, DIGITS)]),
    ...(reading.flow === undefined ? [] : [say(reading.flow, 'flow', system, DIGITS)]),
  ].join(' and ');
  switch (verdict.state) {
    case 'stopped':
      return `${at} the pump was stopped: ${measured} at ${setting}.`;
    case 'other-setting':
      return `${at} the setting was ${setting}, due ${sayNumber(verdict.due)} %.`;
    case 'differs':
      return `${at} ${differences(reading, verdict, system).join(' and ')} at ${setting}.`;
    case 'as-set':
      return `${at} the pump ran at ${setting} as set.`;
  }
}

function differences(
  reading: LatestReading['reading'],
  { predicted }: LatestReading['verdict'],
  system: UnitSystem,
): readonly string[] {
  if (predicted === null) return [];
  const one = (quantity: Extract<Quantity, 'power' | 'flow'>): readonly string[] => {
    const [value, expected] = [reading[quantity], predicted[quantity]];
    if (value === undefined || Math.abs(value - expected) <= DIFFERS * expected) return [];
    const said = sayAgainst({ value, stated: Number(expected.toPrecision(DIGITS)) }, quantity, system);
    const share = expected === 0 ? '' : ` (${saySignedPercent(value / expected - 1)})`;
    return [`the ${quantity} was ${said.value}, predicted ${said.stated}${share}`];
  };
  return [...one('power'), ...one('flow')];
}
