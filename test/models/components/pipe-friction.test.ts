/** Pipe friction against worked examples and its own laws. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pipeFriction } from '../../../models/components/pipe-friction.ts';
import { GRAVITY } from '../../../models/physics/gravity.ts';
import { reynoldsNumber } from '../../../models/physics/reynolds-number.ts';
import { expectClose } from '../../expect-close.ts';
import { HEAD_LOSSES } from '../../reference/single-pipes.ts';

const PVC = { diameter: 0.0375, length: 10, roughness: 1.5e-6, kinematicViscosity: 9.37e-7 };

/** Flow [m3/s] at a Reynolds number. */
const flowAt = (reynolds: number, pipe: { diameter: number; kinematicViscosity: number }) =>
  (reynolds * Math.PI * pipe.diameter * pipe.kinematicViscosity) / 4;

const somePipe = fc.record({
  diameter: fc.double({ min: 0.01, max: 0.15, noNaN: true }),
  length: fc.double({ min: 0.1, max: 50, noNaN: true }),
  roughness: fc.double({ min: 0, max: 3e-4, noNaN: true }),
  kinematicViscosity: fc.double({ min: 6e-7, max: 2e-6, noNaN: true }),
});
const someReynolds = fc.double({ min: Math.log(1), max: Math.log(1e6), noNaN: true }).map(Math.exp);

describe('pipe friction', () => {
  it.each(HEAD_LOSSES)('loses $expected m ($source)', (row) => {
    expectClose(pipeFriction(row).lossAt(row.flow).head, row.expected, { relative: row.tolerance });
  });

  it('asks for the power that the worked example prints (Cengel and Cimbala, example 8-3: 579 W)', () => {
    const pipe = { diameter: 0.05, length: 60, roughness: 2e-6, kinematicViscosity: 1.138e-3 / 999 };
    const { head } = pipeFriction(pipe).lossAt(6e-3);
    expectClose(999 * GRAVITY * head * 6e-3, 579, { relative: 0.005 });
  });

  it('loses 5.657 times the flow in twice the bore, at one head, where the factor is the same (D^2.5)', () => {
    const rough = { length: 36, kinematicViscosity: 1e-12 };
    const small = pipeFriction({ ...rough, diameter: 0.025, roughness: 2.5e-5 });
    const large = pipeFriction({ ...rough, diameter: 0.05, roughness: 5e-5 });
    expectClose(large.lossAt(2 ** 2.5 * 1e-3).head, small.lossAt(1e-3).head, { relative: 1e-6 });
  });

  it('loses nothing at rest, with the slope of laminar flow', () => {
    const { head, slope } = pipeFriction(PVC).lossAt(0);
    expect(head).toBe(0);
    expectClose(slope, (128 * 9.37e-7 * 10) / (Math.PI * GRAVITY * 0.0375 ** 4), { relative: 1e-14 });
  });

  it('is the line of Hagen-Poiseuille up to Re 2000', () => {
    const friction = pipeFriction(PVC);
    const flow = flowAt(1999, PVC);
    expectClose(friction.lossAt(flow).head, friction.lossAt(0).slope * flow, { relative: 1e-14 });
  });

  it('is odd in flow', () => {
    fc.assert(
      fc.property(somePipe, someReynolds, (pipe, reynolds) => {
        const friction = pipeFriction(pipe);
        const flow = flowAt(reynolds, pipe);
        expect(friction.lossAt(-flow).head).toBe(-friction.lossAt(flow).head);
        expect(friction.lossAt(-flow).slope).toBe(friction.lossAt(flow).slope);
      }),
      { seed: 1 },
    );
  });

  it('rises with flow', () => {
    fc.assert(
      fc.property(somePipe, someReynolds, (pipe, reynolds) => {
        const friction = pipeFriction(pipe);
        const flow = flowAt(reynolds, pipe);
        expect(friction.lossAt(flow * 1.001).head).toBeGreaterThan(friction.lossAt(flow).head);
        expect(friction.lossAt(flow).slope).toBeGreaterThan(0);
      }),
      { seed: 1, numRuns: 500 },
    );
  });

  it('states the slope that a finite difference finds', () => {
    fc.assert(
      fc.property(somePipe, someReynolds, (pipe, reynolds) => {
        const friction = pipeFriction(pipe);
        const flow = flowAt(reynolds, pipe);
        const step = flow * 1e-5;
        const difference =
          (friction.lossAt(flow + step).head - friction.lossAt(flow - step).head) / (2 * step);
        expectClose(friction.lossAt(flow).slope, difference, { relative: 2e-6 });
      }),
      { seed: 1, numRuns: 500 },
    );
  });

  it.each([2000, 4000])('has one value and one slope on both sides of Re %d', (limit) => {
    const friction = pipeFriction({ ...PVC, roughness: 1e-4 });
    const below = friction.lossAt(flowAt(limit * (1 - 1e-9), PVC));
    const above = friction.lossAt(flowAt(limit * (1 + 1e-9), PVC));
    expectClose(above.head, below.head, { relative: 1e-8 });
    expectClose(above.slope, below.slope, { relative: 1e-6 });
  });

  it('loses in proportion to length', () => {
    const flow = 1.5e-3;
    const twice = pipeFriction({ ...PVC, length: 20 }).lossAt(flow).head;
    expectClose(twice, 2 * pipeFriction(PVC).lossAt(flow).head, { relative: 1e-14 });
    expect(pipeFriction({ ...PVC, length: 0 }).lossAt(flow)).toEqual({ head: 0, slope: 0 });
  });
});

describe('Reynolds number', () => {
  it('is V D/nu, whichever way the water runs (Cengel and Cimbala, example 8-3, Re 134 300 from memory)', () => {
    const pipe = { diameter: 0.05, kinematicViscosity: 1.138e-3 / 999 };
    expectClose(reynoldsNumber({ ...pipe, flow: 6e-3 }), 134_300, { relative: 2e-3 });
    expect(reynoldsNumber({ ...pipe, flow: -6e-3 })).toBe(reynoldsNumber({ ...pipe, flow: 6e-3 }));
  });
});
