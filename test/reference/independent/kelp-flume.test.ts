/** The flume example, whose figures a solution apart gave to 0.1 %. */
import { describe, expect, it } from 'vitest';
import { expectClose } from '../../expect-close.ts';
import { fitPump } from './duty.ts';
import { systemOf } from './flows.ts';
import { kelpFlume as loop, canister250 as pump } from './kelp-flume.ts';
import { circuitFor, scan, select } from './selection.ts';
import { trimsOf } from './trims.ts';

const PER_HOUR = 3.6e6;
const question = { loop, pump, count: 1, price: 0.21, hoursPerDay: 24 } as const;
const relative = 1e-3;

describe('the flume as built', () => {
  const answer = select({ ...question, balancing: 'as-built' });
  const choice = answer.feasible ? answer.choice : undefined;
  const outlet = (index: number): number => (choice?.duty.outlets[index]?.flow ?? Number.NaN) * PER_HOUR;

  it('runs at setting 70', () => {
    expect(choice?.duty.setting).toBe(70);
    expect(choice?.limitingOutlet).toBe('far end');
  });

  it.each([
    ['flow', (choice?.duty.flow ?? Number.NaN) * PER_HOUR, 7533.14],
    ['head', choice?.duty.head ?? Number.NaN, 1.5714],
    ['power', choice?.duty.power ?? Number.NaN, 85.7042],
    ['efficiency', choice?.duty.efficiency ?? Number.NaN, 0.385034],
    ['turnover', choice?.turnover ?? Number.NaN, 3.13881],
    ['annual energy', choice?.annualEnergy ?? Number.NaN, 750.769],
    ['annual cost', choice?.annualCost ?? Number.NaN, 157.661],
    ['far end', outlet(0), 3028.46],
    ['left', outlet(1), 2252.34],
    ['right', outlet(2), 2252.34],
  ])('has the stated %s', (_, actual, expected) => {
    expectClose(actual, expected, { relative });
  });

  it('leaves the far end short at 69', () => {
    const fitted = fitPump(pump);
    if (fitted === undefined) throw new Error('the pump has no curve');
    const duties = scan(
      { ...question, balancing: 'as-built' },
      systemOf(circuitFor(loop, 'as-built')),
      fitted,
    );
    const farEnd = duties.find((duty) => duty.setting === 69)?.outlets[0]?.flow ?? Number.NaN;
    expectClose(farEnd * PER_HOUR, 2984.58, { relative });
  });
});

describe('the flume trimmed', () => {
  it('meets exactly the required flows at the head its trims are made for', () => {
    const { head } = trimsOf(circuitFor(loop, 'as-built'));
    const system = systemOf(circuitFor(loop, 'trimmed'));
    const total = 7000 / PER_HOUR;
    expectClose(system.head(total), head, { relative: 1e-10 });
    const flows = system.outlets(total).map((each) => each.flow * PER_HOUR);
    for (const [index, expected] of [3000, 2000, 2000].entries())
      expectClose(flows[index] ?? Number.NaN, expected, { relative: 1e-10 });
  });

  it('needs no higher setting than as built', () => {
    const answer = select({ ...question, balancing: 'trimmed' });
    expect(answer.feasible && answer.choice.duty.setting).toBeLessThanOrEqual(70);
  });
});
