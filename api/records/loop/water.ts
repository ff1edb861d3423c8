/** Documents the water of a loop. */
import { z } from '@hono/zod-openapi';
import { waterProperties } from '../../../models/physics/water.ts';
import { described, named } from '../../units/described.ts';
import { entered } from '../../units/entered.ts';
import { perContext } from '../../units/per-context.ts';
import { DEFAULT_DENSITY, DEFAULT_WATER, schemaContext } from '../../units/schema-context.ts';
import type { UnitSystem } from '../../units/unit-system.ts';

const waterState = perContext((context) =>
  named(
    context,
    'Water',
    z.strictObject({
      temperature: entered(context, 'temperature', {
        description: 'Its temperature.',
        minimum: 0,
        maximum: 45,
        example: DEFAULT_WATER.temperature,
        default: DEFAULT_WATER.temperature,
      }),
      salinity: entered(context, 'salinity', {
        description: 'Its salinity.',
        minimum: 0,
        maximum: 60,
        example: DEFAULT_WATER.salinity,
        default: DEFAULT_WATER.salinity,
      }),
    }),
    { description: 'The water that goes round.' },
  ),
);

/** In a request it may be left out, wholly or by its members. */
export const water = perContext((context) =>
  context.side === 'answer'
    ? waterState(context)
    : described(context, waterState(context).default(DEFAULT_WATER), {
        description: 'The water that goes round; 25 degC and 35 g/kg without it.',
      }),
);

/** The density of the water that a loop states before the loop is read; the default's where it states none that is valid. */
export function statedDensity(raw: unknown, { system }: { readonly system: UnitSystem }): number {
  const stated = typeof raw === 'object' && raw !== null && 'water' in raw ? raw.water : undefined;
  const read = water(schemaContext({ system, side: 'request' })).safeParse(stated);
  return read.success ? waterProperties(read.data).density : DEFAULT_DENSITY;
}
