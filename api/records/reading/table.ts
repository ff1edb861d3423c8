/** Makes readings a table, with a column for each outlet that was measured. */
import { tableOf } from '../../http/table-of.ts';
import { readingList } from './answer-schema.ts';
import { OUTLET_PREFIX } from './job.ts';

const MEASURES = ['power', 'flow', 'head', 'suctionPressure', 'dischargePressure'] as const;

const MEAN_OF = ['from', 'until', 'day', 'readings'] as const;

/** Readings one by one have other columns than means of them; the first row shows which they are. */
export const readingsTable = tableOf(readingList, 'items', ({ items }) => {
  const outlets = [...new Set(items.flatMap(({ outletFlows = {} }) => Object.keys(outletFlows)))].sort();
  const first = items[0];
  const own = first !== undefined && 'from' in first ? MEAN_OF : (['time'] as const);
  return [
    ...own,
    'setting',
    ...MEASURES,
    ...outlets.map((name) => ({
      name: `${OUTLET_PREFIX}${name}`,
      unitOf: ['outletFlows'],
      of: ({ outletFlows }: (typeof items)[number]) => outletFlows?.[name],
    })),
  ];
});
