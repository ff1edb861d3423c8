/** Names what a schema must know to read and write numbers. */
import { waterProperties } from '../../models/physics/water.ts';
import type { UnitSystem } from './unit-system.ts';

export interface SchemaContext {
  readonly system: UnitSystem;
  /** Of the loop's water [kg/m3], for heads given in a unit of pressure. */
  readonly density: number;
  /** `request`: numbers or strings come in, defaults are filled in. `answer`: numbers go out, defaults are there. */
  readonly side: 'request' | 'answer';
  /** Whether entered numbers leave so exact that the other system shows them unchanged after a way back. */
  readonly exact: boolean;
  /** Whether this is the instance that the OpenAPI document shows. */
  readonly documented: boolean;
}

/** The water where a document states none: 25 degC, 35 g/kg. */
export const DEFAULT_WATER = { temperature: 25, salinity: 35 } as const;

export const DEFAULT_DENSITY = waterProperties(DEFAULT_WATER).density;

export const schemaContext = (parts: {
  system: UnitSystem;
  side: 'request' | 'answer';
  density?: number;
  exact?: boolean;
}): SchemaContext => {
  const density = parts.density ?? DEFAULT_DENSITY;
  return {
    system: parts.system,
    side: parts.side,
    density,
    exact: parts.exact ?? false,
    documented: false,
  };
};

/** The context of the instances that the OpenAPI document shows. */
export const documentedContext = (side: SchemaContext['side']): SchemaContext => ({
  ...schemaContext({ system: 'metric', side }),
  documented: true,
});
