/** Documents the calibrations of a loop that were applied. */
import { z } from '@hono/zod-openapi';
import { dataBasisField } from '../../fields/data-basis.ts';
import { bodyInstant } from '../../fields/instant.ts';
import { nullable } from '../../fields/nullable.ts';
import { computedNumber } from '../../units/computed.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import { calibrationParameter } from './parts-schema.ts';

const factorsSchema = (context: SchemaContext) =>
  z.strictObject({
    friction: computedNumber(context, { description: 'Of the friction of the loop.', example: 1.32 }),
    head: computedNumber(context, { description: 'Of the head of the pump.', example: 1 }),
    power: computedNumber(context, { description: 'Of the power of the pump.', example: 1.015 }),
  });

const appliedSchema = (context: SchemaContext) =>
  z.strictObject({
    place: described(context, z.int(), { description: 'Place in the order of application.', examples: [1] }),
    appliedAt: bodyInstant(context, {
      description: 'When it was applied.',
      example: '2026-04-01T08:00:00.000Z',
    }),
    undoneAt: described(
      context,
      nullable(
        bodyInstant(context, { description: 'When it was undone.', example: '2026-04-02T08:00:00.000Z' }),
      ),
      { description: 'When it was undone; null: it was not.' },
    ),
    inUse: described(context, z.boolean(), {
      description:
        'Whether the loop is computed with it; one lapses when what decides the flows of the loop changes.',
      examples: [true],
    }),
    factors: factorsSchema(context),
    parameters: described(context, z.array(calibrationParameter(context)), {
      description: 'The factors and their intervals at the time of the calibration.',
    }),
    from: bodyInstant(context, {
      description: 'Of the readings behind it.',
      example: '2026-03-01T00:00:00.000Z',
    }),
    to: bodyInstant(context, { description: 'Likewise.', example: '2026-04-01T00:00:00.000Z' }),
    readings: described(context, z.int(), { description: 'How many said something.', examples: [120] }),
  });

export const calibrationsSchema = perContext((context) =>
  named(
    context,
    'Calibrations',
    z.strictObject({
      dataBasis: dataBasisField(context),
      items: described(context, z.array(appliedSchema(context)), {
        description: 'The latest first, at most 200.',
      }),
    }),
    { description: 'The calibrations that were applied to a loop.' },
  ),
);
