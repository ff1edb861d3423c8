/** A day's plan of a volume in duty points, and a year of a tariff in passes over 8760 numbers. */
import { zoneAround } from '../../api/clock/zone.ts';
import { civilYear } from '../../models/calendar/civil-year.ts';
import { dutyPoint } from '../../models/duty/duty-point.ts';
import { DEFAULT_LIMITS } from '../../models/loop/limits.ts';
import { compileLoop } from '../../models/network/compiled-loop.ts';
import { pumpAtSetting } from '../../models/pump/pump-at-setting.ts';
import { fitPump } from '../../models/pump/pump-model.ts';
import { planSchedule } from '../../models/schedule/phase-plan.ts';
import { volumeRun } from '../../models/schedule/volume-run.ts';
import { ratesOf } from '../../models/tariff/rates.ts';
import { hoursByRate } from '../../models/tariff/year-hours.ts';
import { expectValue } from '../curves/expect-value.ts';
import { loopExample, pumpExample } from '../openapi/read-example.ts';
import { type BenchRow, benchRow } from './bench-row.ts';
import { takeTurns } from './take-turns.ts';

const ROUNDS = 11;
const DAY = 86_400_000;
const HOURS = 8760;
const DUTY_POINTS = 200;
const PASSES = 200;

const zone = zoneAround('Europe/Lisbon', 2026);

/** Peak, night and base, by day of the week. */
const rates = ratesOf({
  name: 'three periods',
  holidays: ['2026-12-25'],
  periods: [
    { name: 'peak', price: 0.32, days: ['mon', 'tue', 'wed', 'thu', 'fri'], from: '17:00', to: '21:00' },
    { name: 'night', price: 0.11, from: '23:00', to: '06:00' },
  ],
  otherwise: { name: 'base', price: 0.15 },
  standingChargePerDay: 0,
});

function planBench(): BenchRow {
  const loop = expectValue(compileLoop(loopExample('loop-kelp-flume.json')));
  const settings = { min: 1, max: 100, step: 1 };
  const entered = { ...pumpExample('pump-canister-250.json'), settings };
  const model = { entered, fit: expectValue(fitPump(entered)) };
  const station = { pump: model, count: 1, limits: DEFAULT_LIMITS, elevation: 0 };
  const volume = { perDay: 100, mayStop: true, splits: true };
  const phases = [{ name: 'all', from: '00:00', volume }];
  const day = { from: Date.UTC(2026, 0, 15), until: Date.UTC(2026, 0, 15) + DAY };
  const plan = () => {
    const [one] = planSchedule({ phases }, loop, station).phases;
    if (one === undefined || !volumeRun(one, day, { rates, zone }, new Map()).feasible) {
      throw new Error('the volume is not moved');
    }
  };
  const at = pumpAtSetting(model, { setting: 70, count: 1 });
  const { first, second, ratio } = takeTurns({
    first: plan,
    second: () => dutyPoint(loop, at),
    rounds: ROUNDS,
    firstRuns: 3,
    secondRuns: 200,
  });
  return benchRow({
    name: 'plan of 24 h x 100 settings, in duty points',
    ratio,
    limit: { atMost: DUTY_POINTS },
    detail: `plan ${first.toFixed(2)} ms, duty point ${(1000 * second).toFixed(0)} us`,
  });
}

function tariffBench(): BenchRow {
  const numbers = Float64Array.from({ length: HOURS }, (_, hour) => hour % 24);
  const interval = civilYear(zone, 2026);
  let kept = 0;
  const { first, second, ratio } = takeTurns({
    first: () => {
      kept += hoursByRate({ rates, zone }, interval)[0] ?? 0;
    },
    second: () => {
      let sum = 0;
      for (let hour = 0; hour < HOURS; hour++) sum += numbers[hour] ?? 0;
      kept += sum;
    },
    rounds: ROUNDS,
    firstRuns: 200,
    secondRuns: 20_000,
  });
  if (!(kept > 0)) throw new Error('nothing was summed');
  return benchRow({
    name: 'a year of a three-period tariff, in passes over 8760 numbers',
    ratio,
    limit: { atMost: PASSES },
    detail: `year ${(1000 * first).toFixed(0)} us, pass ${(1000 * second).toFixed(1)} us`,
  });
}

export async function scheduleBench(): Promise<readonly BenchRow[]> {
  return [planBench(), tariffBench()];
}
