/** Documents calibrations of loops in the copy of a site. */

import { z } from '@hono/zod-openapi';
import type { AppliedCalibration } from '../../../models/calibration/applied.ts';
import { ID_MAX, idField } from '../../fields/id-field.ts';
import { bodyInstant } from '../../fields/instant.ts';
import { nullable } from '../../fields/nullable.ts';
import { numberField, wholeNumber } from '../../fields/number-field.ts';
import { acceptedFields, recordFields } from '../../fields/record-fields.ts';
import { textField } from '../../fields/text-field.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import type { CopiedCalibration } from '../calibration/contract.ts';

const PARAMETERS_MAX = 10;

/** The curves in it are still to be compared with those of the pump. */
export interface UnfittedCalibration extends Omit<CopiedCalibration, 'calibration'> {
  readonly calibration: Omit<AppliedCalibration, 'pump'> & {
    readonly pump: { readonly id: string; readonly fit: Readonly<Record<string, unknown>> };
  };
}

const idOf = (context: SchemaContext, noun: string) =>
  idField(context, { description: `Id of its ${noun}.` });

const number = (context: SchemaContext, description: string, minimum = -1e9) =>
  numberField(context, { description, minimum, maximum: 1e9, example: 1.04 });

const factor = (context: SchemaContext) =>
  numberField(context, { description: 'A factor.', minimum: 1e-3, maximum: 1e3, example: 1.04 });

const instant = (context: SchemaContext, description: string) =>
  bodyInstant(context, { description, example: '2026-01-15T12:00:00.000Z' });

const parameter = (context: SchemaContext) =>
  z.strictObject({
    name: described(context, z.enum(['friction', 'head', 'power', 'frictionOverHead']), {
      description: 'Name of the factor.',
    }),
    value: number(context, 'Value of the factor.'),
    standardError: number(context, 'Standard error of the factor.', 0),
    interval: described(
      context,
      z.strictObject({
        low: number(context, 'Low end of the interval.'),
        high: number(context, 'High end of the interval.'),
      }),
      { description: '95 % interval of the factor.' },
    ),
  });

const applied = (context: SchemaContext) =>
  z.strictObject({
    parameters: described(context, z.array(parameter(context)).max(PARAMETERS_MAX), {
      description: 'Factors that the readings determine.',
    }),
    factors: described(
      context,
      z.strictObject({ friction: factor(context), head: factor(context), power: factor(context) }),
      { description: 'Factors that were applied.' },
    ),
    covariance: described(
      context,
      z.array(z.array(number(context, 'Of two parameters.')).max(PARAMETERS_MAX)).max(PARAMETERS_MAX),
      { description: 'Covariance of the parameters; absent if none was kept.' },
    ).optional(),
    worstCase: described(context, z.strictObject({ friction: factor(context), head: factor(context) }), {
      description: 'Factors in the worst case of the 95 % region.',
    }),
    pump: described(
      context,
      z.strictObject({
        id: idOf(context, 'pump'),
        fit: described(context, z.record(z.string(), z.unknown()), {
          description: 'Curves of the pump that the factors refer to.',
        }),
      }),
      { description: 'Pump that was calibrated.' },
    ),
    from: instant(context, 'The first reading it rests on.'),
    to: instant(context, 'The last reading it rests on.'),
    readingCount: wholeNumber(context, { description: 'How many.', minimum: 0, maximum: 1e9, example: 40 }),
    modelVersion: textField(context, { description: 'Of the formulas.', example: '1', maxLength: ID_MAX }),
  });

const calibrationShape = (context: SchemaContext) => ({
  loop: idOf(context, 'loop'),
  sequence: wholeNumber(context, { description: 'From 1 on.', minimum: 1, maximum: 1e9, example: 1 }),
  appliedAt: instant(context, 'When it was applied.'),
  undoneAt: described(context, nullable(instant(context, 'When.')), {
    description: 'When it was undone; null while it is not.',
    examples: ['2026-01-15T12:00:00.000Z'],
  }),
  scope: textField(context, {
    description: 'What of the loop it is about.',
    example: 'a81f',
    maxLength: ID_MAX,
  }),
  inUse: described(context, z.boolean(), {
    description: 'Whether the loop is computed with it.',
    examples: [true],
  }),
  calibration: described(context, applied(context), { description: 'What was applied.' }),
});

const CALIBRATION = { description: 'A calibration of a loop that was applied once.' };

export const calibrationCopyItem = perContext((context) =>
  named(
    context,
    'AppliedCalibration',
    z.strictObject({ ...recordFields(context), ...calibrationShape(context) }),
    CALIBRATION,
  ),
);

export const calibrationCopyInput = perContext(
  (context): z.ZodType<UnfittedCalibration> =>
    named(
      context,
      'AppliedCalibration',
      z.strictObject({ ...calibrationShape(context), ...acceptedFields(context) }),
      CALIBRATION,
    ),
);
