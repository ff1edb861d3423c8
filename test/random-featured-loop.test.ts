/** What the invented cases with check valves, free outlets, steps of bore and reducing tees are like. */
import { describe, expect, it } from 'vitest';
import type { ExtendedBranch, ExtendedElement } from './random/extended-loop.ts';
import { featuredCase } from './random-featured-loop.ts';
import { headLaw } from './reference/independent-complementarity/head-law.ts';
import type { Leg } from './reference/independent-complementarity/legs.ts';
import { assumedSteps, isOneWay } from './reference/independent-complementarity/runs.ts';
import { circuitFor } from './reference/independent-complementarity/selection.ts';

const CASES = Array.from({ length: 30 }, (_, index) => featuredCase({ seed: index + 1, everyOutlet: false }));

const runsOf = (branch: ExtendedBranch): readonly (readonly ExtendedElement[])[] => [
  branch.run,
  ...(branch.branches ?? []).flatMap(runsOf),
];
const legsOf = (leg: Leg): readonly Leg[] => [leg, ...leg.children.flatMap(legsOf)];

const all = CASES.map(({ loop }) => ({
  runs: [loop.suction, ...runsOf(loop.discharge)],
  legs: legsOf(circuitFor(loop, 'as-built').root),
}));
const share = (has: (one: (typeof all)[number]) => boolean): number => all.filter(has).length / all.length;

describe('the generator of featured loops', () => {
  it('gives the same case for the same seed', () => {
    expect(featuredCase({ seed: 3, everyOutlet: false })).toEqual(CASES[2]);
  });

  it.each([
    ['a one-way run', (one: (typeof all)[number]) => one.runs.some((run) => run.some(isOneWay))],
    ['a step of bore that is assumed', (one) => one.runs.some((run) => assumedSteps(run).length > 0)],
    ['a free outlet', (one) => one.legs.some(({ end }) => end?.free === true)],
    ['a reducing tee', (one) => one.legs.some(({ side }) => side !== undefined && side.ratio < 0.99)],
  ] as const satisfies readonly (readonly [string, (one: (typeof all)[number]) => boolean])[])(
    'gives %s to a third of its loops or more',
    (_, has) => {
      expect(share(has)).toBeGreaterThan(1 / 3);
    },
  );

  it('names one-way elements as fittings and as valves', () => {
    const elements = all.flatMap(({ runs }) => runs.flatMap((run) => run.filter(isOneWay)));
    expect(elements.some((element) => 'valve' in element)).toBe(true);
    expect(elements.some((element) => 'fitting' in element)).toBe(true);
  });

  it('gives its pumps head curves of every shape', () => {
    const shapes = new Set(CASES.map(({ pump }) => headLaw(pump)?.shape));
    expect([...shapes].sort()).toEqual(['assumed', 'piecewise', 'sum-of-powers']);
  });
});
