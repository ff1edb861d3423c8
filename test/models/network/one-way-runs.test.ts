/** Check valves and outlets in air: worked duties, heads at rest, and what water does beyond a closed valve. */
import { describe, expect, it } from 'vitest';
import { dutyPoint } from '../../../models/duty/duty-point.ts';
import type { Branch } from '../../../models/loop/loop.ts';
import { largestResidual } from '../../../models/network/verify-solution.ts';
import { pumpAtSetting } from '../../../models/pump/pump-at-setting.ts';
import { expectClose } from '../../expect-close.ts';
import { atRest, ONE_WAY_DUTIES } from '../../reference/one-way-runs.ts';
import {
  LITRE_PER_HOUR,
  loopOf,
  modelOf,
  networkOf,
  outlet,
  pipe,
  pumpModelOf,
  solved,
} from '../example-loops.ts';

const CHECK = { valve: 'check-swing' } as const;

describe.each(ONE_WAY_DUTIES)('$title at $setting % ($source)', ({ loop, pump, setting, ...row }) => {
  it('gives the outlets what was worked out', () => {
    const duty = dutyPoint(modelOf(loop), pumpAtSetting(pumpModelOf(pump), { setting, count: 1 }));
    for (const [place, expected] of row.outlets.entries()) {
      expectClose(duty.outletFlows[place] ?? Number.NaN, expected * LITRE_PER_HOUR, {
        relative: row.tolerance,
      });
    }
    if (row.head !== undefined) expectClose(duty.head, row.head, { relative: row.tolerance });
  });
});

describe('the head needed at no flow', () => {
  it('is the level of the lowest outlet where a higher one lies in air', () => {
    expectClose(modelOf(atRest('free')).system.stateAt(0).head, 0.4, { relative: 1e-12 });
  });

  it('lies between the levels where water falls from one outlet to the other', () => {
    const { head } = modelOf(atRest('submerged')).system.stateAt(0);
    expect(head).toBeGreaterThan(0.4);
    expect(head).toBeLessThan(2);
  });

  it('is where the first of all branches opens, each in air or behind a valve', () => {
    const ends = [0.9, 0.3, 0.6].map((staticHead, place) => outlet(`outlet ${place}`, { staticHead }));
    const { system } = modelOf(loopOf({ run: [pipe(0.04, 1)], branches: ends }));
    const state = system.stateAt(0);
    expectClose(state.head, 0.3, { relative: 1e-12 });
    expect(state.outletFlows).toEqual([0, 0, 0]);
    // A little more, and it runs there alone.
    expect(system.stateAt(1e-7).outletFlows).toEqual([0, 1e-7, 0]);
  });

  it('is what the limit of small flows says', () => {
    for (const exit of ['free', 'submerged'] as const) {
      const { system } = modelOf(atRest(exit));
      expectClose(system.stateAt(1e-12).head, system.stateAt(0).head, { relative: 1e-6 });
    }
  });
});

describe('beyond a closed valve', () => {
  /** A valve before a node of two outlets, beside an outlet far below. */
  const loop = (far: readonly Branch[]) =>
    loopOf({
      run: [pipe(0.04, 1)],
      branches: [
        outlet('near', { staticHead: -2 }, [pipe(0.03, 1)]),
        { run: [pipe(0.03, 1), CHECK], branches: far },
      ],
    });

  it('outlets at unlike levels exchange water, their flows adding up to 0', () => {
    const network = networkOf(
      loop([
        outlet('low', { staticHead: 0, nozzleDiameter: 0.02 }, [pipe(0.03, 1)]),
        outlet('high', { staticHead: 0.5, exit: 'submerged', nozzleDiameter: 0.02 }, [pipe(0.03, 1)]),
      ]),
    );
    const solution = solved(network, 5e-4);
    expect(largestResidual(network, solution)).toBeLessThan(1e-9);
    const [, near = 0, valve, low = 0, high = 0] = solution.flows;
    expectClose(near, 5e-4, { relative: 1e-12 });
    expect(valve).toBe(0);
    expect(low).toBeGreaterThan(1e-5);
    expectClose(high, -low, { relative: 1e-12 });
  });

  it('outlets at one level rest, exactly', () => {
    const network = networkOf(
      loop(
        ['low', 'high'].map((name) =>
          outlet(name, { staticHead: 0.1 + 0.2, exit: 'submerged' }, [pipe(0.03, 1)]),
        ),
      ),
    );
    expect(solved(network, 5e-4).flows.slice(2)).toEqual([0, 0, 0]);
  });

  it('an outlet in air begins to run before one that lies higher', () => {
    const network = networkOf(
      loop([outlet('lower', { staticHead: 0.2 }), outlet('higher', { staticHead: 0.4 })]),
    );
    const opened = Array.from({ length: 60 }, (_, step) =>
      solved(network, 2e-4 * 1.06 ** step).flows.slice(3),
    );
    const first = opened.findIndex(([lower = 0]) => lower > 0);
    const second = opened.findIndex(([, higher = 0]) => higher > 0);
    expect(first).toBeGreaterThan(0);
    expect(second).toBeGreaterThan(first);
  });
});

describe('a valve acts at any place', () => {
  it('of its run', () => {
    const flowsWith = (run: Branch['run']) =>
      solved(
        networkOf(
          loopOf({
            run: [pipe(0.04, 1)],
            branches: [outlet('low', { staticHead: -1 }), outlet('high', {}, run)],
          }),
        ),
        2e-4,
      ).flows;
    expect(flowsWith([CHECK, pipe(0.03, 1)])).toEqual(flowsWith([pipe(0.03, 1), CHECK]));
    expect(flowsWith([CHECK, pipe(0.03, 1)])[2]).toBe(0);
  });

  it('of the suction or the root, and changes no flow there', () => {
    const branches = [outlet('low', { staticHead: -1 }), outlet('high')];
    const flowsOf = (network: ReturnType<typeof networkOf>) => solved(network, 3e-4).flows;
    const plain = flowsOf(networkOf(loopOf({ run: [pipe(0.04, 1)], branches })));
    const atRoot = networkOf(loopOf({ run: [pipe(0.04, 1), CHECK], branches }));
    const atSuction = networkOf(
      loopOf({ run: [pipe(0.04, 1)], branches }, { suction: [pipe(0.05, 1), { valve: 'foot-hinged' }] }),
    );
    expect([flowsOf(atRoot), flowsOf(atSuction)]).toEqual([plain, plain]);
  });
});
