/** The flume example, to which none of the newer rules applies: its stated figures stay. */
import { describe, expect, it } from 'vitest';
import { expectClose } from '../../expect-close.ts';
import { kelpFlume as loop, canister250 as pump } from '../independent/kelp-flume.ts';
import { LH } from './cases.ts';
import { prepare, select } from './selection.ts';

describe('the flume', () => {
  const answer = select(prepare({ loop, pump, count: 1, balancing: 'as-built' }));
  const duty = answer.feasible ? answer.duty : undefined;
  const outlet = (index: number): number => (duty?.outlets[index]?.flow ?? Number.NaN) / LH;

  it('runs at setting 70', () => {
    expect(duty?.setting).toBe(70);
  });

  // A separate solution gave these figures; 0.1 % is their tolerance.
  it.each([
    ['flow', (duty?.flow ?? Number.NaN) / LH, 7533.14],
    ['head', duty?.head ?? Number.NaN, 1.5714],
    ['power', duty?.power ?? Number.NaN, 85.7042],
    ['efficiency', duty?.efficiency ?? Number.NaN, 0.385034],
    ['far end', outlet(0), 3028.46],
    ['left', outlet(1), 2252.34],
    ['right', outlet(2), 2252.34],
  ])('has the stated %s', (_, actual, expected) => {
    expectClose(actual, expected, { relative: 1e-3 });
  });
});
