/** Documents a priced duty: the object of `best`, of a ranking and of a duty point. */

import { z } from '@hono/zod-openapi';
import { cautionSchema } from '../../fields/caution.ts';
import { nullable } from '../../fields/nullable.ts';
import { settingField } from '../../fields/setting-field.ts';
import { pumpRefSchema } from '../../records/pump/reference.ts';
import { computed, computedNumber } from '../../units/computed.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';
import { onePumpDownField } from './one-pump-down-schema.ts';
import { suctionShape } from './suction-schema.ts';
import { reachField, surroundingsShape } from './surroundings-schema.ts';
import { uncertaintyField } from './uncertainty-schema.ts';

const outletSchema = (context: SchemaContext) =>
  z.strictObject({
    name: described(context, z.string(), { description: 'Name of the outlet.', examples: ['far end'] }),
    flow: computed(context, 'flow', { description: 'What it gets; negative: backwards.', example: 3028.46 }),
    requiredFlow: nullable(
      computed(context, 'flow', {
        description: 'What it needs, the flow for a stated reach included; null where nothing is required.',
        example: 3000,
      }),
    ),
    margin: nullable(
      computedNumber(context, {
        description: 'flow/requiredFlow - 1; null without a requirement above 0.',
        example: 0.00948667,
      }),
    ),
    velocity: nullable(
      computed(context, 'velocity', {
        description: 'Mean velocity of the leaving stream; null where no nozzle or pipe is known.',
        example: 4.76048,
      }),
    ),
    reach: reachField(context),
  });

const trimSchema = (context: SchemaContext) =>
  z.strictObject({
    branch: described(context, z.string(), {
      description: 'The branch that is throttled, as a JSON pointer into the loop.',
      examples: ['/discharge/branches/1'],
    }),
    outlets: described(context, z.array(z.string()), {
      description: 'The outlets that it feeds.',
      examples: [['left', 'right']],
    }),
    closed: described(context, z.boolean(), {
      description: 'Shut altogether, because nothing beyond it requires a flow.',
      examples: [false],
    }),
    flow: computed(context, 'flow', { description: 'Flow at which the trim is set.', example: 4000 }),
    head: nullable(
      computed(context, 'head', {
        description: 'Head to take away there; null where it is closed.',
        example: 0.312,
      }),
    ),
    lossCoefficient: nullable(
      computedNumber(context, { description: 'K on `diameter`; null without a bore.', example: 4.21 }),
    ),
    diameter: nullable(
      computed(context, 'diameter', {
        description: 'Bore that K refers to; null where none is known.',
        example: 37.49,
      }),
    ),
    kv: nullable(computedNumber(context, { description: 'Kv of the trim, m3/h at 1 bar.', example: 22.9 })),
    valve: described(context, nullable(z.string()), {
      description:
        'The valve of the branch that can make the trim, as a JSON pointer into the loop; null where it has none of known characteristic.',
      examples: ['/discharge/branches/1/run/1'],
    }),
    opening: nullable(
      computedNumber(context, {
        description:
          'What to set that valve to, for the trim and what the valve loses already [%]; 0 shuts it.',
        example: 58.4,
      }),
    ),
  });

const perPumpSchema = (context: SchemaContext) =>
  z.strictObject({
    flow: computed(context, 'flow', { description: 'Flow of one of the pumps.', example: 7533.14 }),
    power: computed(context, 'power', { description: 'Power of one of the pumps.', example: 85.7042 }),
  });

/** The fields of a priced duty, for schemas that add to them. */
export const dutyShape = (context: SchemaContext) => ({
  candidate: described(context, z.int(), {
    description: 'Place of the candidate in the request, from 0.',
    examples: [0],
  }),
  pump: pumpRefSchema(context),
  count: described(context, z.int(), { description: 'Equal pumps in parallel.', examples: [1] }),
  setting: settingField(context, 'What to dial on the controller [% of full].', 70),
  speed: computedNumber(context, { description: 'True speed at that setting [% of full].', example: 70 }),
  flow: computed(context, 'flow', { description: 'Total flow.', example: 7533.14 }),
  head: computed(context, 'head', { description: 'Head of the pump at the duty.', example: 1.5714 }),
  power: computed(context, 'power', {
    description: 'Electrical power of all its pumps, standby included.',
    example: 85.7042,
  }),
  efficiency: computedNumber(context, {
    description: 'Wire to water: rho g Q H / P, a fraction.',
    example: 0.385034,
  }),
  turnover: nullable(
    computedNumber(context, {
      description: 'Total flow over the volume of the tank, per hour; null without a volume.',
      example: 3.13881,
    }),
  ),
  annualEnergy: computed(context, 'energy', { description: 'Energy of a year.', example: 750.769 }),
  annualCost: nullable(
    computedNumber(context, {
      description: 'Cost of that energy in the currency; null without a price.',
      example: 157.661,
    }),
  ),
  lifeCycleCost: nullable(
    computedNumber(context, {
      description:
        'Present value of purchase, energy, service and repairs in the currency; null unless a recommendation is asked for `life-cycle-cost`.',
      example: 2480,
    }),
  ),
  limitingOutlet: described(context, nullable(z.string()), {
    description: 'The outlet with the least margin; null where none requires a flow.',
    examples: ['far end'],
  }),
  outlets: described(context, z.array(outletSchema(context)), { description: 'What each outlet gets.' }),
  trims: described(context, z.array(trimSchema(context)), {
    description: 'The throttling that `trimmed` supposes; empty as built.',
  }),
  perPump: perPumpSchema(context),
  onePumpDown: onePumpDownField(context),
  uncertainty: uncertaintyField(context),
  ...suctionShape(context),
  ...surroundingsShape(context),
  cautions: described(context, z.array(cautionSchema(context)), {
    description: 'What to know about this duty.',
  }),
});

export const dutySchema = perContext((context) =>
  named(context, 'Duty', z.strictObject(dutyShape(context)), {
    description: 'A pump at its duty on a loop, with what it costs a year.',
  }),
);
