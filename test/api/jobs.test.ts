/** A worker thread finds every job by its name. */
import { expect, it } from 'vitest';
import { JOBS, jobNamed } from '../../api/jobs.ts';

it('no two jobs share a name', () => {
  expect(new Set(JOBS.map(({ name }) => name)).size).toBe(JOBS.length);
  for (const job of JOBS) expect(jobNamed(job.name)).toBe(job);
});

it('a name that no job has is a bug of the caller', () => {
  expect(() => jobNamed('none')).toThrow('there is no job none');
});
