/** Finds the loss of a fitting or valve that a table names. */

import { GRAVITY } from '../physics/gravity.ts';
import { turbulenceFactor } from '../physics/turbulence-factor.ts';
import { INCH } from '../physics/unit-factors.ts';
import { kLoss, type Resistance, resistanceOf } from './resistance.ts';
import type { Role } from './role.ts';

interface NamedLossCommon {
  readonly name: string;
  readonly kind: 'fitting' | 'valve';
  readonly role: Role;
  readonly description: string;
  readonly source: string;
  readonly fromMemory: boolean;
}

/**
 * A row of the table; a valve's row is that of the valve fully open. All values are dimensionless [-].
 *
 * `equivalent-diameters`: K = value x fT of the bore. `fixed-k`: K = value.
 * `two-k`: K = laminarValue/Re + value (1 + 1 in/D).
 * `three-k`: K = laminarValue/Re + value (1 + sizeValue/(D/1 in)^0.3), made for nominal sizes, for which the bore is
 * taken.
 */
export type NamedLoss = NamedLossCommon &
  (
    | { readonly method: 'equivalent-diameters'; readonly value: number }
    | { readonly method: 'fixed-k'; readonly value: number }
    | { readonly method: 'two-k'; readonly value: number; readonly laminarValue: number }
    | {
        readonly method: 'three-k';
        readonly value: number;
        readonly laminarValue: number;
        readonly sizeValue: number;
      }
  );

/** Where a fitting or valve is built in. */
export interface NamedLossSite {
  /** Bore that the velocity is taken in [m], above 0. */
  readonly diameter: number;
  /** Of the water [m2/s], above 0. */
  readonly kinematicViscosity: number;
}

const SIZE_POWER = 0.3;

/**
 * Resistance of one piece of a row; for a valve's row, fully open.
 *
 * @param site bore [m] and kinematic viscosity [m2/s], both above 0.
 * Source: each row of the tables; Hooper 1981 (two K) and Silverberg and Darby 1999 (three K) for the parts that
 *   follow Reynolds number.
 */
export function fittingResistance(row: NamedLoss, site: NamedLossSite): Resistance {
  switch (row.method) {
    case 'equivalent-diameters':
    case 'fixed-k':
      return kLoss({
        lossCoefficient: turbulentLossCoefficient(row, site.diameter),
        diameter: site.diameter,
      });
    case 'two-k':
    case 'three-k':
      return lossByReynolds(row.laminarValue, row, site);
  }
}

/** K [-] of a row at a bore [m] above 0 in turbulent flow, where it no longer depends on Reynolds number. */
export function turbulentLossCoefficient(row: NamedLoss, diameter: number): number {
  switch (row.method) {
    case 'equivalent-diameters':
      return row.value * turbulenceFactor(diameter);
    case 'fixed-k':
      return row.value;
    case 'two-k':
      return row.value * (1 + INCH / diameter);
    case 'three-k':
      return row.value * (1 + row.sizeValue / (diameter / INCH) ** SIZE_POWER);
  }
}

/** K1/Re makes a loss that is linear in flow: K1 nu V/(2 g D), V = 4 Q/(pi D^2). */
function lossByReynolds(laminarValue: number, row: NamedLoss, site: NamedLossSite): Resistance {
  const { diameter, kinematicViscosity } = site;
  const linear = (4 * laminarValue * kinematicViscosity) / (2 * GRAVITY * Math.PI * diameter ** 3);
  const turbulent = kLoss({ lossCoefficient: turbulentLossCoefficient(row, diameter), diameter });
  return resistanceOf({ ...turbulent.terms, linear });
}
