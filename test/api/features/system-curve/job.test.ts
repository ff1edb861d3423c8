/** Which system curves are long jobs. */
import { expect, it } from 'vitest';
import { systemCurveJob } from '../../../../api/features/system-curve/job.ts';
import { flume, manifold } from '../../question/sized-loops.ts';

it('the job of a system curve is long on large loops alone', () => {
  const isLong = (loop: typeof flume, points: number) => systemCurveJob.isLong(loop, { flow: null, points });
  expect([isLong(flume, 21), isLong(manifold(100), 500)]).toEqual([false, true]);
});
