import { parse } from 'csv-parse/sync';
import { beforeEach, describe, expect, it } from 'vitest';
import { type Upkeep, upkeep } from '../../features/maintenance/upkeep.ts';

let lab: Upkeep;
let id: string;
let path: string;
beforeEach(async () => {
  lab = await upkeep();
  lab.setClock('2026-06-15T12:00:00Z');
  id = await lab.addTask();
  path = `/v1/maintenance-tasks/${id}/completions`;
});

const taskNow = () => lab.read(`/v1/maintenance-tasks/${id}`);

describe('a completion', () => {
  it('is read back as it was entered, where Location says, and moves the check on', async () => {
    const response = await lab.complete(id, '2026-06-10T10:30:00+01:00', { minutes: 12, note: 'a snail' });
    expect(response.status).toBe(201);
    const answer = await response.json();
    expect(answer).toMatchObject({
      task: id,
      at: '2026-06-10T09:30:00.000Z',
      day: '2026-06-10',
      minutes: 12,
      note: 'a snail',
      nextDue: '2026-07-10',
    });
    expect(await lab.read(response.headers.get('location') ?? '')).toEqual(answer);
    expect(await taskNow()).toMatchObject({
      version: 1,
      nextDue: '2026-07-10',
      due: false,
      lastDone: '2026-06-10T09:30:00.000Z',
      completionCount: 1,
    });
  });

  it('needs no more than its instant', async () => {
    const response = await lab.complete(id, '2026-06-10T10:30:00Z');
    const answer = await response.json();
    expect(Object.keys(answer)).not.toContain('minutes');
    expect(Object.keys(answer)).not.toContain('note');
  });

  it('may be entered late: the latest counts', async () => {
    await lab.complete(id, '2026-06-10T10:00:00Z');
    const late = await lab.complete(id, '2026-05-01T10:00:00Z');
    expect(await late.json()).toMatchObject({ nextDue: '2026-07-10' });
    expect(await taskNow()).toMatchObject({ completionCount: 2, lastDone: '2026-06-10T10:00:00.000Z' });
  });

  it('ends the count of months at their last day', async () => {
    await lab.complete(id, '2026-05-31T10:00:00Z');
    expect(await taskNow()).toMatchObject({ nextDue: '2026-06-30' });
  });

  // 23:30 in UTC is half past midnight of the next day in Lisbon in summer.
  it('counts by the day that the clocks of the site showed', async () => {
    const response = await lab.complete(id, '2026-06-09T23:30:00Z');
    expect(await response.json()).toMatchObject({ day: '2026-06-10', nextDue: '2026-07-10' });
  });

  it('sent again is the same one', async () => {
    const facts = { minutes: 12, note: 'a snail' };
    const first = await (await lab.complete(id, '2026-06-10T10:00:00Z', facts)).json();
    const again = await lab.complete(id, '2026-06-10T11:00:00+01:00', facts);
    expect(again.status).toBe(201);
    expect(await again.json()).toEqual(first);
    expect(await taskNow()).toMatchObject({ completionCount: 1 });
  });

  it('of the same instant that says otherwise is refused', async () => {
    await lab.complete(id, '2026-06-10T10:00:00Z', { minutes: 12 });
    const response = await lab.complete(id, '2026-06-10T10:00:00Z', { minutes: 13 });
    expect(response.status).toBe(422);
    expect((await response.json()).errors[0].pointer).toBe('/at');
  });

  it('taken away leaves the check as it was', async () => {
    const before = await taskNow();
    const { id: completion } = await (await lab.complete(id, '2026-06-10T10:00:00Z')).json();
    const remove = (headers = {}) => lab.send('DELETE', `${path}/${completion}`, undefined, headers);
    expect((await remove()).status).toBe(428);
    expect((await remove({ 'if-match': '"2-metric"' })).status).toBe(412);
    expect((await remove({ 'if-match': '"1-metric"' })).status).toBe(204);
    expect((await remove({ 'if-match': '*' })).status).toBe(404);
    expect(await taskNow()).toEqual(before);
  });

  it('is of its check alone', async () => {
    const { id: completion } = await (await lab.complete(id, '2026-06-10T10:00:00Z')).json();
    const other = await lab.addTask();
    const elsewhere = `/v1/maintenance-tasks/${other}/completions/${completion}`;
    expect((await lab.send('GET', elsewhere)).status).toBe(404);
    expect((await lab.send('DELETE', elsewhere, undefined, { 'if-match': '*' })).status).toBe(404);
  });

  it.each<[object, string]>([
    [{ at: undefined }, '/at'],
    [{ at: '2026-06-10T10:00:00' }, '/at'],
    [{ at: '2026-06-10' }, '/at'],
    [{ at: '2026-06-15T12:02:00Z' }, '/at'],
    [{ at: '2027-01-01T00:00:00Z' }, '/at'],
    [{ at: '1600-01-01T00:00:00Z' }, '/at'],
    [{ at: 1765000000 }, '/at'],
    [{ minutes: -1 }, '/minutes'],
    [{ minutes: '5' }, '/minutes'],
    [{ note: '' }, '/note'],
    [{ note: 'x'.repeat(2001) }, '/note'],
    [{ note: 'nul \0' }, '/note'],
    [{ by: 'someone' }, '/by'],
  ])('with a fault is refused where the fault is: %j', async (facts, pointer) => {
    const body = { at: '2026-06-10T10:00:00Z', ...facts };
    const response = await lab.send('POST', path, body);
    expect(response.status).toBe(422);
    const { errors } = await response.json();
    expect(errors.map((error: { pointer: string }) => error.pointer)).toEqual([pointer]);
    expect(await taskNow()).toMatchObject({ completionCount: 0 });
  });

  it('needs a check that there is', async () => {
    expect((await lab.complete('none', '2026-06-10T10:00:00Z')).status).toBe(404);
    expect((await lab.send('GET', '/v1/maintenance-tasks/none/completions')).status).toBe(404);
  });
});

describe('the completions of a check', () => {
  beforeEach(async () => {
    for (const day of ['2026-05-01', '2026-03-01', '2026-04-01'])
      await lab.complete(id, `${day}T10:00:00Z`, { note: `of ${day}` });
  });

  it('come in the order of their instants, page by page', async () => {
    const days = (items: readonly { day: string }[]) => items.map(({ day }) => day);
    const first = await lab.read(`${path}?limit=2`);
    expect(days(first.items)).toEqual(['2026-03-01', '2026-04-01']);
    const second = await lab.read(`${path}?limit=2&cursor=${first.next}`);
    expect([days(second.items), second.next]).toEqual([['2026-05-01'], null]);
  });

  it('come as a table', async () => {
    const response = await lab.send('GET', `${path}?format=csv`);
    const rows: Record<string, string>[] = parse(await response.text(), { columns: true });
    expect(rows.map(({ at, note }) => [at, note])).toEqual([
      ['2026-03-01T10:00:00.000Z', 'of 2026-03-01'],
      ['2026-04-01T10:00:00.000Z', 'of 2026-04-01'],
      ['2026-05-01T10:00:00.000Z', 'of 2026-05-01'],
    ]);
  });

  it('refuse a query that they do not know', async () => {
    expect((await lab.send('GET', `${path}?name=x`)).status).toBe(422);
    expect((await lab.send('GET', `${path}?limit=0`)).status).toBe(422);
  });

  it('stay when the check is written anew, which is due by its new interval', async () => {
    const answer = await taskNow();
    const put = { ...answer, every: 'P3M' };
    const response = await lab.send('PUT', `/v1/maintenance-tasks/${id}`, put, { 'if-match': '"1-metric"' });
    expect(await response.json()).toMatchObject({ nextDue: '2026-08-01', completionCount: 3, version: 2 });
  });
});
