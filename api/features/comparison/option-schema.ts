/** Documents an option of a comparison in answers: its costs by element and year, and what they follow from. */
import { z } from '@hono/zod-openapi';
import type { ByElement, COST_ELEMENTS, CostElement } from '../../../models/money/option-costs.ts';
import { cautionSchema } from '../../fields/caution.ts';
import { money } from '../../fields/money.ts';
import { nullable } from '../../fields/nullable.ts';
import { computed, computedNumber } from '../../units/computed.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import { comparisonAssemblyFigures } from './assembly-answer-schema.ts';

const text = (context: SchemaContext, description: string, example: string) =>
  described(context, z.string(), { description, examples: [example] });

const MEANINGS = {
  purchase: 'Pumps, their replacements, pipework, less what is left at the end.',
  installation: 'Extras of this kind.',
  energy: 'Electricity.',
  operation: 'Extras of this kind.',
  maintenance: 'Attention at the labour rate, and parts.',
  downtime: 'What failures are expected to cost.',
  environment: 'Extras of this kind.',
  disposal: 'Extras of this kind.',
} as const satisfies Record<CostElement, string>;

const EXAMPLES: ByElement = {
  purchase: 1014,
  installation: 180,
  energy: 592,
  operation: 0,
  maintenance: 410,
  downtime: 96,
  environment: 0,
  disposal: 0,
};

const elements = (context: SchemaContext) => {
  const of = (name: CostElement) => money(context, MEANINGS[name], EXAMPLES[name]);
  return z.strictObject({
    purchase: of('purchase'),
    installation: of('installation'),
    energy: of('energy'),
    operation: of('operation'),
    maintenance: of('maintenance'),
    downtime: of('downtime'),
    environment: of('environment'),
    disposal: of('disposal'),
  } satisfies Record<(typeof COST_ELEMENTS)[number], z.ZodType>);
};

const range = (context: SchemaContext, what: string, low: number, high: number) =>
  z.strictObject({
    low: money(context, `Least ${what}.`, low),
    high: money(context, `Greatest ${what}.`, high),
  });

const year = perContext((context) =>
  named(
    context,
    'ComparisonYear',
    z.strictObject({
      year: described(context, z.int(), { description: '0 is now.', examples: [1] }),
      elements: described(context, elements(context), { description: 'In the money of that year.' }),
      total: money(context, 'All elements.', 138.2),
      presentValue: money(context, 'What they are worth now.', 132.9),
      running: money(context, 'Of that, what runs through the year; the rest is paid at its end.', 132.9),
      cumulated: money(context, 'Present values up to and with this year.', 1092.9),
    }),
    { description: 'A year of an option.' },
  ),
);

const payback = (context: SchemaContext) =>
  z.strictObject({
    simple: nullable(
      computedNumber(context, {
        description: 'Years, in the money of today; null: not within the years looked at.',
        example: 2.86,
      }),
    ),
    discounted: nullable(
      computedNumber(context, {
        description: 'Years, in present values; null: not within the years looked at.',
        example: 3.04,
      }),
    ),
  });

const yearly = (context: SchemaContext) => ({
  annualEnergy: computed(context, 'energy', { description: 'Energy of a year.', example: 339.9 }),
  annualEnergyCost: money(context, 'Of that energy, at the price of today.', 71.4),
  attention: z.strictObject({
    devices: described(context, z.int(), { description: 'Pumps that it has.', examples: [1] }),
    hours: computedNumber(context, { description: 'Hours of work a year.', example: 1.76667 }),
    cost: money(context, 'Of them a year, parts included, today.', 93),
  }),
  expectedLoss: z.strictObject({
    value: money(context, 'Of a year, at the rates that the counts give.', 48.5),
    low: money(context, 'At the least rates that the counts allow (95 %).', 5.9),
    high: money(context, 'At the greatest.', 175),
  }),
});

/** Null of the first option. */
const againstFirst = (context: SchemaContext) => ({
  payback: described(context, nullable(payback(context)), {
    description:
      'Of what it costs more at first than the first option; null for that one, and for one that costs the same.',
  }),
  breakEvenPrice: described(
    context,
    nullable(computedNumber(context, { description: 'Money.', example: 0.09 })),
    {
      description:
        'Money per kWh at which it costs as much as the first option in present value; null without such a price.',
      examples: [0.09],
    },
  ),
  breakEvenValueAtRisk: described(
    context,
    nullable(computedNumber(context, { description: 'Money.', example: 9200 })),
    {
      description: 'Value at risk of both at which they cost the same [money]; null without such a value.',
      examples: [9200],
    },
  ),
});

export const comparisonOption = perContext((context) =>
  named(
    context,
    'ComparedOption',
    z.strictObject({
      name: text(context, 'Its name.', 'One Canister 250'),
      feasible: described(context, z.boolean(), {
        description: 'Whether all that it runs serves.',
        examples: [true],
      }),
      presentValue: money(context, 'Life-cycle cost: what all of it is worth now.', 2292),
      range: described(context, range(context, 'present value', 2260, 2410), {
        description: 'By the uncertainty of the energy in the curves alone.',
      }),
      elements: described(context, elements(context), {
        description: 'The present value by cost element; they add up to it.',
      }),
      years: described(context, z.array(year(context)), { description: 'Year by year, from 0.' }),
      ...againstFirst(context),
      ...yearly(context),
      assemblies: described(context, z.array(comparisonAssemblyFigures(context)), {
        description: 'What it runs.',
      }),
      cautions: described(context, z.array(cautionSchema(context)), { description: 'What to know of it.' }),
    }),
    { description: 'What an option costs over the years.' },
  ),
);
