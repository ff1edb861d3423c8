/** Finds the friction of a straight round pipe. */
import { GRAVITY } from '../physics/gravity.ts';
import { reynoldsNumber } from '../physics/reynolds-number.ts';
import { type Resistance, resistanceOf } from './resistance.ts';

/** A pipe and the water in it. */
export interface StraightPipe {
  /** Bore [m], above 0. */
  readonly diameter: number;
  /** [m] of 0 or more. */
  readonly length: number;
  /** Absolute [m], 0 up to the bore. */
  readonly roughness: number;
  /** [m2/s] above 0. */
  readonly kinematicViscosity: number;
}

/**
 * The friction loss of a pipe by Darcy-Weisbach, h = f (L/D) V|V|/(2g), f by `darcyFriction`.
 *
 * @param pipe diameter above 0, length at or above 0, roughness 0 up to the diameter, kinematicViscosity above 0.
 * @returns the head lost [m], odd and rising in flow, with a continuous slope; in laminar flow, zero flow included,
 *   the line h = 128 nu L Q/(pi g D^4) of Hagen-Poiseuille itself.
 * Accuracy: that of `darcyFriction`; slope against a finite difference in test/models/components/pipe-friction.test.ts.
 * Source: any hydraulics text, for instance Massey and Ward-Smith, Mechanics of Fluids, chapter 7.
 */
export function pipeFriction(pipe: StraightPipe): Resistance {
  const { diameter, length, roughness, kinematicViscosity } = pipe;
  const area = (Math.PI / 4) * diameter ** 2;
  const friction = {
    reynoldsPerFlow: reynoldsNumber({ flow: 1, diameter, kinematicViscosity }),
    relativeRoughness: roughness / diameter,
    perFactor: length / (2 * GRAVITY * diameter * area * area),
    laminarSlope: (128 * kinematicViscosity * length) / (Math.PI * GRAVITY * diameter ** 4),
  };
  return resistanceOf({ linear: 0, quadratic: 0, frictions: [friction] });
}
