/** Velocities at part-clogged screens against worked figures. */
import { describe, it } from 'vitest';
import { expectClose } from '../../expect-close.ts';
import { LH, STATED } from './cases.ts';
import { cylinderVelocities } from './screen.ts';

// Figures of a separate calculation.
describe('a cylinder drawn from one end', () => {
  it.each([
    [0.06, 0.5, 0.35, 0.5, 7533.14, 0.126872, 4.94975, 0.628045],
    [0.09, 0.2, 0.3, 0, 3000, 0.0491219, 2.26274, 0.113584],
    [0.09, 0.2, 0.3, 0.5, 3000, 0.0982438, 1.13137, 0.136971],
    [0.11, 0.25, 0.3, 0.5, 6000, 0.12861, 1.157084, 0.181459],
  ])('of %d m by %d m, open %d, clogged %d, at %d L/h', (...row) => {
    const [diameter, length, openFraction, clogged, flow, mean, y, peak] = row;
    const found = cylinderVelocities({ diameter, length, openFraction, clogged }, flow * LH);
    expectClose(found.mean, mean, STATED);
    expectClose(found.y, y, STATED);
    expectClose(found.peak, peak, STATED);
  });
});
