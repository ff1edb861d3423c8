/** Tables whose columns are members of the rows: their units, cells, refusals. */
import { z } from '@hono/zod-openapi';
import { describe, expect, it } from 'vitest';
import { nullable } from '../../../api/fields/nullable.ts';
import { settingField } from '../../../api/fields/setting-field.ts';
import { writeCsv } from '../../../api/http/csv.ts';
import { csvColumns } from '../../../api/http/csv-columns.ts';
import { tableOf } from '../../../api/http/table-of.ts';
import { computed } from '../../../api/units/computed.ts';
import { perContext } from '../../../api/units/per-context.ts';

const rows = perContext((context) =>
  z.strictObject({
    items: z.array(
      z.strictObject({
        name: z.string(),
        setting: settingField(context, 'What to dial.', 70),
        at: nullable(
          z.strictObject({ flow: computed(context, 'flow', { description: 'Flow.', example: 2 }) }),
        ),
      }),
    ),
  }),
);

const ITEMS = [
  { name: 'left', setting: 70, at: { flow: 1500 } },
  { name: 'right', setting: 40, at: null },
];

describe('a table of rows', () => {
  const table = tableOf(rows, 'items', [
    { name: 'place', of: (_, __, place) => place },
    'name',
    'setting',
    { name: 'flow', at: 'at.flow' },
    { name: 'double', unitOf: ['at', 'flow'], of: ({ at }) => (at === null ? null : 2 * at.flow) },
  ]);

  it('has the unit of each member, a setting % although the answer states none', () => {
    expect(writeCsv(table({ items: ITEMS }), 'us').split('\r\n')).toEqual([
      'place,name,setting [%],flow [gal/h],double [gal/h]',
      '0,left,70,1500,3000',
      '1,right,40,,',
      '',
    ]);
  });

  it('refuses a column whose unit is that of no member', () => {
    const wrong = tableOf(rows, 'items', [{ name: 'flow', unitOf: ['flow'], of: () => 1 }]);
    expect(() => wrong({ items: ITEMS })).toThrow('/items/flow leads to 0 members');
  });
});

describe('the columns of a table that comes in', () => {
  it('have the quantity of the member that each fills', () => {
    const columns = csvColumns(rows, {
      name: { at: 'items.name', required: true, isText: true },
      flow: { at: 'items.at.flow', required: false },
    });
    expect(columns).toEqual({
      name: { quantity: 'text', required: true },
      flow: { quantity: 'flow', required: false },
    });
  });

  it('are refused where they fill no member', () => {
    expect(() => csvColumns(rows, { head: { required: false } })).toThrow('/head leads to 0 members');
  });
});
