/** Documents the figures of one design: a pump at a setting with its pipework, and what they cost. */
import { z } from '@hono/zod-openapi';
import { money } from '../../fields/money.ts';
import { settingField } from '../../fields/setting-field.ts';
import { pumpRefSchema } from '../../records/pump/reference.ts';
import { computed } from '../../units/computed.ts';
import { described, named } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';

/** Whose design it is. */
export const pumpsShape = (context: SchemaContext) => ({
  candidate: described(context, z.int(), { description: 'Position in the request, from 0.', examples: [0] }),
  pump: pumpRefSchema(context),
  count: described(context, z.int(), { description: 'Equal pumps in parallel.', examples: [1] }),
});

export const rowShape = (context: SchemaContext) => ({
  ...pumpsShape(context),
  setting: settingField(context, 'Setting of the pump [%].', 61),
  flow: computed(context, 'flow', { description: 'Sum of the required flows.', example: 4500 }),
  requiredHead: computed(context, 'head', {
    description: 'Head that the pipework requires at these flows, before the trim at the pump.',
    example: 0.322281,
  }),
  head: computed(context, 'head', { description: 'Head that the pump gives.', example: 0.33428 }),
  power: computed(context, 'power', { description: 'Electrical power.', example: 19.2934 }),
  annualEnergy: computed(context, 'energy', { description: 'Energy of a year.', example: 169.01 }),
  annualCost: money(context, 'Cost of that energy at the price of the first year.', 50.7),
  presentValue: money(context, 'Present value of the whole cost: pump, energy, pipes and trims.', 823.12),
  pumpCost: money(context, 'Present value of buying and keeping the pumps.', 294.09),
  energyCost: money(context, 'Present value of the energy of all years.', 388.62),
  pipeCost: money(context, 'Of all pipes whose size was chosen.', 95.4),
  trimCost: money(context, 'Of the trim valves.', 45),
});

export const rowSchema = perContext((context) =>
  named(context, 'DesignRow', z.strictObject(rowShape(context)), {
    description: 'The best design of one candidate.',
  }),
);
