/** What is refused before a design is searched, by its place in the loop. */
import { describe, expect, it } from 'vitest';
import type { DesignLoop } from '../../../models/designs/design-loop.ts';
import { designs } from '../../../models/designs/designs.ts';
import type { DesignQuestion } from '../../../models/designs/search-designs.ts';
import { bore, list, loopOf, outlet, pipe, questionFor } from './small-designs.ts';

const refused = (loop: DesignLoop, facts: Partial<DesignQuestion> = {}) => {
  const found = designs(questionFor(loop, facts));
  return found.ok ? null : found.failure;
};

const one = list([32, 40], 3);

describe('a question for a design is refused', () => {
  it('where a candidate size has no price', () => {
    const odd = { pipes: [bore(40), bore(41)], length: 3 };
    expect(refused(loopOf({ run: [one, odd], outlet: outlet('end', 2000) }))).toEqual({
      ...{ code: 'no-pipe-price', path: ['discharge', 'run', 1, 'pipes', 1] },
    });
    expect(refused(loopOf({ run: [one], outlet: outlet('end', 2000) }, { suction: [odd] }))).toMatchObject({
      path: ['suction', 0, 'pipes', 1],
    });
  });

  it('where a candidate size is not known, or too rough for its bore', () => {
    const unknown = { pipes: ['sch80 2', 'sch80 9'], length: 3 };
    expect(
      refused(loopOf({ run: [unknown], outlet: outlet('end', 2000) }, {}), {
        prices: [{ pipe: 'sch80 2', price: 1 }],
      }),
    ).toMatchObject({ code: 'unknown-pipe', path: ['discharge', 'run', 0, 'pipes', 1] });
    const rough = { pipes: [{ insideDiameter: 0.04, roughness: 0.005 }], length: 3 };
    expect(refused(loopOf({ run: [rough], outlet: outlet('end', 2000) }))).toMatchObject({
      ...{ code: 'roughness-too-large', path: ['discharge', 'run', 0, 'pipes', 0] },
    });
  });

  it('where an outlet requires nothing, or nothing is required at all', () => {
    const branches = [
      { run: [one], outlet: outlet('first', 2000) },
      { run: [one], outlet: { name: 'second' } },
    ];
    expect(refused(loopOf({ run: [one], branches }))).toEqual({
      ...{ code: 'requirement-missing', path: ['discharge', 'branches', 1, 'outlet'], outlet: 'second' },
    });
    expect(refused(loopOf({ run: [one], outlet: outlet('end', 0) }))).toEqual({ code: 'no-requirement' });
  });

  it('where the flow of a reach would follow from the size that is to be chosen', () => {
    const reach = { distance: 2, velocity: 0.1 };
    expect(refused(loopOf({ run: [one], outlet: { name: 'jet', reach } }))).toEqual({
      ...{ code: 'requirement-by-size', path: ['discharge', 'outlet', 'reach'], outlet: 'jet' },
    });
    expect(refused(loopOf({ run: [one], outlet: { name: 'jet', reach, nozzleDiameter: 0.02 } }))).toBeNull();
  });

  it('where a valve is shut before an outlet that requires a flow', () => {
    const run = [one, { valve: 'ball', opening: 0 }];
    expect(refused(loopOf({ run, outlet: outlet('end', 2000) }))).toEqual({
      ...{ code: 'outlet-shut-off', path: ['discharge', 'run', 1], outlet: 'end' },
    });
  });

  it('where an element names nothing that the tables have', () => {
    const run = [one, { fitting: 'elbow-91' }];
    expect(refused(loopOf({ run, outlet: outlet('end', 2000) }))).toMatchObject({
      ...{ code: 'unknown-fitting', path: ['discharge', 'run', 1, 'fitting'] },
    });
  });

  it('where no sizes go together with a reducer', () => {
    const run = [list([32, 40], 1), { fitting: 'reducer' }, list([40, 50], 1)];
    expect(refused(loopOf({ run, outlet: outlet('end', 2000) }))).toMatchObject({
      ...{ code: 'bores-do-not-fit', path: ['discharge', 'run', 1] },
    });
  });

  it('beyond 500 runs or 200 candidates', () => {
    const branches = Array.from({ length: 499 }, (_, place) => ({ run: [], outlet: outlet(`${place}`, 20) }));
    expect(refused(loopOf({ run: [pipe(63, 1)], branches }))).toEqual({
      ...{ code: 'too-many-runs', limit: 500, actual: 501 },
    });
    const [candidate] = questionFor(loopOf({ run: [one], outlet: outlet('end', 2000) })).candidates;
    if (candidate === undefined) throw new Error('there is no candidate');
    const candidates = Array.from({ length: 201 }, () => candidate);
    expect(refused(loopOf({ run: [one], outlet: outlet('end', 2000) }), { candidates })).toEqual({
      ...{ code: 'too-many-candidates', limit: 200, actual: 201 },
    });
  });
});
