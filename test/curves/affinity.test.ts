import fc from 'fast-check';
import { describe, it } from 'vitest';
import { atSpeed, toFullSpeed } from '../../curves/affinity.ts';
import { expectClose } from '../expect-close.ts';
import { SPEED_CHANGES } from '../reference/pump-curves.ts';

describe('affinity laws', () => {
  for (const { speeds, flow, head, expected, tolerance, source } of SPEED_CHANGES) {
    it(`carry ${flow}, ${head} from ${speeds.from} to ${speeds.to} rpm (${source})`, () => {
      const forward = atSpeed({ flow, head, speedRatio: speeds.to / speeds.from });
      expectClose(forward.flow, expected.flow, { relative: tolerance });
      expectClose(forward.head, expected.head, { relative: tolerance });
      const back = toFullSpeed({ flow, head, speedRatio: speeds.from / speeds.to });
      expectClose(back.flow, expected.flow, { relative: tolerance });
      expectClose(back.head, expected.head, { relative: tolerance });
    });
  }

  it('keep H/Q^2: a point moves along its parabola through the origin', () => {
    const positive = fc.double({ min: 0.01, max: 10, noNaN: true });
    fc.assert(
      fc.property(positive, positive, positive, (flow, head, speedRatio) => {
        const moved = atSpeed({ flow, head, speedRatio });
        expectClose(moved.head / moved.flow ** 2, head / flow ** 2, { relative: 1e-12 });
        const back = toFullSpeed({ ...moved, speedRatio });
        expectClose(back.flow, flow, { relative: 1e-12 });
        expectClose(back.head, head, { relative: 1e-12 });
      }),
      { seed: 1 },
    );
  });
});
