/** Documents how money of several years is made comparable. */
import type { NumberField } from './number-field.ts';

export const YEARS_MAX = 100;

const RATE = { minimum: -1, aboveMinimum: true, maximum: 10 } as const;

export const YEARS = {
  description: 'Years that costs are looked at for.',
  minimum: 1,
  maximum: YEARS_MAX,
  example: 10,
} as const satisfies NumberField;

export const DISCOUNT_RATE = {
  ...RATE,
  description: 'What money earns elsewhere, a fraction a year.',
  example: 0.04,
} as const satisfies NumberField;

export const INFLATION = {
  ...RATE,
  description: 'By what prices other than of energy rise, a fraction a year.',
  example: 0.02,
} as const satisfies NumberField;

export const ENERGY_INFLATION = {
  ...RATE,
  description: 'By what the price of energy rises, a fraction a year; as other prices where it is left out.',
  example: 0.03,
} as const satisfies NumberField;

export const LABOUR_RATE = {
  description: "Money an hour of work; the site's where it is left out, else 0.",
  minimum: 0,
  maximum: 100_000,
  example: 30,
} as const satisfies NumberField;
