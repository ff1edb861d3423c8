/** Documents the request for an upgrade plan: candidates, years, budget. */

import { z } from '@hono/zod-openapi';
import type { Upgrade } from '../../../models/upgrade-plan/upgrade.ts';
import { boundedList } from '../../fields/bounded-list.ts';
import { LIST_MAX } from '../../fields/limits.ts';
import { enteredMoney, signedMoney } from '../../fields/money.ts';
import { numberField, wholeNumber } from '../../fields/number-field.ts';
import { acceptedFields } from '../../fields/record-fields.ts';
import { nameField } from '../../fields/text-field.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';

export const PLAN_YEARS_MAX = 40;
/** What `notBefore` and `notAfter` may name: beyond the plan it says why a candidate stays out. */
const YEAR_MAX = 100;
const DEFAULT_NAME = 'Upgrade plan';

const year = (context: SchemaContext, description: string) =>
  wholeNumber(context, { description, minimum: 1, maximum: YEAR_MAX, example: 2 });

const money = (context: SchemaContext, description: string, example: number) =>
  enteredMoney(context, { description, example });

function checkYears({ notBefore, notAfter }: Upgrade, issues: z.RefinementCtx): void {
  if (notBefore === undefined || notAfter === undefined || notBefore <= notAfter) return;
  issues.addIssue({ code: 'custom', path: ['notAfter'], message: `is before notBefore, year ${notBefore}` });
}

export const upgradeFields = (context: SchemaContext) => ({
  name: nameField(context, {
    description: 'A name, 1 to 120 characters, not unique.',
    example: 'One large pump for the seahorse bank',
  }),
  cost: money(context, 'Money in all, paid at the start of the year in which it is made.', 780),
  yearlySaving: signedMoney(context, {
    description: 'Money saved by the end of each year from then on; negative where it costs more to run.',
    example: 260,
  }),
  lifeYears: numberField(context, {
    description: 'How long it lasts; the share unused at the end of the plan keeps its share of the cost.',
    minimum: 0,
    aboveMinimum: true,
    maximum: 100,
    example: 8,
  }),
  group: nameField(context, {
    description: 'Of the candidates of one group at most one is made.',
    example: 'seahorse bank',
  }).optional(),
  notBefore: year(context, 'First year in which it may be made; 1 where it is left out.').optional(),
  notAfter: year(
    context,
    'Last year in which it may be made; the last of the plan where it is left out.',
  ).optional(),
  must: described(context, z.boolean(), {
    description: 'Whether it must be made in some year, pay or not.',
    examples: [false],
  }).optional(),
});

const candidate = perContext(
  (context): z.ZodType<Upgrade> =>
    named(context, 'Upgrade', z.strictObject(upgradeFields(context)).superRefine(checkYears), {
      description: 'An upgrade that a plan may hold.',
    }),
);

/** Shared by request and answer. */
export const planTerms = (context: SchemaContext) => ({
  years: wholeNumber(context, {
    description: 'Length of the plan.',
    minimum: 1,
    maximum: PLAN_YEARS_MAX,
    example: 5,
  }),
  budget: described(
    context,
    boundedList(context, () => money(context, 'Money new in a year.', 1000), { min: 1, max: PLAN_YEARS_MAX }),
    {
      description: 'Money new in year 1, 2, ..; nothing new in the years beyond its end.',
      examples: [[1000, 800, 800]],
    },
  ),
  discountRate: numberField(context, {
    description:
      'Discount rate a year as a fraction, without inflation where savings are stated in money of today.',
    minimum: -0.5,
    maximum: 1,
    example: 0.05,
  }),
});

export const upgradePlanRequest = perContext((context) =>
  named(
    context,
    'UpgradePlan',
    z
      .strictObject({
        name: nameField(context, {
          description: 'A name, 1 to 120 characters, not unique; "Upgrade plan" where it is left out.',
          example: 'Pumps 2026 to 2030',
        }).default(DEFAULT_NAME),
        ...planTerms(context),
        carryOver: described(context, z.boolean().default(true), {
          description: 'Whether money that is not spent may be spent in a later year; it bears no interest.',
          examples: [true],
        }),
        currency: described(context, z.string().regex(/^[A-Z]{3}$/, 'must be three capital letters'), {
          description: "Of all money of the plan; the site's, which it must be where it is stated.",
          examples: ['EUR'],
        }).optional(),
        candidates: described(
          context,
          boundedList(context, () => candidate(context), { min: 1, max: LIST_MAX }),
          {
            description: 'What to choose among.',
          },
        ),
        ...acceptedFields(context),
      })
      .superRefine(({ years, budget }, issues) => {
        if (budget.length <= years) return;
        const message = `has ${budget.length} years, more than the plan's ${years}`;
        issues.addIssue({ code: 'custom', path: ['budget'], message });
      }),
    { description: 'Which upgrades in which year are worth most under a budget?' },
  ),
);
