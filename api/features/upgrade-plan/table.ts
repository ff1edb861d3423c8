/** Makes an upgrade plan a table of its candidates. */
import type { z } from '@hono/zod-openapi';
import type { Table } from '../../http/csv.ts';
import type { upgradePlanList, upgradePlanSchema } from './answer-schema.ts';

type Wire = z.input<ReturnType<typeof upgradePlanSchema>>;

const COLUMNS = [
  'candidate',
  'name',
  'year',
  'cost',
  'yearlySaving',
  'lifeYears',
  'presentValue',
  'reason',
  'missing',
].map((name) => ({ name }));

/** A row a candidate: those made have a year and a present value, the others a reason. */
export const upgradePlanTable = ({ candidates, items, leftOut }: Wire): Table => ({
  columns: COLUMNS,
  rows: candidates.map(({ name, cost, yearlySaving, lifeYears }, place) => {
    const made = items.find(({ candidate }) => candidate === place);
    const out = leftOut.find(({ candidate }) => candidate === place);
    const figures = [made?.presentValue, out?.reason, out?.missing];
    return [place, name, made?.year, cost, yearlySaving, lifeYears, ...figures];
  }),
});

export const upgradePlanListTable = ({ items }: z.input<ReturnType<typeof upgradePlanList>>): Table => ({
  columns: ['id', 'name', 'years', 'presentValue', 'status', 'version', 'createdAt', 'updatedAt'].map(
    (name) => ({ name }),
  ),
  rows: items.map((one) => [
    one.id,
    one.name,
    one.years,
    one.presentValue,
    one.status,
    one.version,
    one.createdAt,
    one.updatedAt,
  ]),
});
