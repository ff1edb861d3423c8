/** Writes sums of money as pages show them. */
import { sayMoney } from '../wording/money.ts';

/** Null: no price is set. */
export const money = (sum: number | null, currency: string): string =>
  sum === null ? 'no price is set' : sayMoney(sum, currency, true);
