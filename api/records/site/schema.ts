/** Documents the site in requests and answers. */

import { z } from '@hono/zod-openapi';
import { enteredMoney } from '../../fields/money.ts';
import { nullable } from '../../fields/nullable.ts';
import { acceptedFields, recordFields } from '../../fields/record-fields.ts';
import { nameField } from '../../fields/text-field.ts';
import { unitsField } from '../../units/answer-units.ts';
import { described, named } from '../../units/described.ts';
import { entered } from '../../units/entered.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import { tariffRef } from '../tariff/reference.ts';
import type { Site } from './kind.ts';

const ZONE_MAX = 64;

/** Named zones of the IANA database; offsets such as +01:00 know no summer time. */
function isTimeZone(text: string): boolean {
  if (!/^[A-Za-z]/.test(text)) return false;
  try {
    new Intl.DateTimeFormat('en', { timeZone: text });
    return true;
  } catch {
    return false;
  }
}

function orNull(
  context: SchemaContext,
  { description, example }: { description: string; example: number },
): z.ZodType<number | null> {
  const money = enteredMoney(context, { description, example });
  const field = described(context, nullable(money), { description, examples: [example] });
  return context.side === 'answer' ? field : field.default(null);
}

const siteFields = (context: SchemaContext) => ({
  name: nameField(context, {
    description: 'A name, 1 to 120 characters.',
    example: 'Skerry Point Marine Station',
  }),
  timeZone: described(
    context,
    z.string().max(ZONE_MAX).refine(isTimeZone, 'must be a zone of the IANA time zone database'),
    { description: 'A zone of the IANA time zone database.', examples: ['Europe/Lisbon'] },
  ),
  currency: described(context, z.string().regex(/^[A-Z]{3}$/, 'must be three capital letters of ISO 4217'), {
    description: 'The currency of all prices, by its letters of ISO 4217; nothing is ever converted.',
    examples: ['EUR'],
  }),
  elevation: entered(context, 'elevation', {
    description: 'Above sea level; sets the pressure of the air.',
    minimum: -500,
    maximum: 6000,
    example: 10,
    default: 0,
  }),
  price: orNull(context, { description: 'The price of electricity per kWh, or null.', example: 0.21 }),
  tariff: tariffRef(context, {
    description:
      'Id or key of the tariff that prices go by, answered as its id, before `price`, where a request states neither; or null.',
  }),
  labourRate: orNull(context, { description: 'What an hour of work costs, or null.', example: 30 }),
});

/** The site as it is entered. */
export const siteInput = perContext(
  (context): z.ZodType<Site> =>
    named(context, 'Site', z.strictObject({ ...siteFields(context), ...acceptedFields(context) }), {
      description: 'A facility as its user enters it.',
    }),
);

/** The site within a copy of all that it holds. */
export const siteItem = perContext((context) =>
  named(context, 'SiteItem', z.strictObject({ ...recordFields(context), ...siteFields(context) }), {
    description: 'A facility, with the version and times of its record.',
  }),
);

/** The site as it is stored. */
export const siteAnswer = perContext((context) =>
  named(
    context,
    'Site',
    z.strictObject({ ...recordFields(context), ...siteFields(context), units: unitsField(context) }),
    { description: 'A facility.' },
  ),
);
