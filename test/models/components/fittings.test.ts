/** The table of fittings against handbook figures. */
import { describe, expect, it } from 'vitest';
import { FITTINGS, findFitting, methodsOfFitting } from '../../../models/components/fittings.ts';
import { VALVES } from '../../../models/components/valves.ts';
import { EQUIVALENT_DIAMETERS } from '../../reference/fittings.ts';

const rows = [...FITTINGS, ...VALVES];

describe('table of fittings and valves', () => {
  it.each(EQUIVALENT_DIAMETERS)('gives $name K = $diameters fT ($source)', ({ name, diameters }) => {
    const row = rows.find((one) => one.name === name && one.method === 'equivalent-diameters');
    expect(row).toMatchObject({ method: 'equivalent-diameters', value: diameters });
  });

  it('gives a sharp entrance half, an exit one velocity head', () => {
    expect(findFitting('entrance-sharp')).toMatchObject({ method: 'fixed-k', value: 0.5 });
    expect(findFitting('exit')).toMatchObject({ method: 'fixed-k', value: 1 });
  });

  it('has each method of a name once, names in lower-case words joined by hyphens', () => {
    const keys = rows.map((row) => `${row.name} ${row.method}`);
    expect(new Set(keys).size).toBe(keys.length);
    for (const { name } of rows) expect(name).toMatch(/^[a-z]+(-[a-z0-9]+)*$/);
  });

  it('describes a component alike by each of its methods', () => {
    for (const { name, kind, role, description } of rows) {
      const others = rows.filter((row) => row.name === name);
      for (const other of others) expect(other).toMatchObject({ kind, role, description });
    }
  });

  it('takes the method that is asked for, else its default', () => {
    expect(findFitting('elbow-90')).toMatchObject({ method: 'equivalent-diameters', value: 30 });
    expect(findFitting('elbow-90', 'two-k')).toMatchObject({ laminarValue: 800, value: 0.4 });
    expect(findFitting('elbow-90-long-radius')).toMatchObject({ method: 'two-k', value: 0.2 });
    expect(findFitting('coupling', 'two-k')).toBeUndefined();
    expect(methodsOfFitting('elbow-90')).toEqual(['equivalent-diameters', 'two-k', 'three-k']);
  });

  it('says of every row where it comes from; of two no figure was found that could be checked', () => {
    for (const row of rows) {
      expect(row.source.length).toBeGreaterThan(10);
      expect(row.description.length).toBeGreaterThan(3);
      expect(row.source).not.toContain('memory');
    }
    const unverified = rows.filter(({ verified }) => !verified).map(({ name }) => name);
    expect(unverified).toEqual(['bulkhead', 'strainer']);
  });

  it('has fittings apart from valves', () => {
    expect(FITTINGS.every((row) => row.kind === 'fitting')).toBe(true);
    expect(VALVES.every((row) => row.kind === 'valve')).toBe(true);
  });

  it.each(['elbow', 'Elbow-90', 'ball', 'toString', ''])('knows no fitting %j', (name) => {
    expect(findFitting(name)).toBeUndefined();
  });
});
