/** The table of fittings against handbook figures. */
import { describe, expect, it } from 'vitest';
import { FITTINGS, findFitting } from '../../../models/components/fittings.ts';
import { VALVES } from '../../../models/components/valves.ts';
import { EQUIVALENT_DIAMETERS } from '../../reference/fittings.ts';

const rows = [...FITTINGS, ...VALVES];

describe('table of fittings and valves', () => {
  it.each(EQUIVALENT_DIAMETERS)('gives $name K = $diameters fT ($source)', ({ name, diameters }) => {
    const row = rows.find((candidate) => candidate.name === name);
    expect(row).toMatchObject({ method: 'equivalent-diameters', value: diameters });
  });

  it('gives a sharp entrance half, an exit one velocity head', () => {
    expect(findFitting('entrance-sharp')).toMatchObject({ method: 'fixed-k', value: 0.5 });
    expect(findFitting('exit')).toMatchObject({ method: 'fixed-k', value: 1 });
  });

  it('names each row once, in lower-case words joined by hyphens', () => {
    const names = rows.map((row) => row.name);
    expect(new Set(names).size).toBe(names.length);
    for (const name of names) expect(name).toMatch(/^[a-z]+(-[a-z0-9]+)*$/);
  });

  it('says of every row where it comes from, and when that is memory', () => {
    for (const row of rows) {
      expect(row.source.length).toBeGreaterThan(10);
      expect(row.description.length).toBeGreaterThan(3);
      expect(row.source.includes('from memory')).toBe(row.verified);
    }
  });

  it('has fittings apart from valves', () => {
    expect(FITTINGS.every((row) => row.kind === 'fitting')).toBe(true);
    expect(VALVES.every((row) => row.kind === 'valve')).toBe(true);
  });

  it.each(['elbow', 'Elbow-90', 'ball', 'toString', ''])('knows no fitting %j', (name) => {
    expect(findFitting(name)).toBeUndefined();
  });
});
