/** Money in answers, in the currency that the answer names. */
import { computedNumber } from '../units/computed.ts';
import type { SchemaContext } from '../units/schema-context.ts';

export const money = (context: SchemaContext, description: string, example: number) =>
  computedNumber(context, { description: `${description} [money]`, example });
