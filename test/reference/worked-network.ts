/**
 * The shape of a published network example, stated as pipework of a loop.
 *
 * A pipe with a fixed Darcy f is a loss coefficient f L/D on its bore, so viscosity does not enter. The books take
 * g = 9.81 (or 32.2 ft/s2) where the service takes 9.80665: at a given head that moves a flow by under 0.03 %.
 * A reservoir at the far end of a pipe is an outlet at its own static head, its exit loss 0 where the book neglects it.
 */
import type { Branch, PipeworkLoop, RunElement } from '../../models/loop/loop.ts';
import type { HeadPoint } from '../../models/pump/pump.ts';

/** What drives the network: a head [m] or total flow [m3/s], or a pump by its law. */
export type Drive =
  | { readonly head: number }
  | { readonly totalFlow: number }
  /** H = sum c_i Q^i, lowest power first. */
  | { readonly headPolynomial: readonly number[] }
  /** rho g Q H [W]. */
  | { readonly hydraulicPower: number; readonly density: number }
  | { readonly headPoints: readonly HeadPoint[] };

export type Quantity = 'flow' | 'head' | { readonly outlet: string };

export interface WorkedNetwork {
  readonly title: string;
  readonly source: string;
  /** m2/s; where only loss coefficients occur any value serves. */
  readonly kinematicViscosity: number;
  readonly pipework: Pick<
    PipeworkLoop,
    'staticHead' | 'suction' | 'discharge' | 'frictionMultiplier' | 'intake'
  >;
  readonly drive: Drive;
  /** Relative tolerances. */
  readonly expected: readonly {
    readonly quantity: Quantity;
    readonly value: number;
    readonly tolerance: number;
    readonly why?: string;
  }[];
}

export const ANY_VISCOSITY = 1e-6;

/** A pipe of fixed Darcy friction factor as the loss coefficient f L/D, with other coefficients in the same bore. */
export function fixed(friction: number, length: number, diameter: number, others = 0): RunElement {
  return { lossCoefficient: (friction * length) / diameter + others, diameter };
}

/** A reservoir as an outlet; the bore of its exit is immaterial without an exit loss. */
export const reservoir = (name: string, staticHead: number, run: readonly RunElement[]): Branch => ({
  run,
  outlet: { name, staticHead, exit: 'submerged', lossCoefficient: 0, nozzleDiameter: 1 },
});

export const plain = { staticHead: 0, suction: [], frictionMultiplier: 1 };

export const pipe = (insideDiameter: number, length: number, roughness: number): RunElement => ({
  pipe: { insideDiameter, roughness },
  length,
});
