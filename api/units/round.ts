/** Rounds numbers as they leave: free of rounding noise, or with six significant digits. */

const COMPUTED_DIGITS = 6;
// Two conversions cost a few units in the sixteenth digit; entries are given back within 1e-9.
const ENTERED_DIGITS = 12;
// So many that twelve of them are right in the other system too, and that reading and writing them again changes none.
const EXACT_DIGITS = 15;

const rounded = (value: number, digits: number): number => {
  const result = Number(value.toPrecision(digits));
  return result === 0 ? 0 : result;
};

export const roundComputed = (value: number): number => rounded(value, COMPUTED_DIGITS);

export const roundEntered = (value: number): number => rounded(value, ENTERED_DIGITS);

export const roundExact = (value: number): number => rounded(value, EXACT_DIGITS);
