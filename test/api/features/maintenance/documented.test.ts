/** What the document promises of routine checks, whatever is sent. */
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { changed, pointersOf } from '../../changed.ts';
import { type CheckAnswer, documentValidator } from '../../document-validator.ts';
import { task, type Upkeep, upkeep } from './upkeep.ts';

let lab: Upkeep;
let check: CheckAnswer;
let id: string;
beforeAll(async () => {
  lab = await upkeep();
  check = await documentValidator(lab);
  id = await lab.addTask();
  await lab.complete(id, '2026-01-10T10:00:00Z', { note: 'clean' });
});

const TASKS = '/v1/maintenance-tasks';

describe('an answer about checks', () => {
  it.each([
    ['get', TASKS, () => TASKS, undefined],
    ['get', `${TASKS}/{maintenanceTaskId}`, () => `${TASKS}/${id}`, undefined],
    ['get', `${TASKS}/{maintenanceTaskId}/completions`, () => `${TASKS}/${id}/completions`, undefined],
    ['post', TASKS, () => TASKS, () => task(lab.loop)],
    ['post', TASKS, () => TASKS, () => ({})],
    [
      'post',
      `${TASKS}/{maintenanceTaskId}/completions`,
      () => `${TASKS}/${id}/completions`,
      () => ({ at: '2026-01-11T10:00:00Z' }),
    ],
    ['post', '/v1/loops/{loopId}/starter-tasks', () => `/v1/loops/${lab.loop}/starter-tasks`, () => ({})],
  ])('is as the document says: %s %s', async (method, path, address, body) => {
    const response = await lab.send(method.toUpperCase(), address(), body?.());
    expect(check({ path, method, status: response.status }, await response.json())).toBe('');
  });
});

/** Values that are wrong nearly everywhere, and some that are nearly right. */
const odd = fc.oneof(
  fc.constantFrom<unknown>(undefined, null, true, '', [], {}, 'P', 'P1', 'PT1M', 'P1M', 'P0Y', 'P9Y12M'),
  fc.constantFrom<unknown>(
    '2026-13-01',
    '0000-01-01',
    '9999-12-31',
    '2026-01-01T00:00:00+24:00',
    '__proto__',
  ),
  fc.constantFrom(0, -0, -1, 0.5, 1e9, 1e300, 5e-324),
  fc.string({ unit: 'binary', maxLength: 12 }),
  fc.jsonValue({ maxDepth: 2 }),
);

describe('a body with members changed at random', () => {
  const mutated = (document: unknown): fc.Arbitrary<unknown> =>
    fc.array(fc.tuple(fc.nat(), odd), { minLength: 1, maxLength: 3 }).map((changes) =>
      changes.reduce<unknown>((value, [place, oddValue]) => {
        const pointers = pointersOf(value);
        return changed(value ?? null, pointers[place % pointers.length] ?? '', oddValue) ?? null;
      }, document),
    );

  it.each([
    [TASKS, () => TASKS, () => ({ ...task(lab.loop), kind: 'other' })],
    [
      `${TASKS}/{maintenanceTaskId}/completions`,
      () => `${TASKS}/${id}/completions`,
      () => ({ at: '2026-01-12T10:00:00Z', minutes: 5, note: 'a note' }),
    ],
    [
      '/v1/loops/{loopId}/starter-tasks',
      () => `/v1/loops/${lab.loop}/starter-tasks`,
      () => ({ firstDue: '2026-02-01' }),
    ],
  ])('is refused or kept, and never a fault of the service: %s', async (path, address, document) => {
    await fc.assert(
      fc.asyncProperty(mutated(document()), async (body) => {
        const response = await lab.send('POST', address(), body ?? null);
        expect(response.status).toBeLessThan(500);
        expect(check({ path, method: 'post', status: response.status }, await response.json())).toBe('');
      }),
      { seed: 1, numRuns: 150 },
    );
    expect((await lab.send('GET', `${TASKS}?limit=200`)).status).toBe(200);
    expect((await lab.send('GET', '/v1/maintenance-tasks.ics')).status).toBe(200);
  });
});
