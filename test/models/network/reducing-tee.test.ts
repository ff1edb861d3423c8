/** Tees whose sides are narrower than the leg, in a network. */
import { describe, expect, it } from 'vitest';
import type { Branch, PipeworkLoop } from '../../../models/loop/loop.ts';
import { headAtTee } from '../../../models/network/flows-at-tee.ts';
import { pipeworkSystem } from '../../../models/network/pipework-system.ts';
import { largestResidual } from '../../../models/network/verify-solution.ts';
import { GRAVITY } from '../../../models/physics/gravity.ts';
import { expectClose } from '../../expect-close.ts';
import { REDUCING_TEES, WORKED_REDUCING_TEE } from '../../reference/reducing-tees.ts';
import { LITRE_PER_HOUR, loopOf, networkOf, outlet, pipe, solved } from '../example-loops.ts';

const LEG = 0.05;
const velocityHead = (flow: number, bore: number): number =>
  (flow / ((Math.PI / 4) * bore ** 2)) ** 2 / (2 * GRAVITY);

/** A tee of throttles alone: K on the leg's bore behind the straight run, on its own bore behind each side. */
function tee(
  straight: number,
  sides: readonly { readonly boreRatio: number; readonly throttle: number }[],
): PipeworkLoop {
  const end = (name: string, bore: number, lossCoefficient: number): Branch => ({
    run: [pipe(bore, 0)],
    outlet: { name, lossCoefficient },
  });
  const branches = [
    end('straight', LEG, straight),
    ...sides.map(({ boreRatio, throttle }, place) => end(`side ${place}`, boreRatio * LEG, throttle)),
  ];
  return loopOf({ run: [pipe(LEG, 0)], branches, split: 'tee-90' }, { suction: [] });
}

describe.each(REDUCING_TEES)('a side of $boreRatio that is to take $share ($source)', (row) => {
  it('takes it where the throttles make both ways lose the same', () => {
    const flow = 2e-3;
    // K on the leg's velocity of the side's throttle, then of the straight run's.
    const ofSide = 3 * (row.share / row.boreRatio ** 2) ** 2;
    const straight = (row.side + ofSide - row.run) / (1 - row.share) ** 2;
    const network = networkOf(tee(straight, [{ boreRatio: row.boreRatio, throttle: 3 }]));
    const solution = solved(network, flow);
    expect(largestResidual(network, solution)).toBeLessThan(1e-9);
    expectClose((solution.flows[2] ?? Number.NaN) / flow, row.share, { relative: 1e-8 });
    expectClose(solution.rootHead, (row.side + ofSide) * velocityHead(flow, LEG), { relative: 1e-8 });
  });
});

describe(`a worked tee (${WORKED_REDUCING_TEE.source})`, () => {
  const { total, side, run, head, sideHead, runHead, tolerance } = WORKED_REDUCING_TEE;
  const network = networkOf(
    loopOf(
      {
        run: [pipe(0.05, 1)],
        split: 'tee-90',
        branches: [
          outlet('on', { nozzleDiameter: 0.022 }, [pipe(0.05, 1)]),
          { run: [pipe(0.025, 1)], outlet: { name: 'side' } },
        ],
      },
      { suction: [] },
    ),
  );
  const solution = solved(network, total * LITRE_PER_HOUR);
  const relative = { relative: tolerance };

  it('divides its flow as worked out', () => {
    expectClose(solution.flows[1] ?? Number.NaN, run * LITRE_PER_HOUR, relative);
    expectClose(solution.flows[2] ?? Number.NaN, side * LITRE_PER_HOUR, relative);
    expectClose(solution.rootHead, head, relative);
  });

  it('loses at each branch what was worked out', () => {
    expectClose(headAtTee(network.branches, solution.flows, 1), runHead, relative);
    expectClose(headAtTee(network.branches, solution.flows, 2), sideHead, relative);
  });
});

describe('a straight run', () => {
  it('goes by the flow of all sides together and by the widest of them', () => {
    const network = networkOf(
      tee(6, [
        { boreRatio: 0.5, throttle: 2 },
        { boreRatio: 0.9, throttle: 8 },
      ]),
    );
    const flow = 2e-3;
    const { flows } = solved(network, flow);
    const share = ((flows[2] ?? 0) + (flows[3] ?? 0)) / flow;
    const factor = share <= 0.5 ? 2 : 0.3;
    const expected = factor * (2 * share - 1) * share ** 2 * velocityHead(flow, LEG);
    expectClose(headAtTee(network.branches, flows, 1), expected, { relative: 1e-9 });
  });

  it('loses nothing beside a side as wide as the leg, and nothing beside sides that run back', () => {
    const equal = networkOf(tee(6, [{ boreRatio: 1, throttle: 2 }]));
    expect(equal.branches[1]?.teeLoss).toBeNull();
    const back = networkOf(
      loopOf({
        run: [pipe(0.05, 1)],
        split: 'tee-90',
        branches: [outlet('on'), outlet('side', { staticHead: 3, exit: 'submerged' }, [pipe(0.03, 1)])],
      }),
    );
    const { flows } = solved(back, 1e-4);
    expect(flows[2]).toBeLessThan(0);
    expect(headAtTee(back.branches, flows, 1)).toBe(0);
  });

  it('has the slopes that finite differences give', () => {
    const discharge: Branch = {
      run: [pipe(0.05, 2)],
      split: 'tee-90',
      branches: [
        { run: [pipe(0.05, 1)], split: 'tee-90', branches: [outlet('a'), outlet('b', {}, [pipe(0.03, 2)])] },
        outlet('c', {}, [pipe(0.042, 1)]),
        outlet('d', { nozzleDiameter: 0.008 }, [pipe(0.02, 1)]),
      ],
    };
    const system = pipeworkSystem(networkOf(loopOf(discharge)));
    for (const flow of [3e-4, 1e-3, 4e-3]) {
      const step = 1e-4 * flow;
      const [low, mid, high] = [flow - step, flow, flow + step].map((one) => system.stateAt(one));
      if (low === undefined || mid === undefined || high === undefined) throw new Error('three states');
      expectClose(mid.slope, (high.head - low.head) / (2 * step), { relative: 1e-5 });
      for (const [i, slope] of mid.outletSlopes.entries()) {
        const difference = (high.outletFlows[i] ?? Number.NaN) - (low.outletFlows[i] ?? Number.NaN);
        expectClose(slope, difference / (2 * step), { relative: 1e-4, absolute: 1e-6 });
      }
    }
  });

  it('is found although its side takes nearly all', () => {
    // The straight run lies in air just below the head that the sides leave: several balances may exist there.
    for (let place = 0; place <= 40; place += 1) {
      const network = networkOf(
        loopOf({
          run: [pipe(0.05, 1)],
          split: 'tee-90',
          branches: [
            outlet('on', { staticHead: 0.3 + place / 40, nozzleDiameter: 0.03 }, [pipe(0.05, 0.2)]),
            outlet('side', { nozzleDiameter: 0.03 }, [pipe(0.04, 0.5)]),
          ],
        }),
      );
      expect(largestResidual(network, solved(network, 2e-3))).toBeLessThan(1e-9);
    }
  });
});
