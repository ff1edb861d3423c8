/** Documents the parts of the summary of a site. */

import { z } from '@hono/zod-openapi';
import { answeredKey } from '../../fields/key-field.ts';
import { nullable } from '../../fields/nullable.ts';
import { computed, computedNumber } from '../../units/computed.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';

const count = (context: SchemaContext, description: string) =>
  described(context, z.int(), { description, examples: [1] });

const record = (context: SchemaContext, of: string) =>
  described(
    context,
    z.strictObject({
      id: described(context, z.string(), { description: `Id of the ${of}.`, examples: ['0198c0de'] }),
      ...answeredKey(context),
      name: described(context, z.string(), { description: `Its name.`, examples: ['Kelp flume'] }),
    }),
    { description: `The ${of}.` },
  );

const money = (context: SchemaContext, description: string, example: number) =>
  described(context, nullable(computedNumber(context, { description, example })), {
    description: `${description} [money]; null where it is not known.`,
    examples: [example],
  });

const setting = (context: SchemaContext, description: string) =>
  computed(context, 'setting', { description, example: 70 });

const energySaved = (context: SchemaContext) =>
  computed(context, 'energy', { description: 'Less in a year.', example: 412.6 });

export const loopCountsSchema = perContext((context) =>
  named(
    context,
    'SummaryLoops',
    z.strictObject({
      total: count(context, 'Loops of the site.'),
      scheduled: count(context, 'Those with a schedule, whose year is walked by it.'),
      withoutPump: count(context, 'Those without an installed pump: in no sum.'),
      withoutRequirement: count(
        context,
        'Those of which no outlet requires a flow: in the sums, never short.',
      ),
      unsolved: count(context, 'Those whose equations were not solved within their limits: in no sum.'),
    }),
    { description: 'How many loops there are, and how far each is counted.' },
  ),
);

export const shortSchema = perContext((context) =>
  named(
    context,
    'SummaryShort',
    z.strictObject({
      count: count(context, 'Loops with an outlet below its required flow.'),
      loops: described(
        context,
        z.array(
          z.strictObject({
            loop: record(context, 'loop'),
            outlet: described(context, z.string(), {
              description: 'The outlet that lacks the largest share.',
              examples: ['far end'],
            }),
            flow: computed(context, 'flow', { description: 'What it gets.', example: 2810 }),
            requiredFlow: computed(context, 'flow', { description: 'What it requires.', example: 3000 }),
            margin: computedNumber(context, {
              description: 'flow/requiredFlow - 1, a fraction.',
              example: -0.0633,
            }),
            phase: described(context, nullable(z.string()), {
              description: 'In which phase of its schedule; null without one.',
              examples: ['night'],
            }),
          }),
        ),
        { description: 'The 50 that lack most, the worst first.' },
      ),
    }),
    { description: 'Loops short of flow.' },
  ),
);

const saved = (context: SchemaContext) => ({
  setting: setting(context, 'The lowest setting that serves.'),
  energySaved: energySaved(context),
  costSaved: money(context, 'Less in a year', 86.6),
});

export const aboveNeedSchema = perContext((context) =>
  named(
    context,
    'SummaryAboveNeed',
    z.strictObject({
      count: count(context, 'Loops whose pump serves all outlets at a lower setting than its own.'),
      loops: described(
        context,
        z.array(
          z.strictObject({
            loop: record(context, 'loop'),
            installedSetting: setting(context, 'The setting that is stored as installed.'),
            ...saved(context),
          }),
        ),
        { description: 'The 50 that would save most, the largest saving first.' },
      ),
    }),
    { description: 'Loops above their need.' },
  ),
);

export const savingSchema = perContext((context) =>
  named(
    context,
    'SummarySaving',
    z.strictObject({
      loop: record(context, 'loop'),
      kind: described(context, z.enum(['setting', 'pump']), {
        description:
          '`setting`: the pump that is there, set lower. `pump`: one of another stored pump in place of those that are there.',
        examples: ['pump'],
      }),
      pump: described(context, nullable(record(context, 'pump')), {
        description: 'The other pump; null where the setting alone is changed.',
      }),
      count: count(context, 'How many of it.'),
      ...saved(context),
      setting: setting(context, 'The lowest that serves; with a schedule the highest of its phases.'),
      purchase: money(context, 'Price of the other pump; 0 where nothing is bought', 780),
      simplePayback: described(
        context,
        nullable(computedNumber(context, { description: 'Years.', example: 3.2 })),
        {
          description: 'purchase/costSaved [years]; null where either is not known.',
          examples: [3.2],
        },
      ),
      paybackBeyondSetting: described(
        context,
        nullable(computedNumber(context, { description: 'Years.', example: 27.6 })),
        {
          description:
            'purchase/(costSaved - settingAlone.costSaved) [years]: what the purchase pays beyond what the lower setting saves for nothing; null where that is not known, or nothing.',
          examples: [27.6],
        },
      ),
      settingAlone: described(context, nullable(z.strictObject(saved(context))), {
        description:
          'What the pump that is there saves at its lowest setting that serves, with nothing bought; null for nothing.',
      }),
    }),
    { description: 'What a change of one loop would save by the same requirement.' },
  ),
);
