/** Documents the request for a comparison of options over years. */

import { z } from '@hono/zod-openapi';
import { boundedList } from '../../fields/bounded-list.ts';
import { MINUTES_PER_FAILURE } from '../../fields/life-cycle-terms.ts';
import { signedMoney } from '../../fields/money.ts';
import {
  DISCOUNT_RATE,
  ENERGY_INFLATION,
  INFLATION,
  LABOUR_RATE,
  YEARS,
  YEARS_MAX,
} from '../../fields/money-fields.ts';
import { checkGrowth } from '../../fields/money-growth.ts';
import { numberField, wholeNumber } from '../../fields/number-field.ts';
import { acceptedFields } from '../../fields/record-fields.ts';
import { PRICE } from '../../fields/running-fields.ts';
import { nameField } from '../../fields/text-field.ts';
import { tariffOrId } from '../../records/inline/tariff-or-id.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import { comparisonAssembly } from './assembly-schema.ts';

const OPTIONS_MAX = 20;
const ASSEMBLIES_MAX = 50;
const ASSEMBLIES_IN_ALL = 200;
const EXTRAS_MAX = 200;
const WEEK = 7 * 24;

export const EXTRA_KINDS = ['pipework', 'installation', 'operation', 'environment', 'disposal'] as const;

const extra = perContext((context) =>
  named(
    context,
    'ComparisonExtra',
    z.strictObject({
      name: nameField(context, { description: 'What it is.', example: 'Two drilled bulkheads' }),
      kind: described(context, z.enum(EXTRA_KINDS), {
        description: 'The cost element it counts as; pipework counts as purchase.',
        examples: ['installation'],
      }),
      cost: signedMoney(context, {
        description: 'Money of today, each time; negative where it brings money.',
        example: 180,
      }),
      year: wholeNumber(context, {
        description: 'The year at whose end it is paid; 0 is now.',
        minimum: 0,
        maximum: YEARS_MAX,
        example: 0,
      }),
      everyYears: wholeNumber(context, {
        description: 'Paid again every so many years; once where it is left out.',
        minimum: 1,
        maximum: YEARS_MAX,
        example: 2,
      }).optional(),
    }),
    { description: 'A cost besides pumps and their running.' },
  ),
);

const risk = perContext((context) =>
  named(
    context,
    'ComparisonRisk',
    z.strictObject({
      valueAtRisk: numberField(context, {
        description: 'Money that is lost when an outlet stays short for too long.',
        minimum: 0,
        maximum: 1e12,
        example: 4000,
      }),
      survivalHours: numberField(context, {
        description: 'Hours that the animals bear it.',
        minimum: 0,
        maximum: 52 * WEEK,
        example: 6,
      }),
      meanRestoreHours: numberField(context, {
        description: 'Hours that it takes in the mean until water moves again.',
        minimum: 0,
        maximum: 52 * WEEK,
        example: 12,
      }),
      neededShare: numberField(context, {
        description: 'The share of its required flow that an outlet must keep meanwhile.',
        minimum: 0,
        aboveMinimum: true,
        maximum: 1,
        example: 1,
        default: 1,
      }),
    }),
    { description: 'What a failure may cost.' },
  ),
);

const option = perContext((context) =>
  named(
    context,
    'ComparisonOption',
    z.strictObject({
      name: nameField(context, { description: 'Its name.', example: 'One Canister 250' }),
      assemblies: described(
        context,
        boundedList(context, () => comparisonAssembly(context), { min: 1, max: ASSEMBLIES_MAX }),
        { description: 'What it runs.' },
      ),
      extras: described(
        context,
        boundedList(context, () => extra(context), { max: EXTRAS_MAX }),
        { description: 'What else it costs.' },
      ).default([]),
      risk: risk(context).optional(),
    }),
    { description: 'One way to do it.' },
  ),
);

const terms = (context: SchemaContext) => ({
  years: wholeNumber(context, YEARS),
  discountRate: numberField(context, { ...DISCOUNT_RATE, default: 0 }),
  inflation: numberField(context, { ...INFLATION, default: 0 }),
  energyInflation: numberField(context, ENERGY_INFLATION).optional(),
  labourRate: numberField(context, LABOUR_RATE).optional(),
});

function checkOptions(
  {
    years,
    options,
  }: {
    readonly years: number;
    readonly options: readonly {
      readonly name: string;
      readonly assemblies: readonly unknown[];
      readonly extras: readonly { readonly year: number }[];
    }[];
  },
  issues: z.RefinementCtx,
): void {
  const actual = options.reduce((sum, { assemblies }) => sum + assemblies.length, 0);
  if (actual > ASSEMBLIES_IN_ALL) {
    const message = `have ${actual} assemblies; ${ASSEMBLIES_IN_ALL} are the limit`;
    const params = { limit: ASSEMBLIES_IN_ALL, actual };
    issues.addIssue({ code: 'custom', path: ['options'], message, params });
  }
  const names = options.map(({ name }) => name);
  for (const [i, { name, extras }] of options.entries()) {
    if (names.indexOf(name) !== i) {
      const message = `is "${name}", the name of another option`;
      issues.addIssue({ code: 'custom', path: ['options', i, 'name'], message });
    }
    for (const [j, { year }] of extras.entries()) {
      if (year <= years) continue;
      const path = ['options', i, 'extras', j, 'year'];
      const message = `must be at most ${years}, the years looked at`;
      issues.addIssue({ code: 'custom', path, message });
    }
  }
}

export const comparisonRequest = perContext((context) =>
  named(
    context,
    'ComparisonRequest',
    z
      .strictObject({
        name: nameField(context, {
          description: 'Its name; after its options where it is left out.',
          example: 'Seahorse bank: three pumps or one',
        }).optional(),
        ...terms(context),
        price: numberField(context, PRICE).optional(),
        tariff: tariffOrId(context).optional(),
        currency: described(context, z.string().regex(/^[A-Z]{3}$/, 'must be three capital letters'), {
          description: 'Where it is stated, it must be the currency of the site: nothing is converted.',
          examples: ['EUR'],
        }).optional(),
        minutesPerFailure: numberField(context, { ...MINUTES_PER_FAILURE, default: 120 }),
        options: described(
          context,
          boundedList(context, () => option(context), { min: 1, max: OPTIONS_MAX }),
          { description: 'The first is what the others are measured against.' },
        ),
        ...acceptedFields(context),
      })
      .superRefine(checkGrowth)
      .superRefine(checkOptions),
    { description: 'Options, and how money of several years is made comparable.' },
  ),
);

/** What counts of it: the fields that are only accepted apart. */
export type ComparisonQuestion = Omit<
  z.output<ReturnType<typeof comparisonRequest>>,
  keyof ReturnType<typeof acceptedFields>
>;
