/** Finds the outflow through a sharp-edged opening under a falling surface. */
import { GRAVITY } from '../physics/gravity.ts';

/** A sharp-edged opening. */
export interface Orifice {
  /** Cd [-] above 0, at most 1. */
  readonly dischargeCoefficient: number;
  /** Of the opening [m2], above 0. */
  readonly area: number;
}

/** Outflow [m3/s] under a head h [m] of 0 or more, by Torricelli's law: Q = Cd a sqrt(2 g h). */
export function orificeFlow({ dischargeCoefficient, area }: Orifice, head: number): number {
  return dischargeCoefficient * area * Math.sqrt(2 * GRAVITY * head);
}

/**
 * Time [s] in which a surface falls, t = 2 A (sqrt h1 - sqrt h2)/(Cd a sqrt(2 g)), at every instant with the outflow of a
 * steady one; the opening small against the surface.
 *
 * @param fall surface area A [m2], heads over the opening at the start and at the end [m], from >= to >= 0, from above 0.
 * Source: any textbook of hydraulics; examples in test/reference/drains.ts.
 */
export function drainTime(
  { dischargeCoefficient, area }: Orifice,
  fall: { readonly surface: number; readonly from: number; readonly to: number },
): number {
  const perRoot = (2 * fall.surface) / (dischargeCoefficient * area * Math.sqrt(2 * GRAVITY));
  // A difference of roots loses digits where a pipe breaks far below a shallow tank.
  return (perRoot * (fall.from - fall.to)) / (Math.sqrt(fall.from) + Math.sqrt(fall.to));
}
