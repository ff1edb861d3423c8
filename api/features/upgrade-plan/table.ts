/** Makes an upgrade plan a table of its candidates, and stored plans another. */
import { tableOf } from '../../http/table-of.ts';
import { upgradePlanList, upgradePlanSchema } from './answer-schema.ts';

const ofPlace = <Item extends { readonly candidate: number }>(
  items: readonly Item[],
  place: number,
): Item | undefined => items.find(({ candidate }) => candidate === place);

/** A row a candidate: those made have a year and a present value, the others a reason. */
export const upgradePlanTable = tableOf(upgradePlanSchema, 'candidates', [
  { name: 'candidate', of: (_, __, place) => place },
  'name',
  { name: 'year', of: (_, { items }, place) => ofPlace(items, place)?.year },
  'cost',
  'yearlySaving',
  'lifeYears',
  { name: 'presentValue', of: (_, { items }, place) => ofPlace(items, place)?.presentValue },
  { name: 'reason', of: (_, { leftOut }, place) => ofPlace(leftOut, place)?.reason },
  { name: 'missing', of: (_, { leftOut }, place) => ofPlace(leftOut, place)?.missing },
]);

export const upgradePlanListTable = tableOf(upgradePlanList, 'items', [
  'id',
  'name',
  'years',
  'presentValue',
  'status',
  'version',
  'createdAt',
  'updatedAt',
]);
