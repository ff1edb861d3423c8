/** Documents what a loop still gets when one of its parallel pumps is stopped. */
import { z } from '@hono/zod-openapi';
import { nullable } from '../../fields/nullable.ts';
import { computed, computedNumber } from '../../units/computed.ts';
import { described } from '../../units/described.ts';
import type { SchemaContext } from '../../units/schema-context.ts';

const outletSchema = (context: SchemaContext) =>
  z.strictObject({
    name: described(context, z.string(), { description: 'Name of the outlet.', examples: ['far end'] }),
    flow: computed(context, 'flow', { description: 'What it still gets.', example: 2210 }),
    requiredFlow: nullable(
      computed(context, 'flow', {
        description: 'What it needs; null where nothing is required.',
        example: 3000,
      }),
    ),
    margin: nullable(
      computedNumber(context, {
        description: 'flow/requiredFlow - 1; null without a requirement above 0.',
        example: -0.263,
      }),
    ),
  });

const schema = (context: SchemaContext) =>
  z.strictObject({
    checkValves: described(context, z.boolean(), {
      description:
        'Whether each pump has a check valve, as the installed pump of the loop states; taken to where it does not.',
      examples: [true],
    }),
    served: described(context, z.boolean(), {
      description: 'Whether every outlet still gets what it needs.',
      examples: [false],
    }),
    flow: computed(context, 'flow', { description: 'What reaches the outlets together.', example: 5400 }),
    backflow: computed(context, 'flow', {
      description: 'What runs back through the pump that stands still; 0 with check valves.',
      example: 0,
    }),
    power: computed(context, 'power', {
      description: 'Electrical power of the pumps that still run.',
      example: 88,
    }),
    outlets: described(context, z.array(outletSchema(context)), { description: 'What each outlet gets.' }),
  });

/** Null for a single pump, or one that moves nothing. */
export const onePumpDownField = (context: SchemaContext) =>
  described(context, nullable(schema(context)), {
    description:
      'The same setting with one of the pumps at rest; null for a single pump, or where none moves water. Without check valves the idle pump passes water backwards, H = k Q^2 through the point of its own curve with the greatest hydraulic power (common practice).',
    examples: [null],
  });
