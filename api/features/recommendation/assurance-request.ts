/** Documents what the setting of a recommendation shall still serve under. */
import { z } from '@hono/zod-openapi';
import type { Assurance } from '../../../models/assurance/assure-loop.ts';
import type { CalibratedAssurance } from '../../../models/pump/calibrated-fit.ts';
import type { Grade } from '../../../models/pump/tolerance-grades.ts';
import { keyedUnion } from '../../fields/keyed-union.ts';
import { numberField } from '../../fields/number-field.ts';
import { described } from '../../units/described.ts';
import type { SchemaContext } from '../../units/schema-context.ts';

const GRADE_NAMES: readonly Grade[] = ['1B', '1E', '1U', '2B', '2U', '3B'];
const MARGIN_MAX = 10;
const MULTIPLIER_MAX = 100;

type StatedAssurance = Exclude<Assurance, CalibratedAssurance>;

/** Of the calibrated interval, where a loop has one. */
export type AskedAssurance = StatedAssurance | 'calibration';

const byGrade = (context: SchemaContext) =>
  z.strictObject({
    grade: described(context, z.enum(GRADE_NAMES), {
      description:
        'ISO 9906 grade whose low end every pump shall still serve at, the scatter of its points about their fit included.',
      examples: ['2B'],
    }),
  });

const byMargin = (context: SchemaContext) =>
  z.strictObject({
    margin: numberField(context, {
      description: 'Required flows are taken times (1 + margin).',
      minimum: 0,
      maximum: MARGIN_MAX,
      example: 0.1,
    }),
  });

const byFriction = (context: SchemaContext) =>
  z.strictObject({
    frictionMultiplier: numberField(context, {
      description: "Friction is taken times this, on top of the loop's own frictionMultiplier.",
      minimum: 1,
      maximum: MULTIPLIER_MAX,
      example: 1.3,
    }),
  });

const stated = (context: SchemaContext) =>
  keyedUnion<StatedAssurance>(context, [
    { key: 'grade', schema: byGrade(context) },
    { key: 'margin', schema: byMargin(context) },
    { key: 'frictionMultiplier', schema: byFriction(context) },
  ]);

/** Distinguished from an object by its type, so that a fault of an object is named where it is. */
const calibration = ({ documented }: SchemaContext): z.ZodType<'calibration'> =>
  documented ? z.literal('calibration') : z.string().pipe(z.literal('calibration'));

const WORDS = {
  description:
    'What the setting is assured against: pumps at the low end of a grade, larger required flows, more friction, or "calibration" for the worst case of the calibrated interval. A setting then qualifies if it is feasible both as entered and in that case; `best` gives the duty as entered at that setting.',
  examples: [{ grade: '2B' }],
};

export const assurance = (context: SchemaContext): z.ZodType<AskedAssurance> =>
  described(
    context,
    z.union([calibration(context), stated(context)], {
      error: 'must be {"grade"}, {"margin"}, {"frictionMultiplier"} or "calibration"',
    }),
    WORDS,
  );

/** As answers repeat it. */
export const reportedAssurance = (context: SchemaContext) =>
  described(
    context,
    z.union([byGrade(context), byMargin(context), byFriction(context), z.literal('calibration'), z.null()]),
    {
      description: 'What the settings were asked to serve under besides; null without.',
      examples: [null],
    },
  );
