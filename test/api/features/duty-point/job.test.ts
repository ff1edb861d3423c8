/** Which duty points are long jobs. */
import { expect, it } from 'vitest';
import { dutyPointJob } from '../../../../api/features/duty-point/job.ts';
import { DEFAULT_LIMITS } from '../../../../models/loop/limits.ts';
import { candidate, flume, manifold } from '../../question/sized-loops.ts';

it('the job of a duty point is long on large loops alone', () => {
  const work = {
    candidate,
    setting: 80,
    limits: DEFAULT_LIMITS,
    running: { price: null, hoursPerDay: 24, elevation: 0 },
    reachVelocity: null,
  };
  expect([flume, manifold(2000)].map((loop) => dutyPointJob.isLong(loop, work))).toEqual([false, true]);
});
