/** Makes a comparison a table, an option a row, and stored comparisons another. */
import type { z } from '@hono/zod-openapi';
import { COST_ELEMENTS } from '../../../models/money/option-costs.ts';
import type { Table } from '../../http/csv.ts';
import type { comparisonList, comparisonSchema } from './answer-schema.ts';

export const comparisonTable = ({ options }: z.input<ReturnType<typeof comparisonSchema>>): Table => ({
  columns: [
    { name: 'option' },
    { name: 'feasible' },
    { name: 'presentValue' },
    ...COST_ELEMENTS.map((name) => ({ name })),
    { name: 'low' },
    { name: 'high' },
    { name: 'paybackSimple' },
    { name: 'paybackDiscounted' },
    { name: 'breakEvenPrice' },
    { name: 'annualEnergy', quantity: 'energy' },
    { name: 'annualEnergyCost' },
    { name: 'attentionHours' },
    { name: 'expectedLoss' },
  ],
  rows: options.map((one) => [
    one.name,
    one.feasible,
    one.presentValue,
    ...COST_ELEMENTS.map((name) => one.elements[name]),
    one.range.low,
    one.range.high,
    one.payback?.simple,
    one.payback?.discounted,
    one.breakEvenPrice,
    one.annualEnergy,
    one.annualEnergyCost,
    one.attention.hours,
    one.expectedLoss.value,
  ]),
});

export const comparisonListTable = ({ items }: z.input<ReturnType<typeof comparisonList>>): Table => ({
  columns: [
    { name: 'id' },
    { name: 'name' },
    { name: 'version' },
    { name: 'createdAt' },
    { name: 'updatedAt' },
    { name: 'options' },
    { name: 'cheapest' },
    { name: 'summary' },
  ],
  rows: items.map((one) => [
    one.id,
    one.name,
    one.version,
    one.createdAt,
    one.updatedAt,
    one.options,
    one.cheapest,
    one.summary,
  ]),
});
