/** Documents where the head of a pump is lost, and what that costs. */
import { z } from '@hono/zod-openapi';
import { nullable } from '../../fields/nullable.ts';
import { computed, computedNumber } from '../../units/computed.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';

const KINDS = [
  'intake',
  'pipe',
  'fitting',
  'valve',
  'loss',
  'bore-change',
  'tee-mouth',
  'trim',
  'outlet',
  'lift',
  'system-curve',
] as const;

const useShape = (context: SchemaContext, setting: number) => ({
  setting: computedNumber(context, {
    description: 'Setting that then serves [% of full].',
    example: setting,
  }),
  annualEnergy: computed(context, 'energy', {
    description: 'Energy saved a year; negative where more would be used.',
    example: 30.71,
  }),
  annualCost: nullable(
    computedNumber(context, { description: 'Money saved a year; null without a price.', example: 6.449 }),
  ),
});

const savingShape = (context: SchemaContext) => ({
  grid: described(
    context,
    nullable(
      z.strictObject({
        candidate: described(context, z.int(), {
          description: 'Place of the best candidate then, from 0.',
          examples: [0],
        }),
        ...useShape(context, 69),
      }),
    ),
    {
      description:
        'On the grid of settings: `best` less the best of the same request with the change; null where none would serve.',
    },
  ),
  continuous: described(context, nullable(z.strictObject(useShape(context, 68.83))), {
    description:
      'The same two pumps, each at the smallest setting of any decimals, so that no step hides it.',
  }),
});

const saving = (context: SchemaContext) => z.strictObject(savingShape(context));

const savingsSchema = (context: SchemaContext) =>
  z.strictObject({
    boreUp: described(
      context,
      nullable(
        z.strictObject({
          pipe: described(context, z.string(), {
            description: 'The next larger pipe of the series.',
            examples: ['sch80 2'],
          }),
          ...savingShape(context),
        }),
      ),
      {
        description:
          'With the next larger pipe of its series, at the same length: less friction in it, less loss of all elements that take their bore from it, and the loop solved and the setting chosen again. Null for all but named pipes, for the largest of a series, and where an element beside it does not stand the wider bore.',
      },
    ),
    halved: described(context, nullable(saving(context)), {
      description: 'With half of its head at any flow; null for pipes.',
    }),
    removed: described(context, nullable(saving(context)), {
      description: 'Without it; null for outlets, whose stream takes its velocity head away in any case.',
    }),
  });

const rowSchema = (context: SchemaContext) =>
  z.strictObject({
    element: described(context, z.string(), {
      description:
        'The element, or the branch of a lift, a trim or a tee mouth, as a JSON pointer into the loop.',
      examples: ['/discharge/run/0'],
    }),
    kind: described(context, z.enum(KINDS), { description: 'What it is.', examples: ['pipe'] }),
    name: described(context, nullable(z.string()), {
      description: 'Its name in the tables, or that of the outlet; null where it has none.',
      examples: ['sch80 1-1/2'],
    }),
    bore: nullable(
      computed(context, 'diameter', {
        description: 'Bore that its velocity is taken in; null where none belongs to it.',
        example: 37.49,
      }),
    ),
    flow: computed(context, 'flow', {
      description: 'Flow through it; negative: backwards.',
      example: 7533.14,
    }),
    head: computed(context, 'head', { description: 'Head that it takes from that flow.', example: 0.2352 }),
    power: computed(context, 'power', {
      description: 'rho g Q H of it; negative where water comes down.',
      example: 4.94,
    }),
    powerShare: computedNumber(context, {
      description: 'Of the hydraulic power of the pump; the shares add up to 1.',
      example: 0.1497,
    }),
    annualEnergy: computed(context, 'energy', {
      description: 'The same share of the energy of a year, losses of pump and motor included.',
      example: 112.4,
    }),
    annualCost: nullable(
      computedNumber(context, {
        description: 'The same share of the cost of a year; null without a price.',
        example: 23.6,
      }),
    ),
    savings: described(context, nullable(savingsSchema(context)), {
      description: 'What less of it would save a year, for the ten that take most; null for the others.',
    }),
  });

export const lossesSchema = perContext((context) =>
  named(
    context,
    'Losses',
    z.strictObject({
      hydraulicPower: computed(context, 'power', {
        description: 'rho g Q H of the pump.',
        example: 32.998,
      }),
      rows: described(context, z.array(rowSchema(context)), {
        description: 'Every element, tee mouth, outlet and lift, from the intake on.',
      }),
    }),
    { description: 'Where the head of the best candidate goes, and what that costs a year.' },
  ),
);

export const lossesField = (context: SchemaContext) =>
  described(context, nullable(lossesSchema(context)), {
    description:
      'With `detail: "losses"`, where the head of `best` goes; null without, without a best, and where no water moves.',
    examples: [null],
  });
