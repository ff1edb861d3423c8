/** The acceptance grades against what is remembered and what is public of ISO 9906. */
import { describe, expect, it } from 'vitest';
import { GRADE_SOURCE, GRADES, type Grade, toleranceOf } from '../../../models/pump/tolerance-grades.ts';

/** [grade, flow below, flow above, head below, head above, power above]; ISO 9906:2012, Table 8, all from memory. */
const REMEMBERED: readonly (readonly [Grade, number, number, number, number, number])[] = [
  ['1B', 0.05, 0.05, 0.03, 0.03, 0.04],
  ['1E', 0.05, 0.05, 0.03, 0.03, 0.04],
  ['1U', 0, 0.1, 0, 0.06, 0.1],
  ['2B', 0.08, 0.08, 0.05, 0.05, 0.08],
  ['2U', 0, 0.16, 0, 0.1, 0.16],
  ['3B', 0.09, 0.09, 0.07, 0.07, 0.09],
];

describe('the grades', () => {
  it.each(REMEMBERED)('%s: flow -%d +%d, head -%d +%d, power +%d', (grade, ...figures) => {
    const { flow, head, power } = toleranceOf(grade);
    expect([flow.below, flow.above, head.below, head.above, power]).toEqual(figures);
  });

  // A public article on ANSI/HI 14.6, which shares the grades: 5 % and 3 % for grade 1, 8 % and 5 % for grade 2.
  it.each([
    ['1B', 0.05, 0.03],
    ['2B', 0.08, 0.05],
  ] as const)('%s has the published flow %d and head %d either way', (grade, flow, head) => {
    expect(GRADES[grade]).toMatchObject({
      flow: { below: flow, above: flow },
      head: { below: head, above: head },
    });
  });

  it('are those that the standard names', () => {
    expect(Object.keys(GRADES)).toEqual(['1B', '1E', '1U', '2B', '2U', '3B']);
  });

  it('widen from the first to the third', () => {
    const widths = (['1B', '2B', '3B'] as const).map((grade) => GRADES[grade].head.below);
    expect(widths).toEqual(widths.toSorted((a, b) => a - b));
  });

  it('say what was not looked up', () => {
    expect(GRADE_SOURCE).toContain('not looked up');
  });

  it('leave a pump without one as it was entered', () => {
    expect(toleranceOf(null)).toEqual({
      flow: { below: 0, above: 0 },
      head: { below: 0, above: 0 },
      power: 0,
    });
  });
});
