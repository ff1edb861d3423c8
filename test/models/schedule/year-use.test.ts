/** A year of phases by hand: hours of the clock times the power of the duty. */
import { describe, expect, it } from 'vitest';
import { zoneAround } from '../../../api/clock/zone.ts';
import { civilYear } from '../../../models/calendar/civil-year.ts';
import { dutyPoint } from '../../../models/duty/duty-point.ts';
import { DEFAULT_LIMITS } from '../../../models/loop/limits.ts';
import { pumpAtSetting } from '../../../models/pump/pump-at-setting.ts';
import { fallbackOf } from '../../../models/schedule/fallback.ts';
import { planSchedule } from '../../../models/schedule/phase-plan.ts';
import { newMemory } from '../../../models/schedule/run-blocks.ts';
import type { Phase, Schedule } from '../../../models/schedule/schedule.ts';
import { stepsWithin } from '../../../models/schedule/setpoints.ts';
import { scheduleUse } from '../../../models/schedule/year-use.ts';
import { flatRate, ratesOf } from '../../../models/tariff/rates.ts';
import { expectClose } from '../../expect-close.ts';
import { canister, LITRE_PER_HOUR, loopOf, modelOf, outlet, pipe, pumpModelOf } from '../example-loops.ts';

const two = loopOf({
  run: [pipe(0.04, 2)],
  branches: [
    outlet('left', { requiredFlow: 2000 * LITRE_PER_HOUR }),
    outlet('right', { requiredFlow: 2500 * LITRE_PER_HOUR }, [pipe(0.03, 1)]),
  ],
});
const loop = modelOf(two);
const station = { pump: pumpModelOf(canister), count: 1, limits: DEFAULT_LIMITS, elevation: 0 };
const zone = zoneAround('Europe/Lisbon', 2026);
const year = civilYear(zone, 2026);

const planOf = (phases: readonly Phase[], emergency?: Schedule['emergency']) =>
  planSchedule({ phases, emergency }, loop, station);

const useOf = (phases: readonly Phase[], rates = flatRate(0.2)) => {
  const calendar = { phases, holidays: rates.holidays, zone };
  return scheduleUse(planOf(phases), calendar, { rates, zone }, year);
};

const powerAt = (setting: number, model = loop): number =>
  dutyPoint(model, pumpAtSetting(station.pump, { setting, count: 1 })).power;

const day: Phase = { name: 'day', from: '07:00', factor: 1 };
const night: Phase = { name: 'night', from: '22:00', factor: 0.6 };

describe('a phase', () => {
  it('runs at the smallest setting that serves it: one step less would not', () => {
    for (const factor of [0.6, 0.8, 1, 1.2]) {
      const [plan] = planOf([{ ...day, factor }]).phases;
      const { setting, feasible } = plan?.own ?? { setting: 0, feasible: false };
      expect(feasible).toBe(true);
      const flowsAt = (at: number) =>
        dutyPoint(loop, pumpAtSetting(station.pump, { setting: at, count: 1 })).outletFlows;
      const serves = (at: number) =>
        [2000, 2500].every((need, i) => (flowsAt(at)[i] ?? 0) >= need * factor * LITRE_PER_HOUR * (1 - 1e-9));
      expect(serves(setting)).toBe(true);
      expect(setting === 30 || !serves(setting - 1)).toBe(true);
    }
  });

  it('of required flows by outlet keeps those of the outlets that it does not name', () => {
    const [named, scaled] = planOf([
      { name: 'a', from: '00:00', requiredFlows: { left: 0 } },
      { name: 'b', from: '12:00', factor: 1 },
    ]).phases;
    expect(named?.loop.system.outlets.map(({ requiredFlow }) => requiredFlow)).toEqual([
      0,
      2500 * LITRE_PER_HOUR,
    ]);
    expect(named?.own.setting).toBeLessThanOrEqual(scaled?.own.setting ?? 0);
  });

  it('that shuts an outlet gives it nothing, and asks less of the pump', () => {
    const [shut, open] = planOf([
      { name: 'shut', from: '00:00', factor: 1, openings: { left: 0 } },
      { name: 'open', from: '12:00', factor: 1, openings: { left: 100 } },
    ]).phases;
    expect(shut?.own.duty.outletFlows[0]).toBe(0);
    expect(shut?.own.feasible).toBe(true);
    expect(shut?.own.setting ?? 100).toBeLessThan(open?.own.setting ?? 0);
  });

  it('that no setting serves has the highest inside the limits of the pump, and says so', () => {
    const limited = { ...canister, flowLimits: { max: 8000 * LITRE_PER_HOUR } };
    const tight = { ...station, pump: pumpModelOf(limited) };
    const [free] = planOf([{ ...day, factor: 5 }]).phases;
    expect(free?.own).toMatchObject({ feasible: false, setting: 100 });
    const [held] = planSchedule({ phases: [{ ...day, factor: 5 }] }, loop, tight).phases;
    expect(held?.own.feasible).toBe(false);
  });

  it('of an outlet that the loop has lost is infeasible, not an error', () => {
    const [gone] = planOf([{ name: 'a', from: '00:00', factor: 1, openings: { gone: 0 } }]).phases;
    expect(gone?.own.feasible).toBe(false);
  });
});

describe('a year of phases', () => {
  it('is the hours of the clock times the power of each phase', () => {
    // Both changes of the clock fall into the night: 365 x 9 h - 1 + 1.
    const [byDay, byNight] = useOf([day, night]);
    const [one, other] = planOf([day, night]).phases;
    expect([byDay?.hours, byNight?.hours]).toEqual([365 * 15, 365 * 9]);
    const dayEnergy = (365 * 15 * powerAt(one?.own.setting ?? 0)) / 1000;
    expectClose(byDay?.energy ?? 0, dayEnergy, { relative: 1e-9 });
    expectClose(byNight?.energy ?? 0, (365 * 9 * powerAt(other?.own.setting ?? 0)) / 1000, {
      relative: 1e-9,
    });
    expectClose(byDay?.cost ?? 0, 0.2 * dayEnergy, { relative: 1e-9 });
  });

  it('takes each hour at its own price', () => {
    const rates = ratesOf({
      name: 'evening',
      holidays: [],
      periods: [{ name: 'evening', price: 0.5, from: '20:00', to: '23:00' }],
      otherwise: { name: 'base', price: 0.1 },
      standingChargePerDay: 3,
    });
    // Day: 20:00 to 22:00 at 0.5, 13 h at 0.1. Night: 22:00 to 23:00 at 0.5, 8 h at 0.1.
    const [byDay, byNight] = useOf([day, night], rates);
    expectClose(byDay?.cost ?? 0, ((2 * 0.5 + 13 * 0.1) / 15) * (byDay?.energy ?? 0), { relative: 1e-9 });
    expectClose(byNight?.cost ?? 0, ((0.5 + 8 * 0.1) / 9) * (byNight?.energy ?? 0), { relative: 1e-9 });
  });

  it('averages a pulse by the share of its parts', () => {
    const pulse = { otherFactor: 0.4, periodMinutes: 15, share: 0.25 };
    const [pulsing] = useOf([{ ...day, factor: 1.2, pulse }]);
    const [high, low] = planOf([
      { ...day, factor: 1.2 },
      { ...day, from: '12:00', factor: 0.4 },
    ]).phases;
    const mean = 0.75 * powerAt(high?.own.setting ?? 0) + 0.25 * powerAt(low?.own.setting ?? 0);
    expectClose(pulsing?.power ?? 0, mean, { relative: 1e-9 });
  });

  it('averages a ramp over its time, not at its mean speed', () => {
    const ramped = { ...day, factor: 1.2, rampMinutes: 120 };
    const [with2h, ,] = useOf([ramped, { ...night, factor: 0.4 }]);
    const [high, low] = planOf([ramped, { ...night, factor: 0.4 }]).phases;
    const [from, to] = [low?.own.setting ?? 0, high?.own.setting ?? 0];
    // Another way: a thousand midpoints.
    let mean = 0;
    for (let i = 0; i < 1000; i++) mean += powerAt(from + ((to - from) * (i + 0.5)) / 1000) / 1000;
    // The first run of the year began in the year before, so that all 365 ramps are ramps.
    expectClose(with2h?.energy ?? 0, (365 * (2 * mean + 13 * powerAt(to))) / 1000, { relative: 1e-5 });
    expect(mean).toBeGreaterThan(powerAt((from + to) / 2));
  });

  it('moves a volume at no more than a steady flow would cost, each day', () => {
    const perDay = 24 * 5000e-3;
    const volume = { perDay, mayStop: true, splits: true };
    const [moved] = useOf([{ name: 'all', from: '00:00', volume }]);
    expectClose((moved?.flow ?? 0) * 86_400, perDay, { relative: 0.01 });
    const steady = planOf([{ name: 'all', from: '00:00', volume }]).phases[0]?.volume?.choices ?? [];
    const enough = steady.toSorted((a, b) => a.flow - b.flow).find(({ flow }) => flow * 86_400 >= perDay);
    expect(moved?.power ?? 0).toBeLessThanOrEqual((enough?.power ?? 0) * (1 + 1e-9));
  });
});

describe('the steps of a day', () => {
  const phases = [{ ...day, rampMinutes: 10 }, night];
  const rates = flatRate(0.2);
  const steps = stepsWithin(
    planOf(phases),
    { phases, holidays: rates.holidays, zone },
    { rates, zone },
    { from: Date.UTC(2026, 0, 15), until: Date.UTC(2026, 0, 16) },
    newMemory(),
  );

  it('meet end to end, on the grid, never down while they ramp up', () => {
    for (const [place, step] of steps.entries()) {
      const next = steps[place + 1];
      if (next === undefined) continue;
      expect(next.from).toBe(step.until);
      expect(Number.isInteger(step.setting)).toBe(true);
    }
    const ramp = steps.filter(({ phase, from }) => phase === 0 && from >= Date.UTC(2026, 0, 15, 7));
    expect(ramp.map(({ setting }) => setting)).toEqual(
      ramp.map(({ setting }) => setting).toSorted((a, b) => a - b),
    );
    expect(ramp.at(-1)?.setting).toBe(planOf(phases).phases[0]?.own.setting);
  });

  it('ramp up from the part of a pulse that ran last', () => {
    // Periods of an hour from 22:00 on, whose last half is the weak one: at 07:00 that is what runs.
    const pulsing = { ...night, pulse: { otherFactor: 0.2, periodMinutes: 60, share: 0.5 } };
    const both = [{ ...day, rampMinutes: 60 }, pulsing];
    const found = stepsWithin(
      planOf(both),
      { phases: both, holidays: rates.holidays, zone },
      { rates, zone },
      { from: Date.UTC(2026, 0, 15, 6), until: Date.UTC(2026, 0, 15, 12) },
      newMemory(),
    );
    const weak = planOf(both).phases[1]?.other?.setting ?? Number.NaN;
    const strong = planOf(both).phases[1]?.own.setting ?? Number.NaN;
    const last = found.filter(({ phase }) => phase === 1).at(-1);
    const first = found.find(({ phase }) => phase === 0);
    expect(last?.setting).toBe(weak);
    expect(strong).toBeGreaterThan(weak);
    expect(first?.setting).toBeLessThan((weak + strong) / 2);
  });

  it('fall back to a setting that serves every phase', () => {
    const plan = planOf(phases);
    const [first] = plan.phases;
    expect(fallbackOf(plan)).toEqual({
      setting: first?.own.setting,
      requiredFlowsMet: true,
      phasesBelowRequired: [],
    });
  });
});

describe('an emergency', () => {
  it('is the lowest setting that gives its share of the flows', () => {
    const { emergency } = planOf([day], { factor: 0.5 });
    const [half] = planOf([{ ...day, factor: 0.5 }]).phases;
    expect(emergency?.own.setting).toBe(half?.own.setting);
  });
});
