/** States what a calibration multiplies: the friction of a loop, the head curve and the power of its pump. */

/** What friction, head and power are multiplied by. */
export interface Factors {
  /** [-] above 0. */
  readonly friction: number;
  /** [-] above 0. */
  readonly head: number;
  /** [-] above 0. */
  readonly power: number;
}

export type FactorName = keyof Factors;

export const AS_ENTERED: Factors = { friction: 1, head: 1, power: 1 };

/** `frictionOverHead`: friction with the head of the pump held as entered, where the readings do not separate the two. */
export type ParameterName = FactorName | 'frictionOverHead';

const FACTOR_OF = {
  friction: 'friction',
  head: 'head',
  power: 'power',
  frictionOverHead: 'friction',
} as const satisfies Record<ParameterName, FactorName>;

/** The factor that a parameter changes. */
export const factorOf = (name: ParameterName): FactorName => FACTOR_OF[name];

/**
 * The factors of some parameters by their values [-], in one order; a factor that no parameter changes is as
 * entered.
 */
export function factorsOf(names: readonly ParameterName[], values: readonly number[]): Factors {
  const told = (factor: FactorName): number => {
    const index = names.findIndex((name) => factorOf(name) === factor);
    return index < 0 ? AS_ENTERED[factor] : (values[index] ?? Number.NaN);
  };
  return { friction: told('friction'), head: told('head'), power: told('power') };
}
