/** Documents readings in answers: how many were accepted, one by one, averaged over hours or days. */
import { z } from '@hono/zod-openapi';
import { nullable } from '../../fields/nullable.ts';
import { unitsField } from '../../units/answer-units.ts';
import { computed } from '../../units/computed.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import type { Quantity } from '../../units/table.ts';
import { entryCautions } from '../entry-cautions.ts';
import { readingSchema } from './schema.ts';

export const readingsTaken = perContext((context) =>
  named(
    context,
    'ReadingsTaken',
    z.strictObject({
      accepted: described(context, z.int(), { description: 'Readings of the request.', examples: [2] }),
      merged: described(context, z.int(), {
        description:
          'How many of them met a reading of the same instant, stored or earlier in the request: the fields they state took the place of its own, those they leave out stayed.',
        examples: [0],
      }),
      cautions: entryCautions(context),
      units: unitsField(context),
    }),
    { description: 'What became of the readings.' },
  ),
);

const instant = (context: SchemaContext, description: string, example: string) =>
  described(context, z.iso.datetime(), { description, examples: [example] });

const mean = (context: SchemaContext, quantity: Quantity, description: string, example: number) =>
  nullable(
    computed(context, quantity, { description: `${description} Null where none was measured.`, example }),
  );

const meanReading = perContext((context) =>
  named(
    context,
    'MeanReading',
    z.strictObject({
      from: instant(context, 'When the hour or day begins, in UTC.', '2026-01-15T00:00:00.000Z'),
      until: instant(context, 'When it ends.', '2026-01-16T00:00:00.000Z'),
      day: described(context, nullable(z.iso.date()), {
        description: 'The day by the calendar of the site; null for an hour.',
        examples: ['2026-01-15'],
      }),
      readings: described(context, z.int(), { description: 'How many there are in it.', examples: [1440] }),
      setting: computed(context, 'setting', { description: 'Mean setting.', example: 78.4 }),
      power: mean(context, 'power', 'Mean power.', 118.2),
      flow: mean(context, 'flow', 'Mean total flow.', 8210),
      outletFlows: described(
        context,
        z.record(z.string(), computed(context, 'flow', { description: 'Mean flow.', example: 3100 })),
        { description: 'Mean flow of the outlets that were measured, by their names.' },
      ),
      head: mean(context, 'head', 'Mean head across the pump.', 2.1),
      suctionPressure: mean(context, 'pressure', 'Mean pressure before the pump.', 2.4),
      dischargePressure: mean(context, 'pressure', 'Mean pressure behind the pump.', 23.1),
    }),
    { description: 'Means of the readings of an hour or a day.' },
  ),
);

export const readingList = perContext((context) =>
  named(
    context,
    'ReadingList',
    z.strictObject({
      items: described(context, z.array(z.union([readingSchema(context), meanReading(context)])), {
        description: 'In the order of time: readings, or with `by` means of those of an hour or a day.',
      }),
      next: described(context, nullable(z.string()), {
        description: 'The `cursor` of the next page; null on the last.',
      }),
      units: unitsField(context),
    }),
    { description: 'A page of readings.' },
  ),
);
