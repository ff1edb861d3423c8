/** More friction against the loop entered with a larger multiplier. */
import { describe, expect, it } from 'vitest';
import type { SystemCurveLoop } from '../../../models/loop/loop.ts';
import { withMoreFriction } from '../../../models/network/more-friction.ts';
import { expectClose } from '../../expect-close.ts';
import { loopOf, modelOf, outlet, pipe, trimmedModelOf } from '../example-loops.ts';

const TREE = loopOf(
  {
    run: [pipe(0.04, 1), { fitting: 'elbow-90' }],
    split: 'tee-90',
    branches: [
      outlet('a', { requiredFlow: 5e-4 }, [pipe(0.02, 2), { valve: 'ball' }]),
      outlet('b', { requiredFlow: 5e-4 }, [pipe(0.03, 1), { loss: { head: 0.1, flow: 1e-3 } }]),
    ],
  },
  { intake: { lossCoefficient: 0.5 }, staticHead: 0.3 },
);

describe('a loop with more friction', () => {
  it('is the loop entered with a multiplier as much larger', () => {
    const [made, entered] = [
      withMoreFriction(modelOf(TREE), 1.7),
      modelOf({ ...TREE, frictionMultiplier: 1.7 }),
    ].map(({ system }) => system.stateAt(1e-3));
    expectClose(made?.head ?? Number.NaN, entered?.head ?? 0, { relative: 1e-9 });
    for (const i of [0, 1]) {
      expectClose(made?.outletFlows[i] ?? Number.NaN, entered?.outletFlows[i] ?? 0, { relative: 1e-9 });
    }
  });

  it('multiplies again what was multiplied before', () => {
    const twice = withMoreFriction(withMoreFriction(modelOf(TREE), 2), 1.5);
    const once = withMoreFriction(modelOf(TREE), 3);
    expectClose(twice.system.stateAt(1e-3).head, once.system.stateAt(1e-3).head, { relative: 1e-9 });
  });

  it('leaves intake, outlets and trims as they are', () => {
    const model = trimmedModelOf(TREE);
    const untouched = (of: typeof model) =>
      [...(of.network?.suction ?? []), ...(of.network?.branches ?? []).flatMap(({ elements }) => elements)]
        .filter(({ kind }) => kind === 'intake' || kind === 'outlet' || kind === 'trim')
        .map(({ kind, resistance }) => [kind, resistance.lossAt(1e-3).head]);
    expect(untouched(withMoreFriction(model, 3))).toEqual(untouched(model));
    expect(untouched(model).map(([kind]) => kind)).toEqual(['intake', 'outlet', 'outlet', 'trim']);
  });

  it('multiplies the k of a system curve, not its static head, and keeps the outlets as they are', () => {
    const { suction, discharge, staticHead, ...common } = TREE;
    const loop: SystemCurveLoop = {
      ...common,
      systemCurve: { staticHead: 1, points: [{ flow: 1e-3, head: 3 }] },
      outlets: [{ name: 'a', share: 1, requiredFlow: 5e-4 }],
    };
    const model = modelOf(loop);
    const changed = {
      ...model,
      system: {
        ...model.system,
        outlets: model.system.outlets.map((one) => ({ ...one, requiredFlow: 7e-4 })),
      },
    };
    const { system } = withMoreFriction(changed, 1.5);
    expectClose(system.stateAt(1e-3).head, 1 + 1.5 * 2, { relative: 1e-12 });
    expect(system.outlets.map(({ requiredFlow }) => requiredFlow)).toEqual([7e-4]);
  });
});
