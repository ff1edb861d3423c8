/** Documents an assembly of an option in answers: a pump, or several in parallel. */

import { z } from '@hono/zod-openapi';
import { answeredKey } from '../../fields/key-field.ts';
import { money } from '../../fields/money.ts';
import { nullable } from '../../fields/nullable.ts';
import { pumpRefSchema } from '../../records/pump/reference.ts';
import { computed, computedNumber } from '../../units/computed.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';

const text = (context: SchemaContext, description: string, example: string) =>
  described(context, z.string(), { description, examples: [example] });

const rate = (context: SchemaContext) =>
  z.strictObject({
    value: computedNumber(context, { description: 'Failures over years watched.', example: 0.0666667 }),
    low: computedNumber(context, {
      description: 'Lower end of its exact 95 % interval.',
      example: 0.00807364,
    }),
    high: computedNumber(context, { description: 'Upper end.', example: 0.240823 }),
  });

const SETTING_FROM = ['stated', 'schedule', 'installed', 'recommended', 'highest', 'power'] as const;

const runs = (context: SchemaContext) => ({
  setting: described(context, nullable(z.number()), {
    description: 'What is dialled; the usual one of a schedule; null where its power is stated.',
    examples: [53],
  }),
  settingFrom: described(context, z.enum(SETTING_FROM), {
    description:
      'Where it comes from. `highest`: no setting is feasible, so that the highest is given. `power`: its power is stated.',
    examples: ['recommended'],
  }),
  feasible: described(context, z.boolean(), {
    description:
      'Whether every outlet is served and every limit holds; not judged where its power is stated.',
    examples: [true],
  }),
  detail: described(context, nullable(z.string()), {
    description: 'Why it is not feasible; null where it is.',
    examples: [null],
  }),
  power: computed(context, 'power', {
    description: 'Electrical power of all its pumps while it runs; the mean of a schedule.',
    example: 38.8,
  }),
  annualEnergy: computed(context, 'energy', { description: 'Energy of a year.', example: 339.9 }),
  annualCost: money(context, 'Of that energy, at the price of today.', 71.4),
});

export const comparisonAssemblyFigures = perContext((context) =>
  named(
    context,
    'ComparisonAssemblyFigures',
    z.strictObject({
      loop: described(
        context,
        nullable(
          z.strictObject({
            id: described(context, nullable(z.string()), {
              description: 'Null where it came with the request, or several loops are joined.',
              examples: ['0198c0de'],
            }),
            ...answeredKey(context),
            name: text(context, 'Its name; of joined loops all of them.', 'Seahorse bank'),
          }),
        ),
        { description: 'Null where its power is stated without a loop.' },
      ),
      pump: described(context, nullable(pumpRefSchema(context)), {
        description: 'Null where its power is stated without a pump.',
      }),
      count: described(context, z.int(), { description: 'Equal pumps in parallel.', examples: [1] }),
      new: described(context, z.boolean(), { description: 'Whether they are bought.', examples: [true] }),
      ...runs(context),
      servedShare: nullable(
        computedNumber(context, {
          description:
            'The least part of its need that an outlet still gets with one of the pumps at rest; 0 for a single pump.',
          example: 0,
        }),
      ),
      failuresPerDeviceYear: described(context, nullable(rate(context)), {
        description: 'From the counts of the pump; null where it has none, and none is then expected.',
      }),
      attentionHours: computedNumber(context, {
        description:
          'Hours of work that its pumps ask for in a year, by service and failures; routine checks count in the option.',
        example: 1.76667,
      }),
      price: money(context, 'Of all its pumps.', 780),
      lifeYears: described(context, nullable(z.number()), {
        description: 'Expected life of a pump; null: not known, taken to outlast the years looked at.',
        examples: [8],
      }),
      ageYears: computedNumber(context, { description: 'Of pumps that are there already.', example: 0 }),
    }),
    { description: 'A pump, or several in parallel, of an option.' },
  ),
);
