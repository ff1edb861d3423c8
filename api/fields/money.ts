/** Money is a plain number, in requests in the site's currency and in answers in the currency that they name. */
import { type ComputedWords, computedNumber } from '../units/computed.ts';
import { markUnitOfColumn } from '../units/quantity-of.ts';
import type { SchemaContext } from '../units/schema-context.ts';
import { type NumberField, numberField } from './number-field.ts';

export const MONEY_MAX = 1e9;

export const enteredMoney = (context: SchemaContext, facts: Omit<NumberField, 'minimum' | 'maximum'>) =>
  markUnitOfColumn(numberField(context, { ...facts, minimum: 0, maximum: MONEY_MAX }), 'money');

/** A sum that is negative where it is the other way about. */
export const signedMoney = (context: SchemaContext, facts: Omit<NumberField, 'minimum' | 'maximum'>) =>
  markUnitOfColumn(numberField(context, { ...facts, minimum: -MONEY_MAX, maximum: MONEY_MAX }), 'money');

/** A sum that the service computes, under words of its own. */
export const computedMoney = (context: SchemaContext, words: ComputedWords) =>
  markUnitOfColumn(computedNumber(context, words), 'money');

export const money = (context: SchemaContext, description: string, example: number) =>
  computedMoney(context, { description: `${description} [money]`, example });
