/** Limits how far rates may carry money away from what it is today. */
import type { z } from '@hono/zod-openapi';
import { SENSITIVITY_CHANGE } from '../../models/money/sensitivity.ts';

/** A million million times: beyond it sums of money are no numbers that anybody could act on. */
const GROWTH_MAX = 1e12;

interface Rates {
  readonly years: number;
  readonly discountRate: number;
  readonly inflation: number;
  readonly energyInflation?: number | undefined;
}

/** What a rise of prices becomes when a sensitivity makes it greatest. */
const greatest = (rate: number): number => 1 + rate * (1 + Math.sign(rate) * SENSITIVITY_CHANGE);

/** What a discount becomes when a sensitivity makes it least. */
const least = (rate: number): number => 1 + rate * (1 - Math.sign(rate) * SENSITIVITY_CHANGE);

/** A discount that carries too far by itself is named, else the rise of prices. */
export function checkGrowth(rates: Rates, issues: z.RefinementCtx): void {
  const { years, discountRate, inflation, energyInflation = inflation } = rates;
  // Refused already, at their own places.
  if (Math.min(discountRate, inflation, energyInflation) <= -1) return;
  const divisor = least(discountRate);
  const isTooFar = (growth: number) => divisor <= 0 || (growth / divisor) ** years > GROWTH_MAX;
  const refuse = (field: keyof Rates) => {
    const message = `makes money grow more than a million million times in ${years} years, also with 20 % more or less of it`;
    issues.addIssue({ code: 'custom', path: [field], message });
  };
  if (isTooFar(1)) refuse('discountRate');
  else if (isTooFar(greatest(inflation))) refuse('inflation');
  else if (isTooFar(greatest(energyInflation))) refuse('energyInflation');
}
