/** States by how much the acceptance grades of ISO 9906 let a pump differ from its stated figures. */

/** Largest permitted departures. */
export interface GradeTolerance {
  /** Fractions of the stated flow [-]. */
  readonly flow: { readonly below: number; readonly above: number };
  /** Fractions of the stated head [-]. */
  readonly head: { readonly below: number; readonly above: number };
  /** Fraction of the stated power that may be drawn above it [-]; no bound is set below it. */
  readonly power: number;
}

export const GRADE_SOURCE =
  'ISO 9906:2012, Table 8 (from memory; grade 1 and 2 flow and head agree with public descriptions)';

const either = (tolerance: number) => ({ below: tolerance, above: tolerance });
const onlyAbove = (tolerance: number) => ({ below: 0, above: tolerance });

export const GRADES = {
  '1B': { flow: either(0.05), head: either(0.03), power: 0.04 },
  '1E': { flow: either(0.05), head: either(0.03), power: 0.04 },
  '1U': { flow: onlyAbove(0.1), head: onlyAbove(0.06), power: 0.1 },
  '2B': { flow: either(0.08), head: either(0.05), power: 0.08 },
  '2U': { flow: onlyAbove(0.16), head: onlyAbove(0.1), power: 0.16 },
  '3B': { flow: either(0.09), head: either(0.07), power: 0.09 },
} as const satisfies Record<string, GradeTolerance>;

export type Grade = keyof typeof GRADES;

/** What is taken where no grade is stated: the entered points as they are. */
const NO_TOLERANCE: GradeTolerance = { flow: either(0), head: either(0), power: 0 };

/** The departures of a grade; none where no grade is stated, so that the entered points count as they are. */
export const toleranceOf = (grade: Grade | null): GradeTolerance =>
  grade === null ? NO_TOLERANCE : GRADES[grade];
