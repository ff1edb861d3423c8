/** What a calibration multiplies: the friction of a loop, the head curve and the power of its pump. */

export interface Factors {
  readonly friction: number;
  readonly head: number;
  readonly power: number;
}

export type FactorName = keyof Factors;

export const AS_ENTERED: Factors = { friction: 1, head: 1, power: 1 };

/** `frictionOverHead`: friction with the head of the pump held as entered, where the two are not told apart. */
export type ParameterName = FactorName | 'frictionOverHead';

const FACTOR_OF = {
  friction: 'friction',
  head: 'head',
  power: 'power',
  frictionOverHead: 'friction',
} as const satisfies Record<ParameterName, FactorName>;

export const factorOf = (name: ParameterName): FactorName => FACTOR_OF[name];

/** The factors that parameters stand for; what none stands for is as entered. */
export function factorsOf(names: readonly ParameterName[], values: readonly number[]): Factors {
  const told = (factor: FactorName): number => {
    const index = names.findIndex((name) => factorOf(name) === factor);
    return index < 0 ? AS_ENTERED[factor] : (values[index] ?? Number.NaN);
  };
  return { friction: told('friction'), head: told('head'), power: told('power') };
}
