/** Evaluates a sum of powers, y = sum c_p x^p, on 0 <= x <= 1: its value, its slope, its shape. */

/** Either at most two powers besides the constant, or 1, 2 and 3: the shapes whose turning points have a closed form. */
export interface PowerSum {
  /** Whole, ascending [-]. */
  readonly powers: readonly number[];
  /** One a power [unit of y]. */
  readonly coefficients: readonly number[];
}

/** The value y = sum c_p x^p [unit of y] at an x [-]. */
export function powerSumAt({ powers, coefficients }: PowerSum, x: number): number {
  let total = 0;
  for (let index = 0; index < powers.length; index += 1) {
    total += (coefficients[index] ?? 0) * wholePower(x, powers[index] ?? 0);
  }
  return total;
}

/** The slope dy/dx = sum p c_p x^(p-1) [unit of y] at an x [-]. */
export function powerSumSlopeAt({ powers, coefficients }: PowerSum, x: number): number {
  let total = 0;
  for (let index = 0; index < powers.length; index += 1) {
    const power = powers[index] ?? 0;
    if (power !== 0) total += power * (coefficients[index] ?? 0) * wholePower(x, power - 1);
  }
  return total;
}

/** x^p for a whole p of 0 or more, by multiplication: several times faster than the general power. */
function wholePower(x: number, power: number): number {
  let product = 1;
  for (let factor = 0; factor < power; factor += 1) product *= x;
  return product;
}

/** The x [-] between 0 and 1 at which the slope changes sign, ascending, in closed form. */
export const turningPoints = (sum: PowerSum): readonly number[] => signChanges(derivative(sum));

/** The greatest slope [unit of y] anywhere in 0 <= x <= 1: at an end, or where the second derivative changes sign. */
export const greatestSlope = (sum: PowerSum): number =>
  Math.max(...[0, 1, ...signChanges(derivative(derivative(sum)))].map((x) => powerSumSlopeAt(sum, x)));

function derivative({ powers, coefficients }: PowerSum): PowerSum {
  const terms = powers.flatMap((power, index) =>
    power === 0 ? [] : [{ power: power - 1, coefficient: power * (coefficients[index] ?? 0) }],
  );
  return { powers: terms.map((term) => term.power), coefficients: terms.map((term) => term.coefficient) };
}

/** Where a sum of two powers, or of three consecutive ones, changes sign between 0 and 1. */
function signChanges({ powers, coefficients }: PowerSum): readonly number[] {
  const [p = 0, q = 0] = powers;
  const [a = 0, b = 0, c = 0] = coefficients;
  const roots = powers.length === 3 ? quadraticRoots({ a: c, b, c: a }) : [(-a / b) ** (1 / (q - p))];
  return powers.length < 2
    ? []
    : roots.filter((x) => x > 0 && x < 1).toSorted((first, second) => first - second);
}

/** Real roots of a x^2 + b x + c that are not double, without cancellation; those of a line when a is 0. */
function quadraticRoots({ a, b, c }: { a: number; b: number; c: number }): readonly number[] {
  const discriminant = b ** 2 - 4 * a * c;
  if (discriminant <= 0) return [];
  const half = -(b + (b < 0 ? -1 : 1) * Math.sqrt(discriminant)) / 2;
  return [half / a, c / half];
}
