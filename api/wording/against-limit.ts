/** Writes a figure beside the one that it is compared with. */
import { encodeNumber, unitInForce } from '../units/convert.ts';
import type { Quantity } from '../units/table.ts';
import type { UnitSystem } from '../units/unit-system.ts';
import { sayNumber } from './numbers-in-words.ts';

/** Digits of a figure, and as many more as separate it from the other. */
const DIGITS = { least: 3, most: 6 } as const;

/** Digits of a figure that someone entered; one that a change of unit made has more. */
const ENTERED_DIGITS = 5;

/** Relative error of a change of unit and back. */
const ROUNDING = 1e-9;

const isAsEntered = (figure: number): boolean =>
  Math.abs(Number(figure.toPrecision(ENTERED_DIGITS)) - figure) <= ROUNDING * Math.abs(figure);

/** Digits of a share, which has one decimal at most. */
const SHARE_DIGITS = 2;

/** The digits [-] at which two figures differ in writing. */
function digitsApart(a: number, b: number): number {
  for (let digits: number = DIGITS.least; digits < DIGITS.most; digits++) {
    if (Number(a.toPrecision(digits)) !== Number(b.toPrecision(digits))) return digits;
  }
  return DIGITS.most;
}

/**
 * A figure in SI, and a stated one, in the unit of the system: `2980 L/h`, `3000 L/h`. The stated one is written as it
 * was entered; in units other than those it was entered in, with the digits of the figure.
 */
export function sayAgainst(
  { value, stated }: { readonly value: number; readonly stated: number },
  quantity: Quantity,
  system: UnitSystem,
): { readonly value: string; readonly stated: string } {
  const [a, b] = [encodeNumber(value, quantity, system), encodeNumber(stated, quantity, system)];
  const unit = unitInForce(quantity, system);
  const digits = digitsApart(a, b);
  return {
    value: `${sayNumber(a, digits)} ${unit}`,
    stated: `${sayNumber(b, isAsEntered(b) ? DIGITS.most : digits)} ${unit}`,
  };
}

/** A share with its sign: `-7.7 %`, `+12 %`. */
export function saySignedPercent(share: number): string {
  const percent = Number((100 * share).toPrecision(SHARE_DIGITS)).toFixed(1);
  return `${share < 0 ? '' : '+'}${percent.replace(/\.0$/, '')} %`;
}
