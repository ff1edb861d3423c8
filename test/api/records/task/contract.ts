/** What a store does with routine checks and their completions. */

import { expect, it } from 'vitest';
import type { Completion } from '../../../../api/records/completion/contract.ts';
import { COMPLETIONS } from '../../../../api/records/completion/kind.ts';
import { LOOPS } from '../../../../api/records/loop/kind.ts';
import { PUMPS } from '../../../../api/records/pump/kind.ts';
import { TASKS } from '../../../../api/records/task/kind.ts';
import type { Store } from '../../../../api/store/store.ts';
import { dayOfText } from '../../../../models/calendar/civil-text.ts';
import type { MaintenanceTask } from '../../../../models/maintenance/task.ts';
import { expectClose } from '../../../expect-close.ts';
import { A, B, insertPump } from '../../store/contract/two-sites.ts';
import { exampleLoop, T0 } from '../../store/examples.ts';

const DAY = 86_400_000;

export const exampleTask = (
  facts: Partial<Omit<MaintenanceTask, 'loop' | 'pump'>> = {},
): Extract<MaintenanceTask, { readonly loop: string }> => ({
  title: 'Clean the intake screen',
  kind: 'screen-cleaning',
  every: { weeks: 1 },
  minutes: 10,
  parts: 1 / 3,
  firstDue: '2026-01-05',
  ...facts,
  loop: 'l1',
});

const dayOf = (text: string): number => dayOfText(text) ?? Number.NaN;

const done = (text: string, facts: Partial<Completion> = {}): Completion => ({
  at: dayOf(text) * DAY + 1,
  day: text,
  ...facts,
});

export function maintenance(store: () => Store): void {
  const withLoop = () =>
    store()
      .of(A, LOOPS)
      .insert({ id: 'l1', document: exampleLoop({ name: 'Flume' }), now: T0 });
  const insert = (id: string, document: MaintenanceTask, { siteId = A, now = T0 } = {}) =>
    store().of(siteId, TASKS).insert({ id, document, now });
  const complete = (id: string, document: Completion, taskId = 't1') =>
    store()
      .of(A, COMPLETIONS)
      .insert({ taskId, id, document, now: T0 + 7 });
  const task = async (id = 't1') => await store().of(A, TASKS).get(id);

  it('gives a task back as written, in its site alone', async () => {
    await withLoop();
    const inserted = await insert('t1', exampleTask());
    const record = {
      id: 't1',
      version: 1,
      name: 'Clean the intake screen',
      document: exampleTask(),
      progress: {
        nextDue: dayOf('2026-01-05'),
        lastDone: null,
        completions: 0,
        changes: 0,
        changedAt: T0,
      },
    };
    expect(inserted).toMatchObject({ outcome: 'inserted', record });
    expect(await task()).toMatchObject(record);
    expect(await store().of(B, TASKS).get('t1')).toBeUndefined();
  });

  it('writes several tasks or none', async () => {
    await withLoop();
    const [good, bad] = [exampleTask(), { ...exampleTask(), loop: 'none' }];
    const several = (documents: readonly MaintenanceTask[]) =>
      store()
        .of(A, TASKS)
        .insertAll({
          now: T0,
          tasks: documents.map((document, place) => ({ id: `t${place}`, document })),
        });
    expect(await several([good, bad])).toEqual({ outcome: 'unknown-loop', loopId: 'none' });
    expect(await store().of(A, TASKS).all({})).toEqual({ outcome: 'all', records: [] });
    expect(await several([])).toEqual({ outcome: 'inserted', records: [] });
    expect(await several([good, good, good])).toMatchObject({
      records: [{ id: 't0' }, { id: 't1' }, { id: 't2' }],
    });
  });

  it('knows no loop and no pump of another site', async () => {
    await withLoop();
    await insertPump(store(), 'p1', { siteId: B });
    const ofPump = { ...exampleTask(), loop: undefined, pump: 'p1' };
    expect(await insert('t1', ofPump)).toEqual({ outcome: 'unknown-pump', pumpId: 'p1' });
    expect(await insert('t1', exampleTask(), { siteId: B })).toEqual({
      outcome: 'unknown-loop',
      loopId: 'l1',
    });
    await insert('t1', exampleTask());
    const replacement = { id: 't1', document: ofPump, now: T0, expectedVersion: 1 };
    expect(await store().of(A, TASKS).replace(replacement)).toEqual({
      outcome: 'unknown-pump',
      pumpId: 'p1',
    });
    expect(await task()).toMatchObject({ version: 1, progress: { changes: 0 } });
  });

  it('replaces and deletes by version', async () => {
    await withLoop();
    await insert('t1', exampleTask());
    const replacement = {
      id: 't1',
      document: exampleTask({ title: 'Other', every: { months: 1 } }),
      now: T0 + 5,
    };
    expect(
      await store()
        .of(A, TASKS)
        .replace({ ...replacement, expectedVersion: 1 }),
    ).toMatchObject({
      outcome: 'replaced',
      record: { version: 2, name: 'Other', progress: { changes: 1, changedAt: T0 + 5 } },
    });
    const stale = { outcome: 'stale', version: 2 };
    expect(
      await store()
        .of(A, TASKS)
        .replace({ ...replacement, expectedVersion: 1 }),
    ).toEqual(stale);
    const deletion = { id: 't1' };
    expect(
      await store()
        .of(A, TASKS)
        .delete({ ...deletion, expectedVersion: 1 }),
    ).toEqual(stale);
    expect(
      await store()
        .of(A, TASKS)
        .delete({ ...deletion, expectedVersion: 2 }),
    ).toEqual({
      outcome: 'deleted',
    });
    const missing = { outcome: 'missing' };
    expect(
      await store()
        .of(A, TASKS)
        .delete({ ...deletion, expectedVersion: 'any' }),
    ).toEqual(missing);
    expect(
      await store()
        .of(A, TASKS)
        .replace({ ...replacement, expectedVersion: 'any' }),
    ).toEqual(missing);
  });

  it('lists by loop, by pump, by title and by the day that is due', async () => {
    await withLoop();
    await insertPump(store(), 'p1');
    await insert('t1', exampleTask());
    await insert('t2', exampleTask({ title: 'Later', kind: 'union-check', firstDue: '2026-02-01' }), {
      now: T0 + 1,
    });
    await insert('t3', { ...exampleTask(), loop: undefined, pump: 'p1' }, { now: T0 + 2 });
    const ids = async (choice: object) => {
      const page = await store()
        .of(A, TASKS)
        .list({ limit: 10, after: null, ...choice });
      return page.records.map(({ id }) => id);
    };
    expect(await ids({})).toEqual(['t1', 't2', 't3']);
    expect(await ids({ loop: 'l1' })).toEqual(['t1', 't2']);
    expect(await ids({ pump: 'p1' })).toEqual(['t3']);
    expect(await ids({ loop: null })).toEqual(['t3']);
    expect(await ids({ name: 'Later' })).toEqual(['t2']);
    expect(await ids({ loops: ['l1', 'none'] })).toEqual(['t1', 't2']);
    expect(await ids({ loops: [] })).toEqual([]);
    expect(await ids({ kind: 'union-check' })).toEqual(['t2']);
    expect(await ids({ otherThan: 'union-check' })).toEqual(['t1', 't3']);
    expect(await ids({ dueUntil: dayOf('2026-01-05') })).toEqual(['t1', 't3']);
    expect(await ids({ dueUntil: dayOf('2026-01-04') })).toEqual([]);
    expect(await ids({ dueFrom: dayOf('2026-01-06') })).toEqual(['t2']);
    expect(await ids({ after: { createdAt: T0, id: 't1' }, limit: 1 })).toEqual(['t2']);
    const all = await store().of(A, TASKS).all({ loop: 'l1' });
    expect(all).toMatchObject({ outcome: 'all', records: [{ id: 't1' }, { id: 't2' }] });
  });

  // By hand: once a week is 365/7 times a year, 10 min and 1/3 of parts each.
  it('adds up what a year asks for, and counts what is due', async () => {
    await withLoop();
    await insert('t1', exampleTask());
    await insert('t2', exampleTask({ every: { months: 1 }, minutes: 5, parts: 0, firstDue: '2026-01-06' }));
    const totals = await store()
      .of(A, TASKS)
      .totals({ today: dayOf('2026-01-06') });
    expect(totals).toMatchObject({ tasks: 2, due: 2, overdue: 1 });
    expectClose(totals.hours, (365 / 7) * (10 / 60) + 1, { relative: 1e-12 });
    expectClose(totals.parts, 365 / 21, { relative: 1e-12 });
    expect(await store().of(B, TASKS).totals({ today: 0 })).toEqual({
      tasks: 0,
      due: 0,
      overdue: 0,
      hours: 0,
      parts: 0,
    });
  });

  it('counts on from the last completion, entered in any order, and back when one is taken away', async () => {
    await withLoop();
    await insert('t1', exampleTask());
    await complete('c2', done('2026-01-20', { minutes: 12, note: 'with "care"' }));
    await complete('c1', done('2026-01-10'));
    expect((await task())?.progress).toEqual({
      nextDue: dayOf('2026-01-27'),
      lastDone: { at: done('2026-01-20').at, day: dayOf('2026-01-20') },
      completions: 2,
      changes: 2,
      changedAt: T0 + 7,
    });
    const deletion = { taskId: 't1', expectedVersion: 1, now: T0 + 9 };
    expect(
      await store()
        .of(A, COMPLETIONS)
        .delete({ ...deletion, id: 'c2' }),
    ).toEqual({ outcome: 'deleted' });
    expect((await task())?.progress).toMatchObject({
      nextDue: dayOf('2026-01-17'),
      completions: 1,
      changes: 3,
      changedAt: T0 + 9,
    });
    await store()
      .of(A, COMPLETIONS)
      .delete({ ...deletion, id: 'c1' });
    expect((await task())?.progress).toMatchObject({ nextDue: dayOf('2026-01-05'), lastDone: null });
    expect(
      await store()
        .of(A, COMPLETIONS)
        .delete({ ...deletion, id: 'c1' }),
    ).toEqual({ outcome: 'missing' });
  });

  it('keeps what was done when the task is written anew', async () => {
    await withLoop();
    await insert('t1', exampleTask());
    await complete('c1', done('2026-01-31'));
    const document = exampleTask({ every: { months: 1 } });
    await store()
      .of(A, TASKS)
      .replace({
        id: 't1',
        document,
        now: T0 + 8,
        expectedVersion: 'any',
      });
    expect((await task())?.progress).toMatchObject({ nextDue: dayOf('2026-02-28'), completions: 1 });
  });

  it('keeps one completion an instant, and tells the one that is there', async () => {
    await withLoop();
    await insert('t1', exampleTask());
    await complete('c1', done('2026-01-10', { note: 'first' }));
    expect(await complete('c2', done('2026-01-10', { note: 'second' }))).toMatchObject({
      outcome: 'exists',
      record: { id: 'c1', document: { note: 'first' } },
    });
    expect((await task())?.progress).toMatchObject({ completions: 1, changes: 1 });
    expect(await complete('c3', done('2026-01-10'), 'none')).toEqual({ outcome: 'missing' });
  });

  it('lists completions in the order of their instants, page by page', async () => {
    await withLoop();
    await insert('t1', exampleTask());
    for (const [id, day] of [
      ['c3', '2026-03-01'],
      ['c1', '2026-01-10'],
      ['c2', '2026-02-01'],
    ] as const) {
      await complete(id, done(day));
    }
    const request = { taskId: 't1', limit: 2 };
    const page = await store()
      .of(A, COMPLETIONS)
      .list({ ...request, after: null });
    expect([page.records.map(({ id }) => id), page.more]).toEqual([['c1', 'c2'], true]);
    const rest = await store()
      .of(A, COMPLETIONS)
      .list({
        ...request,
        after: { createdAt: done('2026-02-01').at, id: 'c2' },
      });
    expect([rest.records.map(({ id }) => id), rest.more]).toEqual([['c3'], false]);
  });

  it('counts completions that come at once, one an instant', async () => {
    await withLoop();
    await insert('t1', exampleTask());
    const days = ['2026-01-10', '2026-01-12', '2026-01-11', '2026-01-12'];
    const outcomes = await Promise.all(days.map((day, place) => complete(`c${place}`, done(day))));
    expect(outcomes.map(({ outcome }) => outcome).sort()).toEqual([
      'exists',
      'inserted',
      'inserted',
      'inserted',
    ]);
    expect((await task())?.progress).toMatchObject({
      completions: 3,
      changes: 3,
      nextDue: dayOf('2026-01-19'),
    });
  });

  it('takes completions of a task away by that task alone', async () => {
    await withLoop();
    await insert('t1', exampleTask());
    await insert('t2', exampleTask());
    await complete('c1', done('2026-01-10'));
    const deletion = { id: 'c1', now: T0 };
    expect(
      await store()
        .of(A, COMPLETIONS)
        .delete({ ...deletion, taskId: 't2', expectedVersion: 'any' }),
    ).toEqual({
      outcome: 'missing',
    });
    expect(
      await store()
        .of(A, COMPLETIONS)
        .delete({ ...deletion, taskId: 't1', expectedVersion: 2 }),
    ).toEqual({
      outcome: 'stale',
      version: 1,
    });
    await store().of(A, TASKS).delete({ id: 't1', expectedVersion: 'any' });
    const left = await store().of(A, COMPLETIONS).list({ taskId: 't1', limit: 9, after: null });
    expect(left.records).toEqual([]);
  });

  it('keeps a loop and a pump that a task is of', async () => {
    await withLoop();
    await insertPump(store(), 'p1');
    await insert('t1', exampleTask());
    await insert('t2', { ...exampleTask({ title: 'Impeller' }), loop: undefined, pump: 'p1' });
    const deletion = { expectedVersion: 'any' as const };
    expect(
      await store()
        .of(A, LOOPS)
        .delete({ ...deletion, id: 'l1' }),
    ).toEqual({
      outcome: 'in-use',
      usedBy: [{ kind: 'maintenance-task', id: 't1', name: 'Clean the intake screen' }],
    });
    expect(
      await store()
        .of(A, PUMPS)
        .delete({ ...deletion, id: 'p1' }),
    ).toEqual({
      outcome: 'in-use',
      usedBy: [{ kind: 'maintenance-task', id: 't2', name: 'Impeller' }],
    });
    await store()
      .of(A, TASKS)
      .delete({ ...deletion, id: 't1' });
    expect(
      await store()
        .of(A, LOOPS)
        .delete({ ...deletion, id: 'l1' }),
    ).toEqual({ outcome: 'deleted' });
  });
}
