/** Makes readings a table, with a column for each outlet that was measured. */
import type { z } from '@hono/zod-openapi';
import type { Cell, Column, Table } from '../../http/csv.ts';
import type { readingList } from './answer-schema.ts';
import { OUTLET_PREFIX } from './job.ts';

type Wire = Pick<z.input<ReturnType<typeof readingList>>, 'items'>;

const MEASURES = [
  { name: 'power', quantity: 'power' },
  { name: 'flow', quantity: 'flow' },
  { name: 'head', quantity: 'head' },
  { name: 'suctionPressure', quantity: 'pressure' },
  { name: 'dischargePressure', quantity: 'pressure' },
] as const;

const SETTING = { name: 'setting', quantity: 'setting' } as const;
const PLAIN: readonly Column[] = [{ name: 'time' }, SETTING];
const MEANS: readonly Column[] = [
  { name: 'from' },
  { name: 'until' },
  { name: 'day' },
  { name: 'readings' },
  SETTING,
];

/** Entered quantities leave as numbers. */
const cell = (value: number | string | null | undefined): Cell => value;

export function readingsTable({ items }: Wire): Table {
  const outlets = [...new Set(items.flatMap(({ outletFlows = {} }) => Object.keys(outletFlows)))].sort();
  const first = items[0];
  const own = first !== undefined && 'from' in first ? MEANS : PLAIN;
  const columns: readonly Column[] = [
    ...own,
    ...MEASURES,
    ...outlets.map((name): Column => ({ name: `${OUTLET_PREFIX}${name}`, quantity: 'flow' })),
  ];
  return {
    columns,
    rows: items.map((item) => [
      ...('from' in item ? [item.from, item.until, item.day, item.readings] : [item.time]),
      cell(item.setting),
      ...MEASURES.map(({ name }) => cell(item[name])),
      ...outlets.map((name) => cell(item.outletFlows?.[name])),
    ]),
  };
}
