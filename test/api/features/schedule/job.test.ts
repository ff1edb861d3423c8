/** Which plans of a schedule are long jobs. */
import { describe, expect, it } from 'vitest';
import { type PlanWork, scheduleJob } from '../../../../api/features/schedule/job.ts';
import { DEFAULT_LIMITS } from '../../../../models/loop/limits.ts';
import { candidate, flume, manifold } from '../../question/sized-loops.ts';

const night = { name: 'night', from: '22:00', factor: 0.6 };
const phasesOf = (count: number, facts = {}) =>
  Array.from({ length: count }, (_, i) => ({ ...night, name: `phase ${i}`, ...facts }));

const isLong = (loop: typeof flume, phases: PlanWork['schedule']['phases']) =>
  scheduleJob.isLong(loop, {
    schedule: { phases },
    isScheduled: true,
    station: { pump: candidate, count: 1, limits: DEFAULT_LIMITS, elevation: 0 },
    installedSetting: 80,
    timeZone: 'UTC',
    tariff: null,
    price: 1,
    from: 0,
    year: 2026,
  });

describe('the job of a schedule', () => {
  it('is short for a day on a flume, with ramps and volumes too', () => {
    const volume = { perDay: 50, mayStop: true, splits: true };
    for (const day of [
      phasesOf(4),
      phasesOf(4, { rampMinutes: 30 }),
      phasesOf(2, { factor: undefined, volume }),
    ]) {
      expect(isLong(flume, day)).toBe(false);
    }
  });

  it('is long on a large loop, with many phases, or with many sets of closed outlets', () => {
    expect(isLong(manifold(400), phasesOf(1))).toBe(true);
    expect(isLong(manifold(40), phasesOf(2))).toBe(false);
    expect(isLong(manifold(40), phasesOf(24))).toBe(true);
    const openings = Array.from({ length: 8 }, (_, i) => ({ ...night, openings: { [`o${i}`]: 0 as const } }));
    expect(isLong(manifold(40), openings)).toBe(true);
  });
});
