/** The parts of the loss at a tee by hand. */
import { describe, expect, it } from 'vitest';
import {
  combinedHead,
  sideHead,
  teeBranchLoss,
  teeHead,
  teeLossTimes,
} from '../../../models/network/tee-branch-loss.ts';
import { expectClose } from '../../expect-close.ts';

const GRAVITY = 9.80665;
const EXACT = { relative: 1e-12 };
const velocityHead = (flow: number, bore: number): number =>
  (flow / ((Math.PI / 4) * bore ** 2)) ** 2 / (2 * GRAVITY);

describe('the loss of a side branch at its tee', () => {
  const loss = teeBranchLoss({ legBore: 0.05, sideBore: 0.03, multiplier: 1 });

  it('is the velocity head of the leg and 0.6 of its own', () => {
    expectClose(combinedHead(loss, 3e-3), velocityHead(3e-3, 0.05), EXACT);
    expectClose(sideHead(loss, 1e-3), 0.6 * velocityHead(1e-3, 0.03), EXACT);
    expectClose(
      teeHead(loss, { combinedFlow: 3e-3, sideFlow: 1e-3 }),
      velocityHead(3e-3, 0.05) + 0.6 * velocityHead(1e-3, 0.03),
      EXACT,
    );
  });

  it('has no part of a combined flow that runs backwards', () => {
    expect(combinedHead(loss, -3e-3)).toBe(0);
    expect(combinedHead(loss, 0)).toBe(0);
  });

  it('is a gain of its own part alone where it runs backwards itself', () => {
    expectClose(sideHead(loss, -1e-3), -0.6 * velocityHead(1e-3, 0.03), EXACT);
    expectClose(
      teeHead(loss, { combinedFlow: 3e-3, sideFlow: -1e-3 }),
      -0.6 * velocityHead(1e-3, 0.03),
      EXACT,
    );
  });

  it('is multiplied as a whole', () => {
    const twice = teeBranchLoss({ legBore: 0.05, sideBore: 0.03, multiplier: 2 });
    const again = teeLossTimes(loss, 2);
    for (const { combined, side } of [twice, again]) {
      expectClose(combined, 2 * loss.combined, EXACT);
      expectClose(side, 2 * loss.side, EXACT);
    }
  });
});
