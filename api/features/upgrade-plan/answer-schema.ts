/** Documents an upgrade plan in answers. */

import { z } from '@hono/zod-openapi';
import { basisSchema } from '../../fields/basis.ts';
import { cautionSchema } from '../../fields/caution.ts';
import { listSchema } from '../../fields/list-schema.ts';
import { money } from '../../fields/money.ts';
import { nullable } from '../../fields/nullable.ts';
import { recordFields } from '../../fields/record-fields.ts';
import { unitsField } from '../../units/answer-units.ts';
import { computedNumber } from '../../units/computed.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import { planTerms, upgradeFields } from './schema.ts';

const REASONS = ['outside-plan', 'does-not-pay', 'over-budget', 'group', 'no-room'] as const;

const place = (context: SchemaContext) =>
  described(context, z.int(), { description: 'Place among the candidates, from 0.', examples: [0] });

const text = (context: SchemaContext, description: string, example: string) =>
  described(context, z.string(), { description, examples: [example] });

const year = (context: SchemaContext, description: string) =>
  described(context, z.int(), { description, examples: [1] });

const status = (context: SchemaContext) =>
  described(context, z.enum(['optimal', 'time-limit']), {
    description:
      '`optimal`: no plan is worth more. `time-limit`: the best that was found in the time, see `gap`.',
    examples: ['optimal'],
  });

const gap = (context: SchemaContext) =>
  described(context, nullable(computedNumber(context, { description: 'A fraction.', example: 0 })), {
    description:
      'By what fraction of its present value a better plan could exceed it at most, 0 where it is proven best; null where the plan is worth nothing.',
    examples: [0],
  });

const item = perContext((context) =>
  named(
    context,
    'UpgradePlanItem',
    z.strictObject({
      candidate: place(context),
      name: text(context, 'Its name.', 'One large pump for the seahorse bank'),
      year: year(context, 'At the start of which it is made, from 1.'),
      cost: money(context, 'What it costs.', 780),
      presentValue: money(context, 'What it adds to that of the plan; a must may take from it.', 812.4),
    }),
    { description: 'An upgrade that is made.' },
  ),
);

const leftOut = perContext((context) =>
  named(
    context,
    'UpgradeLeftOut',
    z.strictObject({
      candidate: place(context),
      name: text(context, 'Its name.', 'New screens'),
      reason: described(context, z.enum(REASONS), {
        description:
          '`outside-plan`: its years are not in the plan. `does-not-pay`: its cost exceeds its present value in every year. `over-budget`: the budget never reaches its cost. `group`: another of its group is made. `no-room`: the budget is better spent on the rest.',
        examples: ['no-room'],
      }),
      detail: text(
        context,
        'The reason in a sentence with its figures.',
        'It does not pay: even in its best year, year 1, its cost exceeds what it saves and keeps of its value by 40 EUR of present value.',
      ),
      missing: described(context, nullable(money(context, 'Money.', 120)), {
        description:
          'The least money more with which it could be made beside the plan [money]; null for other reasons.',
        examples: [120],
      }),
    }),
    { description: 'An upgrade that is not made, and why.' },
  ),
);

const spending = perContext((context) =>
  named(
    context,
    'UpgradePlanYear',
    z.strictObject({
      year: year(context, 'Of the plan, from 1.'),
      budget: money(context, 'New in this year.', 1000),
      available: money(context, 'With what earlier years left.', 1220),
      spent: money(context, 'Spent in this year.', 780),
      carried: money(context, 'Handed on to the next year; 0 without carry-over.', 440),
    }),
    { description: 'A year of the budget.' },
  ),
);

const moreBudget = perContext((context) =>
  named(
    context,
    'UpgradePlanMoreBudget',
    z.strictObject({
      budget: described(context, z.array(money(context, 'New in a year.', 1010)), {
        description: "Each year's budget and 1 % more.",
        examples: [[1010, 808, 808]],
      }),
      presentValue: money(context, 'Of the best plan under it.', 1640.2),
      gain: money(context, 'More than that of this plan.', 0),
      status: status(context),
      gap: gap(context),
    }),
    { description: 'The same with 1 % more budget in every year.' },
  ),
);

const candidate = perContext((context) =>
  named(context, 'Upgrade', z.strictObject(upgradeFields(context)), {
    description: 'An upgrade that a plan may hold.',
  }),
);

const figures = (context: SchemaContext) => ({
  name: text(context, 'Its name.', 'Pumps 2026 to 2030'),
  years: planTerms(context).years,
  currency: text(context, 'Of all money of the plan.', 'EUR'),
  presentValue: money(context, 'What all that is made adds, at the start of year 1.', 1640.2),
  status: status(context),
  gap: gap(context),
  summary: text(
    context,
    'The plan in a few sentences.',
    'Make One large pump for the seahorse bank in year 1.',
  ),
});

export const upgradePlanSchema = perContext((context) =>
  named(
    context,
    'UpgradePlan',
    z.strictObject({
      ...recordFields(context),
      ...figures(context),
      ...planTerms(context),
      carryOver: described(context, z.boolean(), {
        description: 'Whether money that is not spent may be spent in a later year.',
        examples: [true],
      }),
      candidates: described(context, z.array(candidate(context)), { description: 'As they were entered.' }),
      items: described(context, z.array(item(context)), {
        description: 'What is made, by year, then by place among the candidates.',
      }),
      leftOut: described(context, z.array(leftOut(context)), {
        description: 'What is not made, by place among the candidates.',
      }),
      spending: described(context, z.array(spending(context)), { description: 'The budget year by year.' }),
      moreBudget: moreBudget(context),
      cautions: described(context, z.array(cautionSchema(context)), {
        description: 'What the reader of the plan must know.',
      }),
      basis: basisSchema(context),
      units: unitsField(context),
    }),
    { description: 'A stored upgrade plan.' },
  ),
);

/** In a list: without candidates and years. */
const listed = perContext((context) =>
  named(context, 'UpgradePlanListed', z.strictObject({ ...recordFields(context), ...figures(context) }), {
    description: 'A stored upgrade plan in a list.',
  }),
);

export const upgradePlanList = perContext((context) =>
  listSchema(context, 'UpgradePlanList', listed(context)),
);
