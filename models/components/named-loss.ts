/** The loss of a fitting or valve that a table names. */

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
 * A row of the table; a valve's row is that of the valve fully open.
 *
 * `equivalent-diameters`: K = value x fT of the bore. `fixed-k`: K = value.
 * `two-k`: K = laminarValue/Re + value (1 + 1 in/D).
 * `three-k`: K = laminarValue/Re + value (1 + sizeValue/(D/1 in)^0.3), made for nominal sizes: the bore stands for them.
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

/** Bore [m] that the velocity is taken in; kinematic viscosity [m2/s] of the water. */
export interface NamedLossSite {
  readonly diameter: number;
  readonly kinematicViscosity: number;
}

const SIZE_POWER = 0.3;

/** Resistance of one piece of a row at a bore; for a valve's row, fully open. */
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

/** K [-] of a row at a bore [m] in turbulent flow, where it no longer depends on Reynolds number. */
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
