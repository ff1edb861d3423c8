/** Why no setting qualifies, against worked answers. */
import { describe, expect, it } from 'vitest';
import { expectClose } from '../../expect-close.ts';
import type { ExtendedLoop } from '../../random/extended-loop.ts';
import { settingsGrid } from '../independent/speed.ts';
import { LH, loopOf, pipe, pumpE, STATED } from './cases.ts';
import type { Limits } from './conditions.ts';
import { dutyAtSetting, prepare, scan, select } from './selection.ts';

const question = { pump: pumpE, count: 1, balancing: 'as-built' } as const;

describe('a lift above the shutoff head', () => {
  it('stops the pump and leaves the outlet without water', () => {
    const loop = loopOf({
      staticHead: 7,
      suction: [],
      discharge: { run: [pipe(40, 2)], outlet: { name: 'end', requiredFlow: 100 * LH } },
    });
    const answer = select(prepare({ ...question, loop }));
    expect(answer).toEqual({ feasible: false, reasons: ['dead-head', 'not-enough-head'] });
  });
});

describe('an outlet that draws water back', () => {
  const loop = loopOf({
    staticHead: 2,
    suction: [pipe(40, 1)],
    discharge: {
      run: [pipe(40, 2)],
      branches: [
        { run: [pipe(25, 4)], outlet: { name: 'a', staticHead: -1, requiredFlow: 1500 * LH } },
        { run: [pipe(20, 3)], outlet: { name: 'c' } },
      ],
    },
  });
  const pump = { ...pumpE, settings: { min: 50, max: 58, step: 1 } };
  const answerWith = (limits: Partial<Limits>) => select(prepare({ ...question, loop, pump, limits }));

  it('is refused', () => {
    expect(answerWith({})).toEqual({ feasible: false, reasons: ['reverse-flow'] });
  });

  it('may be allowed', () => {
    const answer = answerWith({ allowReverseFlow: true });
    expect(answer.feasible && answer.duty.setting).toBe(50);
  });
});

// The largest setting within the screen's limit; figures of a separate calculation.
describe('a screen too small for the required flow', () => {
  const end = (requiredFlow: number) => ({ run: [pipe(40, 2)], outlet: { name: 'end', requiredFlow } });
  const screen = { shape: 'cylinder', diameter: 0.09, length: 0.2, openFraction: 0.3, count: 1 } as const;
  const loop: ExtendedLoop = loopOf({
    suction: [pipe(50, 1)],
    intake: { lossCoefficient: 0.5, screen },
    discharge: end(6000 * LH),
  });

  it('lets pass the stated flow at 48 %, and is the limit at 49 %', () => {
    const prepared = prepare({ ...question, loop });
    const rows = scan(prepared).filter(({ faults }) => !faults.includes('screen-velocity'));
    const last = rows.at(-1)?.duty;
    expect(last?.setting).toBe(48);
    expectClose((last?.flow ?? Number.NaN) / LH, 4575.43, STATED);
    expectClose(6000 - (last?.flow ?? Number.NaN) / LH, 1424.57, STATED);
  });

  it('has no limit without a screen', () => {
    const bare = { ...loop, intake: { lossCoefficient: 0.5 }, discharge: end(20_000 * LH) };
    const prepared = prepare({ ...question, loop: bare });
    const highest = settingsGrid(pumpE.settings).at(-1) ?? Number.NaN;
    expect(highest).toBe(100);
    expect(dutyAtSetting(prepared, highest).deadHead).toBe(false);
    expect(select(prepared)).toEqual({ feasible: false, reasons: ['not-enough-head'] });
  });
});
