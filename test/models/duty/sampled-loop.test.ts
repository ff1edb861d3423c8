/** Duties on the samples of a loop, and the exact duties that they lead to, against the full search. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dutyPoint } from '../../../models/duty/duty-point.ts';
import { estimateDuty, exactDuty, sampleLoop } from '../../../models/duty/sampled-loop.ts';
import type { Branch } from '../../../models/loop/loop.ts';
import { requiredDuty } from '../../../models/network/required-duty.ts';
import { pumpAtSetting } from '../../../models/pump/pump-at-setting.ts';
import { expectClose } from '../../expect-close.ts';
import { canister, LITRE_PER_HOUR, loopOf, modelOf, outlet, pipe, pumpModelOf } from '../example-loops.ts';

const L = LITRE_PER_HOUR;
const num = (array: readonly number[], index: number): number => array[index] ?? Number.NaN;

const TREE: Branch = {
  run: [pipe(0.04, 2)],
  split: 'tee-90',
  branches: [
    outlet('a', { requiredFlow: 1000 * L, staticHead: 0.2 }, [pipe(0.03, 2)]),
    outlet('b', { requiredFlow: 500 * L }, [pipe(0.025, 4), { valve: 'gate' }]),
  ],
};
const LOOP = modelOf(loopOf(TREE));
const PUMP = pumpModelOf(canister);

describe('a sampled loop', () => {
  const sampled = sampleLoop(LOOP);

  it('has its state at rest and the duty that it requires', () => {
    expectClose(sampled.atRest?.head ?? Number.NaN, LOOP.system.stateAt(0).head, { relative: 1e-12 });
    expect(sampled.required).toEqual(requiredDuty(LOOP.system));
    expect(sampled.loop).toBe(LOOP);
  });

  it('knows no state where no water passes', () => {
    const closed = sampleLoop(
      modelOf(loopOf(outlet('a', { requiredFlow: L }, [{ valve: { kv: 1 }, opening: 0 }]))),
    );
    expect(closed).toMatchObject({ atRest: null, required: null, requiredIsLeast: true });
  });

  it('knows that the required duty is the least where every outlet rises with the flow', () => {
    expect(sampleLoop(modelOf(loopOf(outlet('a', { requiredFlow: 900 * L })))).requiredIsLeast).toBe(true);
    const level = [outlet('a', { requiredFlow: 1000 * L }), outlet('b', { requiredFlow: 500 * L })];
    const tee = { run: [pipe(0.04, 2)], split: 'tee-90', branches: level } as const;
    expect(sampleLoop(modelOf(loopOf(tee))).requiredIsLeast).toBe(true);
  });

  it('does not know it where an outlet in air takes from a side as it opens', () => {
    expect(sampled.requiredIsLeast).toBe(false);
  });

  it('does not know it of a loop with a tee that requires nothing', () => {
    const branches = [outlet('a'), outlet('b')];
    const none = sampleLoop(modelOf(loopOf({ run: [], split: 'tee-90', branches })));
    expect(none).toMatchObject({ required: null, requiredIsLeast: false });
  });
});

describe('a duty on samples', () => {
  const sampled = sampleLoop(LOOP);

  it('leads to the exact one, to 1e-10 of the flow', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 30, max: 100 }),
        fc.integer({ min: 1, max: 3 }),
        fc.option(fc.double({ min: 1e-5, max: 1e-2, noNaN: true })),
        (setting, count, guess) => {
          const pump = pumpAtSetting(PUMP, { setting, count });
          const full = dutyPoint(LOOP, pump);
          const estimate = estimateDuty(sampled, pump, guess ?? undefined);
          const exact = exactDuty(sampled, pump, estimate);
          expectClose(estimate.flow, full.flow, { relative: 1e-4 });
          expectClose(exact.flow, full.flow, { relative: 1e-10 });
          expectClose(exact.head, full.head, { relative: 1e-9 });
          expectClose(exact.suctionLoss, full.suctionLoss, { relative: 1e-6 });
          for (const i of [0, 1]) {
            expectClose(num(exact.outletFlows, i), num(full.outletFlows, i), {
              relative: 1e-8,
              absolute: 1e-12,
            });
          }
          expect([exact.setting, exact.count, exact.deadHead]).toEqual([setting, count, false]);
        },
      ),
      { seed: 1, numRuns: 60 },
    );
  });

  it('is that of a pump whose curve turns, too', () => {
    const drooping = pumpModelOf({
      ...canister,
      headPoints: [4, 4.55, 4.6, 4.1, 3].map((head, i) => ({ flow: 3000 * i * L, head, setting: 100 })),
    });
    const pump = pumpAtSetting(drooping, { setting: 80, count: 1 });
    expect(pump.turningFlows.length).toBeGreaterThan(0);
    const exact = exactDuty(sampled, pump, estimateDuty(sampled, pump, 1e-3));
    expectClose(exact.flow, dutyPoint(LOOP, pump).flow, { relative: 1e-10 });
  });

  it('is none of a pump that does not lift the water, whose head is its shutoff head', () => {
    const lifting = sampleLoop(modelOf(loopOf(TREE, { staticHead: 5 })));
    const pump = pumpAtSetting(PUMP, { setting: 50, count: 1 });
    const estimate = estimateDuty(lifting, pump);
    expect(estimate).toMatchObject({ deadHead: true, flow: 0 });
    expectClose(estimate.head, 6 * 0.25, { relative: 1e-9 });
    expect(exactDuty(lifting, pump, estimate)).toEqual({ ...estimate, state: lifting.atRest });
  });

  it('is none where no water passes', () => {
    const closed = sampleLoop(modelOf(loopOf(outlet('a', {}, [{ valve: { kv: 1 }, opening: 0 }]))));
    const pump = pumpAtSetting(PUMP, { setting: 50, count: 1 });
    expect(estimateDuty(closed, pump)).toMatchObject({ deadHead: true, outletFlows: [0] });
  });
});
