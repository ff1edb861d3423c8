/** Makes a comparison a table, an option a row, and stored comparisons another. */
import { COST_ELEMENTS } from '../../../models/money/option-costs.ts';
import { tableOf } from '../../http/table-of.ts';
import { comparisonList, comparisonSchema } from './answer-schema.ts';

export const comparisonTable = tableOf(comparisonSchema, 'options', [
  { name: 'optionName', at: 'name' },
  'feasible',
  'presentValue',
  ...COST_ELEMENTS.map((name) => ({ name, at: `elements.${name}` }) as const),
  { name: 'presentValueLow', at: 'presentValueInterval.low' },
  { name: 'presentValueHigh', at: 'presentValueInterval.high' },
  { name: 'paybackSimple', at: 'payback.simple' },
  { name: 'paybackDiscounted', at: 'payback.discounted' },
  'breakEvenPrice',
  'annualEnergy',
  'annualCost',
  { name: 'annualUpkeepHours', at: 'upkeep.annualHours' },
  { name: 'annualExpectedLoss', at: 'annualExpectedLoss.value' },
]);

export const comparisonListTable = tableOf(comparisonList, 'items', [
  'id',
  'name',
  'version',
  'createdAt',
  'updatedAt',
  'optionCount',
  { name: 'cheapestName', at: 'cheapest' },
  'summary',
]);
