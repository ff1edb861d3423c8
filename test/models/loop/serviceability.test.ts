/** What a loop as entered lacks to be serviced. */
import { describe, expect, it } from 'vitest';
import type { RunElement } from '../../../models/loop/loop.ts';
import { serviceLacks } from '../../../models/loop/serviceability.ts';
import { loopOf, outlet, pipe } from '../example-loops.ts';

const VALVE: RunElement = { valve: 'ball' };
const UNION: RunElement = { fitting: 'union' };
const BULKHEAD: RunElement = { fitting: 'bulkhead' };

const lacksOf = (suction: readonly RunElement[], discharge: readonly RunElement[]) =>
  serviceLacks(loopOf(outlet('jet', {}, discharge), { suction }));

describe('a loop', () => {
  it('with a valve and a union on each side of the pump lacks nothing', () => {
    const run = [pipe(0.05, 1), VALVE, UNION];
    expect(lacksOf(run, run)).toEqual({ isolation: [], union: [], bulkheadUnion: [] });
  });

  it('is told which side lacks what', () => {
    expect(lacksOf([VALVE], [UNION])).toMatchObject({ isolation: ['discharge'], union: ['suction'] });
    expect(lacksOf([], [])).toMatchObject({
      isolation: ['suction', 'discharge'],
      union: ['suction', 'discharge'],
    });
  });

  it.each(['check-swing', 'check-swing-clear', 'foot-hinged'])('is not isolated by a %s valve', (valve) => {
    expect(lacksOf([{ valve }], [VALVE])?.isolation).toEqual(['suction']);
  });

  it('is isolated by a valve that is known by its Kv alone', () => {
    expect(lacksOf([{ valve: { kv: 20 } }], [{ valve: { cv: 20 } }])?.isolation).toEqual([]);
  });

  it('needs a union for each bulkhead, in the run that it stands in', () => {
    expect(lacksOf([BULKHEAD, UNION], [UNION])?.bulkheadUnion).toEqual([]);
    expect(lacksOf([BULKHEAD, BULKHEAD, UNION], [UNION])?.bulkheadUnion).toEqual(['/suction']);
    expect(lacksOf([{ fitting: 'bulkhead', count: 2 }, UNION], [])?.bulkheadUnion).toEqual(['/suction']);
  });

  it('is looked through to its last branch', () => {
    const discharge = {
      run: [UNION, VALVE],
      branches: [
        outlet('a', {}, [BULKHEAD]),
        { run: [], branches: [outlet('b', {}, [BULKHEAD, UNION]), outlet('c', {}, [BULKHEAD])] },
      ],
    };
    expect(serviceLacks(loopOf(discharge))?.bulkheadUnion).toEqual([
      '/discharge/branches/0/run',
      '/discharge/branches/1/branches/1/run',
    ]);
  });

  it('that is known by its system curve alone is not judged', () => {
    const { suction, discharge, staticHead, ...common } = loopOf(outlet('jet'));
    const systemCurve = { points: [{ flow: 1e-3, head: 1 }] };
    expect(serviceLacks({ ...common, systemCurve, outlets: [{ name: 'all', share: 1 }] })).toBeNull();
  });
});
