import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { attentionOf, pricedAttention, type RepeatedWork } from '../../../models/maintenance/attention.ts';
import { type MaintenanceTask, taskWork } from '../../../models/maintenance/task.ts';
import { expectClose } from '../../expect-close.ts';

const task = (facts: Partial<MaintenanceTask> = {}): MaintenanceTask => ({
  name: 'Check',
  kind: 'other',
  every: { months: 1 },
  minutes: 10,
  parts: 0,
  firstDue: '2026-01-01',
  ...facts,
  loop: 'flume',
  pump: undefined,
});

describe('the attention of a year', () => {
  // By hand: 12 x 10 min = 2 h; 2 x 45 min = 1.5 h and 2 x 20 of parts; 3.5 h at 30 an hour.
  it('adds up hours, parts and their cost', () => {
    const works = [task(), task({ every: { months: 6 }, minutes: 45, parts: 20 })].map(taskWork);
    const attention = attentionOf(works, 30);
    expectClose(attention.hours, 3.5, { relative: 1e-12 });
    expectClose(attention.parts, 40, { relative: 1e-12 });
    expectClose(attention.labour ?? 0, 105, { relative: 1e-12 });
    expectClose(attention.cost ?? 0, 145, { relative: 1e-12 });
  });

  it('has no cost where hours have no price, but for nothing to do', () => {
    expect(attentionOf([taskWork(task({ parts: 5 }))], null)).toMatchObject({ labour: null, cost: null });
    expect(attentionOf([], null)).toEqual({ hours: 0, parts: 0, labour: 0, cost: 0 });
    expect(attentionOf([taskWork(task({ minutes: 0, parts: 5 }))], null).cost).toBe(60);
  });

  it('of two sets together is the sum of theirs, and does not depend on their order', () => {
    const work: fc.Arbitrary<RepeatedWork> = fc.record({
      timesPerYear: fc.double({ min: 0.1, max: 365, noNaN: true }),
      minutes: fc.double({ min: 0, max: 600, noNaN: true }),
      parts: fc.double({ min: 0, max: 1000, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(work), fc.array(work), (some, others) => {
        const [a, b] = [attentionOf(some, 30), attentionOf(others, 30)];
        for (const together of [
          attentionOf([...some, ...others], 30),
          attentionOf([...others, ...some], 30),
        ]) {
          expectClose(together.hours, a.hours + b.hours, { relative: 1e-9, absolute: 1e-9 });
          expectClose(together.cost ?? 0, (a.cost ?? 0) + (b.cost ?? 0), { relative: 1e-9, absolute: 1e-9 });
          expect(pricedAttention(together, 30)).toEqual(together);
        }
      }),
      { seed: 1 },
    );
  });
});
