/** What the comparison finds in services that are a little wrong. */
import { describe, expect, it } from 'vitest';
import type { Duty } from '../independent-complementarity/duty.ts';
import { dutyAtSetting, prepare, select } from '../independent-complementarity/selection.ts';
import { agreementOf, type Service, type ServiceDuty } from './agreement.ts';

/** A service that changes what the second solution says. */
const serviceWith = (change: (duty: Duty) => ServiceDuty, steps: number): Service => ({
  dutyAt: (question, setting) => change(dutyAtSetting(prepare(question), setting)),
  select: (question) => {
    const answer = select(prepare(question));
    if (!answer.feasible) return answer;
    const setting = answer.duty.setting + steps * question.pump.settings.step;
    return { feasible: true, setting, duty: change(answer.duty) };
  },
});

const sample = { balancing: 'as-built', firstSeed: 14, loops: 4 } as const;

describe('the comparison', () => {
  it('finds nothing in equal answers, and compares as many loops as it was asked', () => {
    const { selections, duties, unsolved, disagreements } = agreementOf(
      serviceWith((duty) => duty, 0),
      sample,
    );
    expect(disagreements).toEqual([]);
    expect(unsolved).toEqual([]);
    expect(selections).toHaveLength(4);
    expect(duties.length).toBeGreaterThanOrEqual(4);
  });

  it('finds flows that are off by two millionths, and none off by half of one', () => {
    const off = (part: number) =>
      agreementOf(
        serviceWith((duty) => ({ ...duty, flow: duty.flow * (1 + part) }), 0),
        sample,
      );
    expect(off(2e-6).disagreements.length).toBeGreaterThanOrEqual(4);
    expect(off(2e-6).otherBalances).toEqual([]);
    expect(off(5e-7).disagreements).toEqual([]);
  });

  it('finds an outlet without its flow, and a setting that is a step off', () => {
    const silent = serviceWith((duty) => ({ ...duty, outlets: duty.outlets.slice(1) }), 0);
    expect(agreementOf(silent, sample).disagreements[0]).toMatch(
      /^seed \d+ as-built: outlet \d+ NaN, expected /,
    );
    const late = agreementOf(
      serviceWith((duty) => duty, 1),
      sample,
    );
    expect(late.disagreements.every((text) => / setting \d/.test(text))).toBe(true);
    expect(late.disagreements.length).toBeGreaterThan(0);
  });
});
