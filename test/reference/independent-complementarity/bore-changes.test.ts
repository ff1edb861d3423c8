/** Changes of bore that nobody entered a fitting for, against worked and published figures. */
import { describe, expect, it } from 'vitest';
import { expectClose } from '../../expect-close.ts';
import type { ExtendedElement, ExtendedLoop } from '../../random/extended-loop.ts';
import { FRESH, LH, loopOf, pipe, SEA, STATED } from './cases.ts';
import { systemOfLoop } from './duties.ts';
import { assumedSteps, stepCoefficient } from './runs.ts';

const ELBOW: ExtendedElement = { fitting: 'elbow-90' };

/** One run without intake or exit loss. */
const run = (elements: readonly ExtendedElement[], changes: Partial<ExtendedLoop>): ExtendedLoop =>
  loopOf({
    suction: [],
    discharge: { run: elements, outlet: { name: 'end', lossCoefficient: 0 } },
    ...changes,
  });

const headOf = (loop: ExtendedLoop, litresPerHour: number): number =>
  systemOfLoop(loop).head(litresPerHour * LH);

describe('the coefficient of a step', () => {
  // Crane TP-410, sudden contraction of 3 to 2 in.
  it('is the published one of 3 to 2 in', () => {
    expectClose(stepCoefficient(3, 2), 0.277778, { relative: 2e-6 });
  });

  // By hand from the two formulas.
  it.each([
    [32, 25, 0.194824],
    [25, 38, 0.321687],
    [40, 20, 0.375],
    [20, 32, 0.371338],
  ])('of %d to %d mm is %d', (before, after, expected) => {
    expectClose(stepCoefficient(before, after), expected, { relative: 2e-6 });
  });
});

// Figures of a separate calculation, fresh water of 20 degC.
describe('pipes of 40, 20 and 32 mm', () => {
  const three = [pipe(40, 1), pipe(20, 1), pipe(32, 1)];

  it('lose the stated heads', () => {
    const [narrower, wider] = assumedSteps(three).map(({ loss }) => loss(3000 * LH));
    expectClose(narrower ?? Number.NaN, 0.13453, STATED);
    expectClose(wider ?? Number.NaN, 0.133216, STATED);
    expectClose(headOf(run(three, { water: FRESH }), 3000), 0.695956, STATED);
    expectClose(headOf(run(three, { water: FRESH, boreChanges: 'ignored' }), 3000), 0.42821, STATED);
  });

  it('lose the same backwards, and the multiplier acts on the steps', () => {
    const [step] = assumedSteps(three);
    expectClose(step?.loss(-3000 * LH) ?? Number.NaN, -0.13453, STATED);
    const doubled = headOf(run(three, { water: FRESH, frictionMultiplier: 2 }), 3000);
    expectClose(doubled, 2 * 0.695956, STATED);
  });
});

// Figures of a separate calculation, seawater of 25 degC.
describe('pipes of 32, 25 and 38 mm with an elbow', () => {
  const four = [pipe(32, 2), ELBOW, pipe(25, 1.5), pipe(38, 1)];
  const entered = [
    pipe(32, 2),
    ELBOW,
    { fitting: 'reducer' },
    pipe(25, 1.5),
    { fitting: 'enlargement' },
    pipe(38, 1),
  ];

  it('lose the stated heads', () => {
    const [narrower, wider] = assumedSteps(four).map(({ loss }) => loss(4500 * LH));
    expectClose(narrower ?? Number.NaN, 0.0644128, STATED);
    expectClose(wider ?? Number.NaN, 0.106356, STATED);
    expectClose(headOf(run(four, { water: SEA }), 4500), 0.837712, STATED);
    expectClose(headOf(run(four, { water: SEA, boreChanges: 'ignored' }), 4500), 0.666943, STATED);
    expectClose(headOf(run(entered, { water: SEA }), 4500), 0.837712, STATED);
  });

  it('are charged at the second and the third pipe', () => {
    expect(assumedSteps(four).map(({ index }) => index)).toEqual([2, 3]);
  });

  it('are not charged where a fitting or a loss is entered for them', () => {
    const stated: ExtendedElement = { lossCoefficient: 0.3, boreChange: true };
    expect(assumedSteps(entered)).toEqual([]);
    expect(assumedSteps([pipe(32, 2), stated, ELBOW, pipe(25, 1.5)])).toEqual([]);
  });
});
