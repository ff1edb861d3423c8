/** A plan worked out elsewhere and taken up again: the same settings and duties, and nothing solved twice. */
import { describe, expect, it } from 'vitest';
import { rememberedDuty } from '../../../models/duty/duty-memory.ts';
import { DEFAULT_LIMITS } from '../../../models/loop/limits.ts';
import type { CompiledLoop } from '../../../models/network/compiled-loop.ts';
import { fallbackOf } from '../../../models/schedule/fallback.ts';
import { planFigures, planSchedule } from '../../../models/schedule/phase-plan.ts';
import type { Schedule } from '../../../models/schedule/schedule.ts';
import { volumeStride } from '../../../models/schedule/volume-choices.ts';
import { expectClose } from '../../expect-close.ts';
import { kelpFlume } from '../../reference/independent/kelp-flume.ts';
import { canister, modelOf, pumpModelOf } from '../example-loops.ts';

const STATION = { pump: pumpModelOf(canister), count: 1, limits: DEFAULT_LIMITS, elevation: 0 };
const SCHEDULE: Pick<Schedule, 'phases' | 'emergency'> = {
  phases: [
    { name: 'day', from: '07:00', factor: 1, pulse: { otherFactor: 0.5, periodMinutes: 15, share: 0.5 } },
    { name: 'rest', from: '13:00', factor: 0.8, openings: { left: 0 } },
    { name: 'storm', from: '16:00', factor: 9 },
    { name: 'night', from: '22:00', volume: { perDay: 20, mayStop: true, splits: true } },
  ],
  emergency: { factor: 0.3 },
};

/** The loop, and how often it was solved. */
function counted(): { readonly loop: CompiledLoop; readonly solves: () => number } {
  const loop = modelOf(kelpFlume);
  let solves = 0;
  const stateAt: CompiledLoop['system']['stateAt'] = (flow, near) => {
    solves += 1;
    return loop.system.stateAt(flow, near);
  };
  return { loop: { ...loop, system: { ...loop.system, stateAt } }, solves: () => solves };
}

describe('a plan taken up again', () => {
  const made = planSchedule(SCHEDULE, modelOf(kelpFlume), STATION);
  const fallback = fallbackOf(made);
  made.dutyAt(80);
  // As it comes out of another thread.
  const figures = structuredClone(planFigures(made));

  it('has the same settings, choices and duties', () => {
    const again = planSchedule(SCHEDULE, modelOf(kelpFlume), STATION, figures);
    expect(planFigures(again)).toEqual(planFigures(made));
    expect(again.phases.map(({ own }) => [own.setting, own.feasible])).toEqual(
      made.phases.map(({ own }) => [own.setting, own.feasible]),
    );
    expect(again.phases[3]?.volume?.choices).toEqual(made.phases[3]?.volume?.choices);
    expect(fallbackOf(again)).toEqual(fallback);
    expect(again.dutyAt(80)).toEqual(made.dutyAt(80));
  });

  it('solves nothing but what was not known', () => {
    const { loop, solves } = counted();
    const again = planSchedule(SCHEDULE, loop, STATION, figures);
    again.dutyAt(80);
    expect(solves()).toBe(0);
    again.dutyAt(55);
    expect(solves()).toBeGreaterThan(0);
    expectClose(again.dutyAt(55).flow, made.dutyAt(55).flow, { relative: 1e-9 });
  });
});

describe('a remembered duty', () => {
  it('is worked out once a setting, or not at all where it is known before', () => {
    const asked: number[] = [];
    const duty = planSchedule(SCHEDULE, modelOf(kelpFlume), STATION).dutyAt(50);
    const dutyAt = rememberedDuty(
      (setting) => {
        asked.push(setting);
        return { ...duty, setting };
      },
      [duty],
    );
    expect([dutyAt(50), dutyAt(60).setting, dutyAt(60).setting]).toEqual([duty, 60, 60]);
    expect(asked).toEqual([60]);
    expect(dutyAt.known().map(({ setting }) => setting)).toEqual([50, 60]);
  });
});

describe('the settings that a volume chooses among', () => {
  it.each([
    [{ min: 30, max: 100, step: 1 }, 1],
    [{ min: 0, max: 100, step: 0.1 }, 1],
    [{ min: 0, max: 100, step: 0.09 }, 2],
    [{ min: 0, max: 100, step: 0.01 }, 10],
  ])('of %o are every %dth', (settings, stride) => {
    expect(volumeStride(settings)).toBe(stride);
  });
});
