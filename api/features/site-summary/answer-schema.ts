/** Documents the summary of a site. */
import { z } from '@hono/zod-openapi';
import { basisSchema } from '../../fields/basis.ts';
import { cautionSchema } from '../../fields/caution.ts';
import { nullable } from '../../fields/nullable.ts';
import { unitsField } from '../../units/answer-units.ts';
import { computed, computedNumber } from '../../units/computed.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import { aboveNeedSchema, loopCountsSchema, savingSchema, shortSchema } from './parts-schema.ts';

const orNull = (
  context: SchemaContext,
  { description, example }: { readonly description: string; readonly example: number },
) =>
  described(context, nullable(computedNumber(context, { description, example })), {
    description,
    examples: [example],
  });

const attentionFigures = (context: SchemaContext, of: string) =>
  z.strictObject({
    hours: computedNumber(context, { description: `Hours of work a year ${of} [h].`, example: 9 }),
    parts: computedNumber(context, { description: `Parts a year ${of} [money].`, example: 160 }),
    cost: orNull(context, {
      description: `Parts, and the hours at the labour rate of the site, a year ${of} [money]; null without a rate.`,
      example: 430,
    }),
  });

const attention = perContext((context) =>
  named(
    context,
    'SummaryAttention',
    z.strictObject({
      service: attentionFigures(context, 'for the service that installed pumps state'),
      tasks: attentionFigures(
        context,
        'for the routine checks that are stored, but for wet-end services that installed pumps state',
      ),
      hours: computedNumber(context, { description: 'Hours of work a year in all [h].', example: 21 }),
      parts: computedNumber(context, { description: 'Parts a year in all [money].', example: 160 }),
      cost: orNull(context, { description: 'What both cost a year in all [money].', example: 790 }),
    }),
    { description: 'What pumps and loops ask of people in a year.' },
  ),
);

const assumptions = perContext((context) =>
  named(
    context,
    'SummaryAssumptions',
    z.strictObject({
      year: described(context, z.int(), {
        description: 'Of the calendar, for schedules and tariffs.',
        examples: [2026],
      }),
      price: orNull(context, {
        description:
          'Money per kWh of a loop without a schedule: of the tariff over the year, else of the site.',
        example: 0.21,
      }),
      tariff: described(context, nullable(z.string()), {
        description: "Name of the site's tariff; null without one.",
        examples: ['Winter peak'],
      }),
      hoursPerDay: described(context, z.int(), {
        description: 'Hours a day at the setting of a loop without a schedule.',
        examples: [24],
      }),
    }),
    { description: 'What the sums go by.' },
  ),
);

export const summarySchema = perContext((context) =>
  named(
    context,
    'SiteSummary',
    z.strictObject({
      loops: loopCountsSchema(context),
      devices: described(context, z.int(), { description: 'Pumps that are installed.', examples: [6] }),
      storedPumps: described(context, z.int(), {
        description: 'Pumps that are stored, among which savings are looked for.',
        examples: [4],
      }),
      power: computed(context, 'power', {
        description: 'Of all loops, the mean over the year.',
        example: 812.4,
      }),
      annualEnergy: computed(context, 'energy', { description: 'Of all loops in a year.', example: 7116.6 }),
      annualCost: orNull(context, {
        description: 'What it costs a year [money]; null where a loop has no price.',
        example: 1494.5,
      }),
      currency: described(context, z.string(), { description: 'Of all money here.', examples: ['EUR'] }),
      short: shortSchema(context),
      aboveNeed: aboveNeedSchema(context),
      attention: attention(context),
      savings: described(context, z.array(savingSchema(context)), {
        description:
          'The ten largest savings a year, at most one a loop, largest first: by money, by energy where nothing is priced.',
      }),
      assumptions: assumptions(context),
      summary: described(context, z.string(), {
        description: 'The site in a few sentences.',
        examples: ['4 loops draw 812.4 W, 7117 kWh a year, 1495 EUR a year.'],
      }),
      cautions: described(context, z.array(cautionSchema(context)), {
        description: 'What the reader of the figures must know.',
      }),
      basis: basisSchema(context),
      units: unitsField(context),
    }),
    { description: 'The whole site in figures.' },
  ),
);
