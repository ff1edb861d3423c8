/** How far the streams of outlets reach, against the jet law. */
import { describe, expect, it } from 'vitest';
import { axisVelocity } from '../../../models/components/jet.ts';
import { outletReaches } from '../../../models/network/outlet-reach.ts';
import { expectClose } from '../../expect-close.ts';
import { loopOf, modelOf, outlet, pipe } from '../example-loops.ts';

const reach = { distance: 2.5, velocity: 0.2 };
const model = modelOf(
  loopOf({
    run: [pipe(0.05, 1)],
    branches: [
      outlet('stated', { reach }),
      outlet('silent'),
      outlet('twin', { nozzleCount: 2 }),
      { run: [pipe(0.03, 1)], outlet: { name: 'bare pipe' } },
    ],
  }),
);
const FLOW = 5e-4;
const flows = Array.from([FLOW, FLOW, FLOW, FLOW]);
const exitOf = (diameter: number, count = 1) => FLOW / (count * (Math.PI / 4) * diameter ** 2);

describe('the reach of an outlet', () => {
  it('is where its axis has the velocity asked for, from nozzle, twin nozzles or bare pipe', () => {
    const found = outletReaches(model, flows, 0.1);
    const jets = [
      { nozzleDiameter: 0.015, exitVelocity: exitOf(0.015) },
      { nozzleDiameter: 0.015, exitVelocity: exitOf(0.015) },
      { nozzleDiameter: 0.015, exitVelocity: exitOf(0.015, 2) },
      { nozzleDiameter: 0.03, exitVelocity: exitOf(0.03) },
    ];
    for (const [i, jet] of jets.entries()) {
      expectClose(axisVelocity({ ...jet, distance: found[i]?.distance ?? 0 }), 0.1, { relative: 1e-12 });
    }
  });

  it('is to its own stated velocity where none is asked for', () => {
    const [stated, ...others] = outletReaches(model, flows, null);
    expect(stated?.velocity).toBe(0.2);
    expect(others).toEqual([null, null, null]);
  });

  it('is none at a velocity above that of the nozzle, and where water runs backwards', () => {
    expect(outletReaches(model, flows, 30)[0]?.distance).toBe(0);
    expect(
      outletReaches(
        model,
        flows.map((flow) => -flow),
        0.1,
      )[0]?.distance,
    ).toBe(0);
  });

  it('is not known for a loop known by its system curve', () => {
    const { suction, discharge, staticHead, ...common } = loopOf(outlet('jet'));
    const systemCurve = { points: [{ flow: 1e-3, head: 1 }] };
    const curve = modelOf({ ...common, systemCurve, outlets: [{ name: 'all', share: 1 }] });
    expect(outletReaches(curve, Array.of(FLOW), 0.1)).toEqual([null]);
  });
});
