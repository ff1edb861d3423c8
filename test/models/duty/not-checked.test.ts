/** What of a duty is said not to be judged. */
import { describe, expect, it } from 'vitest';
import { type Check, notChecked } from '../../../models/duty/not-checked.ts';
import type { Loop, PipeworkLoop } from '../../../models/loop/loop.ts';
import type { Pump } from '../../../models/pump/pump.ts';
import { canister, loopOf, modelOf, outlet, pipe } from '../example-loops.ts';

const known: Pump = {
  ...canister,
  npshPoints: [{ flow: 1e-3, head: 1 }],
  ratedPower: 300,
  flowLimits: { min: 2e-4 },
};
const rated = { pipe: 'pn10 50', length: 2 };
const line = (...run: PipeworkLoop['suction']): PipeworkLoop =>
  loopOf({ ...outlet('end', {}, run), highestElevation: 0.2 });
const curve: Loop = {
  ...{ name: 'curve', water: { temperature: 25, salinity: 35 }, pumpElevation: 0, frictionMultiplier: 1 },
  systemCurve: { points: [{ flow: 1e-3, head: 1 }] },
  outlets: [{ name: 'end', share: 1 }],
};

const checksOf = (loop: Loop, facts: Partial<Pump> = {}): readonly Check[] =>
  notChecked(modelOf(loop), { ...known, ...facts });

describe('what is not checked', () => {
  it('is nothing where all is entered', () => {
    expect(checksOf(line(rated))).toEqual([]);
  });

  it.each<[Check, Loop, Partial<Pump>]>([
    ['npsh', line(rated), { npshPoints: undefined }],
    ['motor', line(rated), { ratedPower: undefined }],
    ['minimum-flow', line(rated), { flowLimits: { max: 1e-3 } }],
    ['surge', line(rated, pipe(0.05, 1)), {}],
    ['line-pressure', loopOf(outlet('end', {}, [rated])), {}],
  ])('is %s where that is missing', (check, loop, facts) => {
    expect(checksOf(loop, facts)).toEqual([check]);
  });

  it('is listed in one order, and includes the suction and the pipes of a system curve', () => {
    expect(checksOf(curve)).toEqual(['npsh', 'surge', 'line-pressure']);
    const nothing = { npshPoints: undefined, ratedPower: undefined, flowLimits: undefined };
    const all: readonly Check[] = ['npsh', 'motor', 'minimum-flow', 'surge', 'line-pressure'];
    expect(checksOf(curve, nothing)).toEqual(all);
    expect(checksOf(loopOf(outlet('end')), nothing)).toEqual(all);
  });
});
