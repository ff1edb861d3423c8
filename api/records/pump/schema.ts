/** Documents a pump in requests and answers. */

import { z } from '@hono/zod-openapi';
import type { Pump } from '../../../models/pump/pump.ts';
import { acceptedKey, answeredKey } from '../../fields/key-field.ts';
import { LIST_MAX } from '../../fields/limits.ts';
import { listSchema } from '../../fields/list-schema.ts';
import { enteredMoney } from '../../fields/money.ts';
import { numberField, wholeNumber } from '../../fields/number-field.ts';
import { acceptedCautions, acceptedFields, recordFields } from '../../fields/record-fields.ts';
import { nameField } from '../../fields/text-field.ts';
import { unitsField } from '../../units/answer-units.ts';
import { described, named } from '../../units/described.ts';
import { entered } from '../../units/entered.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import { entryCautions } from '../entry-cautions.ts';
import { headPoint, npshPoint, powerPoint, speedPoint } from './points-schema.ts';
import { settings } from './settings-schema.ts';

const flowLimits = perContext((context) =>
  named(
    context,
    'FlowLimits',
    z
      .strictObject({
        min: entered(context, 'flow', {
          description: 'The least flow that the pump bears for long, at full speed.',
          minimum: 0,
          maximum: 10,
          example: 1500,
        }).optional(),
        max: entered(context, 'flow', {
          description: 'The greatest flow that the pump bears for long, at full speed.',
          minimum: 0,
          maximum: 10,
          example: 14_000,
        }).optional(),
      })
      .refine(({ min, max }) => min === undefined || max === undefined || min < max, {
        path: ['max'],
        message: 'must be above min',
      }),
  ),
);

export const failures = perContext((context) =>
  named(
    context,
    'Failures',
    z.strictObject({
      count: wholeNumber(context, {
        description: 'How many of the devices failed.',
        minimum: 0,
        maximum: 1e6,
        example: 2,
      }),
      devices: wholeNumber(context, {
        description: 'How many devices were watched.',
        minimum: 1,
        maximum: 1e6,
        example: 10,
      }),
      years: numberField(context, {
        description: 'For how many years each.',
        minimum: 0.01,
        maximum: 100,
        example: 3,
      }),
    }),
  ),
);

const service = perContext((context) =>
  named(
    context,
    'Service',
    z.strictObject({
      everyMonths: numberField(context, {
        description: 'The months between two services.',
        minimum: 0.1,
        maximum: 1200,
        example: 6,
      }),
      minutes: numberField(context, {
        description: 'The minutes that a service takes.',
        minimum: 0,
        maximum: 1e5,
        example: 45,
      }),
      parts: enteredMoney(context, {
        description: "What the parts of a service cost, in the site's currency.",
        example: 20,
      }),
    }),
  ),
);

const points = (context: SchemaContext) => ({
  headPoints: described(context, z.array(headPoint(context)).min(1).max(LIST_MAX), {
    description:
      'Points of the head curve: three or more distinct flows at full speed, or two of which one is 0.',
  }),
  powerPoints: described(context, z.array(powerPoint(context)).min(1).max(LIST_MAX), {
    description: 'Points of the electrical power.',
  }),
  settings: settings(context),
  speedMap: described(context, z.array(speedPoint(context)).min(1).max(LIST_MAX), {
    description:
      'The true speed at settings, rising strictly and spanning them; without it the setting is the speed.',
  }).optional(),
  npshPoints: described(context, z.array(npshPoint(context)).min(1).max(LIST_MAX), {
    description: 'Points of the required NPSH, at full speed.',
  }).optional(),
});

const pumpFields = (context: SchemaContext) => ({
  name: nameField(context, {
    description: 'A name, 1 to 120 characters, not unique.',
    example: 'Canister 250',
  }),
  ratedSpeed: numberField(context, {
    description: 'The rated speed in revolutions a minute, for information.',
    minimum: 1,
    maximum: 100_000,
    example: 3000,
  }).optional(),
  ...points(context),
  standbyPower: entered(context, 'power', {
    description: 'The electrical power at rest.',
    minimum: 0,
    maximum: 1e6,
    example: 3,
    default: 0,
  }),
  ratedPower: entered(context, 'power', {
    description: 'The most electrical power that one pump may draw for long, as its plate states it.',
    minimum: 0,
    aboveMinimum: true,
    maximum: 1e6,
    example: 300,
  }).optional(),
  flowLimits: flowLimits(context).optional(),
  grade: described(context, z.enum(['1B', '1E', '1U', '2B', '2U', '3B']), {
    description: 'The acceptance grade of ISO 9906 that the curves keep.',
    examples: ['2B'],
  }).optional(),
  mounting: described(context, z.enum(['dry', 'submerged']), {
    description: 'Whether the pump stands beside the water or in it.',
    examples: ['dry'],
  }).optional(),
  motorEfficiency: numberField(context, {
    description:
      'The fraction of the power that reaches the shaft; 0.8 is assumed for a dry pump without it.',
    minimum: 0.01,
    maximum: 1,
    example: 0.8,
  }).optional(),
  price: enteredMoney(context, {
    description: "What the pump costs, in the site's currency.",
    example: 780,
  }).optional(),
  expectedLifeYears: numberField(context, {
    description: 'The years that the pump is expected to serve.',
    minimum: 0.1,
    maximum: 100,
    example: 8,
  }).optional(),
  failures: failures(context).optional(),
  service: service(context).optional(),
});

/** A pump as it is entered. */
export const pumpInput = perContext(
  (context): z.ZodType<Pump> =>
    named(
      context,
      'Pump',
      z.strictObject({
        ...pumpFields(context),
        ...acceptedFields(context),
        ...acceptedCautions(context),
        ...acceptedKey(context),
      }),
      {
        description: 'A pump as its user enters it.',
      },
    ),
);

const pumpShape = (context: SchemaContext) => ({
  ...recordFields(context),
  ...answeredKey(context),
  ...pumpFields(context),
});

/** A stored pump in a list. */
export const pumpItem = perContext((context) =>
  named(context, 'PumpItem', z.strictObject(pumpShape(context)), { description: 'A stored pump in a list.' }),
);

/** A stored pump. */
export const pumpAnswer = perContext((context) =>
  named(
    context,
    'Pump',
    z.strictObject({
      ...pumpShape(context),
      cautions: entryCautions(context).optional(),
      units: unitsField(context),
    }),
    {
      description: 'A stored pump.',
    },
  ),
);

export const pumpList = perContext((context) => listSchema(context, 'PumpList', pumpItem(context)));
