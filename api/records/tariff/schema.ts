/** Documents a tariff in requests and answers. */
import { z } from '@hono/zod-openapi';
import type { Tariff, TariffPeriod } from '../../../models/tariff/tariff.ts';
import { calendarDate, dayKinds, months, timeOfDay } from '../../fields/clock-fields.ts';
import { acceptedKey, answeredKey } from '../../fields/key-field.ts';
import { LIST_MAX } from '../../fields/limits.ts';
import { listSchema } from '../../fields/list-schema.ts';
import { numberField } from '../../fields/number-field.ts';
import { acceptedFields, recordFields } from '../../fields/record-fields.ts';
import { nameField } from '../../fields/text-field.ts';
import { unitsField } from '../../units/answer-units.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';

const PRICE_MAX = 1000;
const CHARGE_MAX = 1e6;

const price = (context: SchemaContext) =>
  numberField(context, {
    description: 'Money per kWh; negative where feeding in is paid.',
    minimum: -PRICE_MAX,
    maximum: PRICE_MAX,
    example: 0.32,
  });

const timesFault = ({ from, to }: TariffPeriod): { path: string[]; message: string } | null => {
  if (from === undefined && to !== undefined) return { path: ['from'], message: 'is needed beside `to`' };
  if (from !== undefined && to === undefined) return { path: ['to'], message: 'is needed beside `from`' };
  if (from === undefined || from !== to) return null;
  return { path: ['to'], message: 'must differ from `from`; leave both out for the whole day' };
};

const period = perContext(
  (context): z.ZodType<TariffPeriod> =>
    named(
      context,
      'TariffPeriod',
      z
        .strictObject({
          name: nameField(context, { description: 'A name, 1 to 120 characters.', example: 'peak' }),
          price: price(context),
          months: months(
            context,
            'Months in which it applies, 1 to 12; all where it is left out.',
          ).optional(),
          days: dayKinds(
            context,
            'Days on which it applies; all where it is left out. A date of `holidays` is a holiday and no weekday.',
          ).optional(),
          from: timeOfDay(context, {
            description:
              'Wall clock at which it begins each day; with `to`, or neither for the whole day. From an evening to a morning each instant counts by its own date.',
            example: '17:00',
          }).optional(),
          to: timeOfDay(context, {
            description: 'Wall clock at which it ends; 00:00 is the end of the day.',
            example: '21:00',
          }).optional(),
        })
        .superRefine((one, issues) => {
          const fault = timesFault(one);
          if (fault !== null) issues.addIssue({ code: 'custom', ...fault });
        }),
      { description: 'When a price applies.' },
    ),
);

const otherwise = (context: SchemaContext) =>
  named(
    context,
    'TariffRest',
    z.strictObject({
      name: nameField(context, { description: 'A name, 1 to 120 characters.', example: 'base' }),
      price: price(context),
    }),
    { description: 'The price at all other times.' },
  );

const rest = perContext(otherwise);

/** Empty where a request leaves it out. */
function listOrEmpty<Item>(
  context: SchemaContext,
  item: z.ZodType<Item>,
  description: string,
): z.ZodType<Item[]> {
  const list = z.array(item).max(LIST_MAX);
  return described(context, context.side === 'answer' ? list : list.default([]), { description });
}

const fields = (context: SchemaContext) => ({
  name: nameField(context, {
    description: 'A name, 1 to 120 characters, not unique.',
    example: 'Winter peak',
  }),
  holidays: listOrEmpty(
    context,
    calendarDate(context, { description: 'A date.', example: '2026-12-25' }),
    'Dates that are holidays, by the calendar of the site.',
  ),
  periods: listOrEmpty(context, period(context), 'Prices by time; the first that matches wins.'),
  otherwise: rest(context),
  standingChargePerDay: numberField(context, {
    description: 'Money a day whatever is used; never part of what a loop costs.',
    minimum: 0,
    maximum: CHARGE_MAX,
    example: 0.4,
    default: 0,
  }),
});

/** A tariff as it is entered, to be stored or within a request. */
export const tariffInput = perContext(
  (context): z.ZodType<Tariff> =>
    named(
      context,
      'Tariff',
      z.strictObject({ ...fields(context), ...acceptedFields(context), ...acceptedKey(context) }),
      {
        description: 'Prices by the wall clock of the site.',
      },
    ),
);

export const tariffItem = perContext((context) =>
  named(
    context,
    'TariffItem',
    z.strictObject({ ...recordFields(context), ...answeredKey(context), ...fields(context) }),
    {
      description: 'A stored tariff in a list.',
    },
  ),
);

export const tariffAnswer = perContext((context) =>
  named(
    context,
    'Tariff',
    z.strictObject({
      ...recordFields(context),
      ...answeredKey(context),
      ...fields(context),
      units: unitsField(context),
    }),
    { description: 'A stored tariff.' },
  ),
);

export const tariffList = perContext((context) => listSchema(context, 'TariffList', tariffItem(context)));
