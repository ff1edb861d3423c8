/** Makes a comparison a table, an option a row, and stored comparisons another. */
import { COST_ELEMENTS } from '../../../models/money/option-costs.ts';
import { tableOf } from '../../http/table-of.ts';
import { comparisonList, comparisonSchema } from './answer-schema.ts';

export const comparisonTable = tableOf(comparisonSchema, 'options', [
  { name: 'option', at: 'name' },
  'feasible',
  'presentValue',
  ...COST_ELEMENTS.map((name) => ({ name, at: `elements.${name}` }) as const),
  { name: 'low', at: 'range.low' },
  { name: 'high', at: 'range.high' },
  { name: 'paybackSimple', at: 'payback.simple' },
  { name: 'paybackDiscounted', at: 'payback.discounted' },
  'breakEvenPrice',
  'annualEnergy',
  'annualEnergyCost',
  { name: 'attentionHours', at: 'attention.hours' },
  { name: 'expectedLoss', at: 'expectedLoss.value' },
]);

export const comparisonListTable = tableOf(comparisonList, 'items', [
  'id',
  'name',
  'version',
  'createdAt',
  'updatedAt',
  'options',
  'cheapest',
  'summary',
]);
