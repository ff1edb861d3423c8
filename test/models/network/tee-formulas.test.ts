/** The parts of the loss at a tee by hand. */
import { describe, expect, it } from 'vitest';
import {
  headToOpen,
  type TeeBranchLoss,
  type TeeFlows,
  teeHead,
  teeLosses,
  teeLossTimes,
} from '../../../models/network/tee-branch-loss.ts';
import { expectClose } from '../../expect-close.ts';

const GRAVITY = 9.80665;
const EXACT = { relative: 1e-12 };
const LEG = 0.05;
const FLOWS: TeeFlows = { combined: 3e-3, own: 1e-3, sides: 1e-3 };
const velocityHead = (flow: number, bore: number): number =>
  (flow / ((Math.PI / 4) * bore ** 2)) ** 2 / (2 * GRAVITY);

function sideOf(bore: number, multiplier = 1): TeeBranchLoss {
  const [, side] = teeLosses({ legBore: LEG, sideBores: [bore], multiplier });
  if (side === undefined || side === null) throw new Error('a side loses at its tee');
  return side;
}

function runOf(bore: number): TeeBranchLoss | null {
  const [run = null] = teeLosses({ legBore: LEG, sideBores: [bore], multiplier: 1 });
  return run;
}

describe('the loss of a side branch at its tee', () => {
  it('is the velocity head of the leg and 0.6 of its own where it is as wide', () => {
    const expected = velocityHead(3e-3, LEG) + 0.6 * velocityHead(1e-3, LEG);
    expectClose(teeHead(sideOf(LEG), FLOWS, 'outward').head, expected, EXACT);
    const wider = velocityHead(3e-3, LEG) + 0.6 * velocityHead(1e-3, 0.06);
    expectClose(teeHead(sideOf(0.06), FLOWS, 'outward').head, wider, EXACT);
  });

  it('is both velocity heads where it is narrow', () => {
    const expected = velocityHead(3e-3, LEG) + velocityHead(1e-3, 0.03);
    expectClose(teeHead(sideOf(0.03), FLOWS, 'outward').head, expected, EXACT);
  });

  it('grows with the share of a side that is a little narrower', () => {
    const expected = (1 + 0.3 / 9) * (velocityHead(3e-3, LEG) + 0.3 * velocityHead(1e-3, 0.045));
    expectClose(teeHead(sideOf(0.045), FLOWS, 'outward').head, expected, EXACT);
    // A share counts as 1 at most, without a combined flow too.
    for (const combined of [5e-4, 0, -1e-3]) {
      const alone = 1.3 * (velocityHead(Math.max(0, combined), LEG) + 0.3 * velocityHead(1e-3, 0.045));
      expectClose(teeHead(sideOf(0.045), { ...FLOWS, combined }, 'outward').head, alone, EXACT);
    }
  });

  it('is a gain of 0.6 of its own velocity head where it runs backwards', () => {
    for (const bore of [LEG, 0.045, 0.03]) {
      const { head } = teeHead(sideOf(bore), { ...FLOWS, own: -1e-3 }, 'inward');
      expectClose(head, -0.6 * velocityHead(1e-3, bore), EXACT);
    }
  });

  it('is held at rest by the velocity head of a combined flow that runs outward', () => {
    expectClose(headToOpen(sideOf(0.03), FLOWS), velocityHead(3e-3, LEG), EXACT);
    expect(headToOpen(sideOf(0.03), { ...FLOWS, combined: -3e-3 })).toBe(0);
    expect(headToOpen(null, FLOWS)).toBe(0);
  });

  it('is multiplied as a whole', () => {
    for (const bore of [LEG, 0.045, 0.03]) {
      const once = teeHead(sideOf(bore), FLOWS, 'outward').head;
      for (const twice of [sideOf(bore, 2), teeLossTimes(sideOf(bore), 2)]) {
        expectClose(teeHead(twice, FLOWS, 'outward').head, 2 * once, EXACT);
      }
    }
  });
});

describe('the loss of a straight run at its tee', () => {
  it('goes by the share of the sides, 0.4 q^2 next to a narrow one', () => {
    const run = runOf(0.03);
    if (run === null) throw new Error('a straight run loses next to a narrow side');
    expectClose(teeHead(run, FLOWS, 'outward').head, 0.4 * velocityHead(1e-3, LEG), EXACT);
    expectClose(headToOpen(run, FLOWS), 0.4 * velocityHead(1e-3, LEG), EXACT);
    expectClose(teeHead(teeLossTimes(run, 3), FLOWS, 'outward').head, 1.2 * velocityHead(1e-3, LEG), EXACT);
  });

  it('is a gain next to a wider side that takes under half', () => {
    const run = runOf(0.04);
    if (run === null) throw new Error('a straight run gains next to a wide side');
    const expected = 2 * (2 / 3 - 1) * velocityHead(1e-3, LEG);
    expectClose(teeHead(run, FLOWS, 'outward').head, expected, EXACT);
  });

  it('is nothing next to a side as wide as the leg, and where no side runs outward', () => {
    expect(runOf(LEG)).toBeNull();
    const run = runOf(0.03);
    if (run === null) throw new Error('a straight run loses next to a narrow side');
    expect(teeHead(run, { ...FLOWS, sides: 0 }, 'outward').head).toBe(0);
    expect(teeHead(run, { ...FLOWS, combined: 0 }, 'outward').head).toBe(0);
  });
});

describe('the losses of a tee', () => {
  it('are those of sides alone where no pipe gives the bore of the leg, each as wide as that', () => {
    const [run, side] = teeLosses({ legBore: null, sideBores: [0.03], multiplier: 1 });
    expect(run).toBeNull();
    expect(side).toMatchObject({ part: 'side', law: { growth: 0, own: 0.6 } });
  });

  it('are none without sides', () => {
    expect(teeLosses({ legBore: LEG, sideBores: [], multiplier: 1 })).toEqual([null]);
  });
});
