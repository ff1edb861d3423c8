/** Documents a comparison in answers. */
import { z } from '@hono/zod-openapi';
import { SENSITIVE_INPUTS } from '../../../models/money/sensitivity.ts';
import { cautionSchema } from '../../fields/caution.ts';
import { listSchema } from '../../fields/list-schema.ts';
import { money } from '../../fields/money.ts';
import { nullable } from '../../fields/nullable.ts';
import { recordFields } from '../../fields/record-fields.ts';
import type { WithoutUnits } from '../../http/answer-form.ts';
import { unitsField } from '../../units/answer-units.ts';
import { computedNumber } from '../../units/computed.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import { comparisonOption } from './option-schema.ts';

const text = (context: SchemaContext, description: string, example: string) =>
  described(context, z.string(), { description, examples: [example] });

const sensitivity = perContext((context) =>
  named(
    context,
    'ComparisonSensitivity',
    z.strictObject({
      input: described(context, z.enum(SENSITIVE_INPUTS), {
        description: 'What is changed, in both options; `energy-of-option` in the other one alone.',
        examples: ['energy-price'],
      }),
      low: money(context, 'Saving in present value with the input 20 % lower.', 640),
      high: money(context, 'With it 20 % higher.', 1010),
      effect: money(context, 'The larger change of the saving.', 185),
      flips: described(context, z.boolean(), {
        description: 'Whether the other option becomes the cheaper one.',
        examples: [false],
      }),
    }),
    { description: 'How much the saving hangs on one input.' },
  ),
);

const rate = (context: SchemaContext, description: string, example: number) =>
  described(context, z.number(), { description, examples: [example] });

const assumptions = (context: SchemaContext) =>
  z.strictObject({
    years: described(context, z.int(), { description: 'Looked at.', examples: [10] }),
    discountRate: rate(context, 'A fraction a year.', 0.04),
    inflation: rate(context, 'Of all but energy, a fraction a year.', 0.02),
    energyInflation: rate(context, 'Of energy, a fraction a year.', 0.03),
    labourRate: rate(context, 'Money an hour.', 30),
    price: computedNumber(context, {
      description:
        'Money per kWh; the time-mean price of a tariff. A schedule takes the prices of its hours.',
      example: 0.21,
    }),
    tariff: described(context, nullable(z.string()), {
      description: 'Name of the tariff that the price is the mean of; null: flat.',
      examples: [null],
    }),
    minutesPerFailure: rate(context, 'Of work.', 120),
    notes: described(context, z.array(z.string()), {
      description: 'What else was assumed, in sentences.',
      examples: [['Canister 250 states no failures: none are expected.']],
    }),
  });

const version = (context: SchemaContext, of: string) =>
  z.array(
    z.strictObject({
      id: text(context, `Id of the ${of}.`, '0198c0de'),
      version: described(context, nullable(z.int()), {
        description: 'Null where there was none.',
        examples: [3],
      }),
    }),
  );

const basis = perContext((context) =>
  named(
    context,
    'ComparisonBasis',
    z.strictObject({
      modelVersion: text(context, 'Version of the formulas.', '1'),
      loops: version(context, 'loop'),
      pumps: version(context, 'pump'),
      tariffs: version(context, 'tariff'),
      schedules: version(context, 'loop of the schedule'),
    }),
    { description: 'The stored versions that the figures rest on.' },
  ),
);

const figures = (context: SchemaContext) => ({
  currency: text(context, 'Of all its money: that of the site.', 'EUR'),
  options: described(context, z.array(comparisonOption(context)), {
    description: 'In the order of the request; the first is what the others are measured against.',
  }),
  cheapest: described(context, nullable(z.int()), {
    description: 'Place of the feasible option of least present value, from 0; null where none is feasible.',
    examples: [1],
  }),
  breakEvenPrice: described(
    context,
    nullable(computedNumber(context, { description: 'Money.', example: 0.09 })),
    {
      description:
        'That of the cheapest option other than the first: money per kWh at which it costs as much as the first.',
      examples: [0.09],
    },
  ),
  breakEvenValueAtRisk: described(
    context,
    nullable(computedNumber(context, { description: 'Money.', example: 9200 })),
    { description: 'That of the same option [money].', examples: [9200] },
  ),
  sensitivity: described(context, z.array(sensitivity(context)), {
    description:
      'What the saving of the same option against the first hangs on, the strongest first; empty with one option.',
  }),
  assumptions: described(context, assumptions(context), { description: 'What the figures suppose.' }),
  summary: text(
    context,
    'The answer in a few sentences.',
    'One Canister 250 costs least over 10 years: 2292 EUR against 3110 EUR, back after 2.9 years.',
  ),
  cautions: described(context, z.array(cautionSchema(context)), { description: 'What to know.' }),
  basis: basis(context),
});

export const comparisonSchema = perContext((context) =>
  named(
    context,
    'Comparison',
    z.strictObject({
      ...recordFields(context),
      name: text(context, 'Its name.', 'Seahorse bank: three pumps or one'),
      stale: described(context, z.boolean(), {
        description:
          'Whether a loop, pump, tariff, schedule or the site has changed since: ask again for figures of today.',
        examples: [false],
      }),
      ...figures(context),
      units: unitsField(context),
    }),
    { description: 'A stored comparison of life-cycle costs.' },
  ),
);

/** What is computed once, and kept. */
export type ComparisonFigures = Omit<
  WithoutUnits<z.output<ReturnType<typeof comparisonSchema>>>,
  'id' | 'version' | 'createdAt' | 'updatedAt' | 'name' | 'stale'
>;

const listed = perContext((context) =>
  named(
    context,
    'ComparisonListed',
    z.strictObject({
      ...recordFields(context),
      name: text(context, 'Its name.', 'Seahorse bank: three pumps or one'),
      currency: text(context, 'Of its money.', 'EUR'),
      options: described(context, z.int(), { description: 'How many it has.', examples: [2] }),
      cheapest: described(context, nullable(z.string()), {
        description: 'Name of the cheapest one; null where none is feasible.',
        examples: ['One Canister 250'],
      }),
      summary: text(context, 'The answer in a few sentences.', 'One Canister 250 costs least over 10 years.'),
    }),
    { description: 'A stored comparison in a list.' },
  ),
);

export const comparisonList = perContext((context) => listSchema(context, 'ComparisonList', listed(context)));
