/** Records made of rows: once for a row, never that of another. */
import { describe, expect, it } from 'vitest';
import { parsedOnce } from '../../../api/store/parsed-once.ts';

const row = {
  site_id: 'a',
  id: 'p1',
  version: 1,
  created_at: 5,
  updated_at: 5,
  name: 'Canister',
  document: '{}',
  digest: 'd',
};

const maker = () => {
  let made = 0;
  const make = parsedOnce((one: typeof row) => {
    made += 1;
    return { ...one };
  });
  return { make, made: () => made };
};

describe('a record of a row', () => {
  it('is made once for as long as the row is the same', () => {
    const { make, made } = maker();
    expect(make(row)).toBe(make({ ...row }));
    expect(made()).toBe(1);
  });

  it.each(Object.keys(row))('is made again where the column %s has changed', (column) => {
    const { make } = maker();
    make(row);
    const changed = { ...row, [column]: column === 'version' ? 2 : 'other' };
    expect(make(changed)).toEqual(changed);
  });
});
