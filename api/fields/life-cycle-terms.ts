/** Documents what a recommendation ranks by, and the terms of a life-cycle cost. */
import { z } from '@hono/zod-openapi';
import { described, named } from '../units/described.ts';
import { perContext } from '../units/per-context.ts';
import { DISCOUNT_RATE, ENERGY_INFLATION, INFLATION, LABOUR_RATE, YEARS } from './money-fields.ts';
import { checkGrowth } from './money-growth.ts';
import { nullable } from './nullable.ts';
import { numberField, wholeNumber } from './number-field.ts';

export const OBJECTIVES = ['energy-cost', 'life-cycle-cost'] as const;

export type Objective = (typeof OBJECTIVES)[number];

export const MINUTES_PER_FAILURE = {
  description: 'Minutes of work that a failed pump demands.',
  minimum: 0,
  maximum: 100_000,
  example: 120,
} as const;

export const LIFE_CYCLE_DEFAULTS = {
  years: 10,
  discountRate: 0,
  inflation: 0,
  minutesPerFailure: 120,
} as const;

export const lifeCycleTerms = perContext((context) =>
  named(
    context,
    'LifeCycleTerms',
    z
      .strictObject({
        years: wholeNumber(context, { ...YEARS, default: LIFE_CYCLE_DEFAULTS.years }),
        discountRate: numberField(context, { ...DISCOUNT_RATE, default: 0 }),
        inflation: numberField(context, { ...INFLATION, default: 0 }),
        energyInflation: numberField(context, ENERGY_INFLATION).optional(),
        labourRate: numberField(context, LABOUR_RATE).optional(),
        minutesPerFailure: numberField(context, { ...MINUTES_PER_FAILURE, default: 120 }),
      })
      .superRefine(checkGrowth),
    { description: 'What counts for the objective `life-cycle-cost`; pumps are taken as newly bought.' },
  ),
);

export type AskedLifeCycle = z.output<ReturnType<typeof lifeCycleTerms>>;

const rate = (description: string, example: number) =>
  z.number().openapi({ description, examples: [example] });

/** In an answer. */
export const reportedLifeCycleShape = {
  years: z.int().openapi({ description: 'Looked at.', examples: [10] }),
  discountRate: rate('A fraction a year.', 0),
  inflation: rate('Of all but energy, a fraction a year.', 0),
  energyInflation: rate('Of energy, a fraction a year.', 0),
  labourRate: rate('Money an hour.', 30),
  minutesPerFailure: rate('Of work.', 120),
} as const;

/** In an answer: null where the ranking is by energy. */
export const reportedLifeCycle = perContext((context) =>
  described(
    context,
    nullable(
      z.strictObject({
        years: z.int().openapi({ description: 'Looked at.', examples: [10] }),
        discountRate: rate('A fraction a year.', 0),
        inflation: rate('Of all but energy, a fraction a year.', 0),
        energyInflation: rate('Of energy, a fraction a year.', 0),
        labourRate: rate('Money an hour.', 30),
        minutesPerFailure: rate('Of work.', 120),
      }),
    ),
    { description: 'Terms of the life-cycle cost; null if the ranking uses the cost of energy.' },
  ),
);
