import { parse } from 'csv-parse/sync';
import { beforeEach, describe, expect, it } from 'vitest';
import { expectClose } from '../../../expect-close.ts';
import { task, type Upkeep, upkeep } from '../../features/maintenance/upkeep.ts';

let lab: Upkeep;
beforeEach(async () => {
  lab = await upkeep();
});

const TASKS = '/v1/maintenance-tasks';

describe('a routine check', () => {
  it('is read back as it was entered, replaced by version, and deleted', async () => {
    const id = await lab.addTask();
    const read = await lab.send('GET', `${TASKS}/${id}`);
    expect(read.headers.get('etag')).toBe('"1-metric"');
    expect(await read.json()).toMatchObject({ ...task(lab.loop), kind: 'other', id, version: 1, units: {} });
    const put = (body: unknown, headers: Record<string, string> = {}) =>
      lab.send('PUT', `${TASKS}/${id}`, body, headers);
    const other = { ...task(lab.loop), title: 'Other' };
    expect((await put(other)).status).toBe(428);
    expect((await put(other, { 'if-match': '"7-metric"' })).status).toBe(412);
    const replaced = await put(other, { 'if-match': '"1-metric"' });
    expect([replaced.status, replaced.headers.get('etag')]).toEqual([200, '"2-metric"']);
    expect((await lab.send('DELETE', `${TASKS}/${id}`)).status).toBe(428);
    expect((await lab.send('DELETE', `${TASKS}/${id}`, undefined, { 'if-match': '*' })).status).toBe(204);
    expect((await lab.send('GET', `${TASKS}/${id}`)).status).toBe(404);
    expect((await put(other, { 'if-match': '*' })).status).toBe(404);
  });

  it('is answered where Location says', async () => {
    const response = await lab.send('POST', TASKS, task(lab.loop));
    const { id } = await response.json();
    expect(response.headers.get('location')).toBe(`${TASKS}/${id}`);
  });

  it('is taken back as it was answered', async () => {
    const id = await lab.addTask({ every: 'P1Y6M', kind: 'union-check' });
    const answer = await lab.read(`${TASKS}/${id}`);
    expect((await lab.send('PUT', `${TASKS}/${id}`, answer, { 'if-match': '*' })).status).toBe(200);
    expect(await lab.read(`${TASKS}/${id}`)).toMatchObject({ every: 'P1Y6M', kind: 'union-check' });
  });

  it('costs nothing in parts where none are stated', async () => {
    const id = await lab.addTask({ parts: undefined });
    expect(await lab.read(`${TASKS}/${id}`)).toMatchObject({ parts: 0, annualParts: 0 });
  });

  it('may be of a pump', async () => {
    const id = await lab.addTask({ loop: undefined, pump: lab.pump });
    const answer = await lab.read(`${TASKS}/${id}`);
    expect(answer).toMatchObject({ pump: lab.pump });
    expect(answer).not.toHaveProperty('loop');
  });

  it('first due at an instant is due on the day that the clocks of the site show then', async () => {
    const id = await lab.addTask({ firstDue: '2026-07-31T23:30:00Z' });
    expect(await lab.read(`${TASKS}/${id}`)).toMatchObject({ firstDue: '2026-08-01' });
  });

  it.each(['P1D', 'P10D', 'P2W', 'P520W', 'P1M', 'P18M', 'P1Y', 'P10Y', 'P120M', 'P3650D'])(
    'may come round every %s',
    async (every) => {
      const id = await lab.addTask({ every });
      expect(await lab.read(`${TASKS}/${id}`)).toMatchObject({ every });
    },
  );

  it('tells those who do it what they must know', async () => {
    const id = await lab.addTask({ kind: 'wet-end-service' });
    const { cautions } = await lab.read(`${TASKS}/${id}`);
    const codes = cautions.map(({ code }: { code: string }) => code);
    expect(codes).toEqual(['isolate-before-service', 'electricity-near-water']);
  });

  it.each<[object, string]>([
    [{ title: '' }, '/title'],
    [{ title: undefined }, '/title'],
    [{ title: 'x'.repeat(121) }, '/title'],
    [{ loop: undefined }, ''],
    [{ pump: 'p' }, '/pump'],
    [{ loop: 'none' }, '/loop'],
    [{ loop: undefined, pump: 'none' }, '/pump'],
    [{ loop: 7 }, '/loop'],
    [{ every: undefined }, '/every'],
    [{ every: 'monthly' }, '/every'],
    [{ every: 'PT12H' }, '/every'],
    [{ every: 'P1DT1H' }, '/every'],
    [{ every: 'P0D' }, '/every'],
    [{ every: 'P' }, '/every'],
    [{ every: '-P1M' }, '/every'],
    [{ every: 'P-1M' }, '/every'],
    [{ every: 'P1.5M' }, '/every'],
    [{ every: 'P1M15D' }, '/every'],
    [{ every: 'P11Y' }, '/every'],
    [{ every: 'P121M' }, '/every'],
    [{ every: 'P3651D' }, '/every'],
    [{ every: 'R/P1M' }, '/every'],
    [{ every: 'P99999999999999999Y' }, '/every'],
    [{ every: 30 }, '/every'],
    [{ minutes: undefined }, '/minutes'],
    [{ minutes: -1 }, '/minutes'],
    [{ minutes: '10' }, '/minutes'],
    [{ minutes: 1e6 }, '/minutes'],
    [{ parts: -1 }, '/parts'],
    [{ parts: 1e10 }, '/parts'],
    [{ firstDue: undefined }, '/firstDue'],
    [{ firstDue: '2026-02-30' }, '/firstDue'],
    [{ firstDue: '1-2-2026' }, '/firstDue'],
    [{ firstDue: '0000-01-01' }, '/firstDue'],
    [{ firstDue: '9999-12-31' }, '/firstDue'],
    [{ firstDue: '2026-02-01T10:00:00' }, '/firstDue'],
    [{ firstDue: 'soon' }, '/firstDue'],
    [{ kind: 'pump' }, '/kind'],
    [{ color: 'red' }, '/color'],
    [{ units: 'us' }, '/units'],
  ])('with a fault is refused where the fault is: %j', async (facts, pointer) => {
    const response = await lab.send('POST', TASKS, { ...task(lab.loop), ...facts });
    const answer = await response.json();
    expect(response.status, JSON.stringify(answer)).toBe(422);
    expect(answer.errors.map((error: { pointer: string }) => error.pointer)).toContain(pointer);
    expect((await lab.read(TASKS)).items).toEqual([]);
  });

  it('keeps the loop and the pump that it is of', async () => {
    const ofLoop = await lab.addTask();
    const id = await lab.addTask({ title: 'Impeller', loop: undefined, pump: lab.pump });
    const remove = (path: string) => lab.send('DELETE', path, undefined, { 'if-match': '*' });
    const kept = await remove(`/v1/loops/${lab.loop}`);
    expect(kept.status).toBe(409);
    expect((await kept.json()).usedBy).toEqual([
      { kind: 'maintenance-task', id: ofLoop, name: 'Clean the intake screen' },
    ]);
    await remove(`${TASKS}/${ofLoop}`);
    expect((await remove(`/v1/loops/${lab.loop}`)).status).toBe(204);
    const pump = await remove(`/v1/pumps/${lab.pump}`);
    expect((await pump.json()).usedBy).toEqual([{ kind: 'maintenance-task', id, name: 'Impeller' }]);
  });
});

describe('when a check is due', () => {
  it.each([
    ['2026-01-31T12:00:00Z', { due: false, overdue: false, daysUntilDue: 1 }],
    ['2026-02-01T12:00:00Z', { due: true, overdue: false, daysUntilDue: 0 }],
    ['2026-02-03T12:00:00Z', { due: true, overdue: true, daysUntilDue: -2 }],
  ])('at %s: %j', async (time, state) => {
    const id = await lab.addTask();
    lab.setClock(time);
    const path = `${TASKS}/${id}`;
    const response = await lab.send('GET', path, undefined, { 'if-none-match': '"1-metric"' });
    expect(response.status).toBe(200);
    expect(await response.json()).toMatchObject({ ...state, nextDue: '2026-02-01', lastDone: null });
  });

  // 23:30 in UTC is the next day in Tokyo and the same day in Los Angeles.
  it.each([
    ['Asia/Tokyo', true],
    ['America/Los_Angeles', false],
  ])('follows the clocks of the site: %s', async (zone, due) => {
    lab = await upkeep(zone);
    const id = await lab.addTask();
    lab.setClock('2026-01-31T23:30:00Z');
    expect(await lab.read(`${TASKS}/${id}`)).toMatchObject({ due });
  });
});

describe('a list of checks', () => {
  const titles = async (query: string): Promise<readonly string[]> =>
    (await lab.read(`${TASKS}${query}`)).items.map(({ title }: { title: string }) => title);

  beforeEach(async () => {
    await lab.addTask({ title: 'overdue', firstDue: '2026-01-10' });
    await lab.addTask({ title: 'today', firstDue: '2026-01-15', every: 'P6M', minutes: 45, parts: 20 });
    await lab.addTask({ title: 'later', firstDue: '2026-03-01', loop: undefined, pump: lab.pump });
  });

  it.each([
    ['', ['overdue', 'today', 'later']],
    ['?due=true', ['overdue', 'today']],
    ['?due=false', ['later']],
    ['?overdue=true', ['overdue']],
    ['?overdue=false', ['today', 'later']],
    ['?due=true&overdue=false', ['today']],
    ['?due=false&overdue=true', []],
    ['?dueBy=2026-03-01', ['overdue', 'today', 'later']],
    ['?dueBy=2026-02-28', ['overdue', 'today']],
    ['?dueBy=2026-02-28&overdue=false', ['today']],
    ['?name=later', ['later']],
    ['?kind=other', ['overdue', 'today', 'later']],
    ['?kind=union-check', []],
  ])('%s has %j', async (query, expected) => {
    expect(await titles(query)).toEqual(expected);
  });

  it('of a loop that is not there is refused, since a list of nothing would look like no work', async () => {
    const response = await lab.send('GET', `${TASKS}?loop=kelp-flum`);
    expect(response.status).toBe(422);
    expect(await response.json()).toMatchObject({ errors: [{ parameter: 'loop' }] });
  });

  it('has those of one loop, or of one pump', async () => {
    expect(await titles(`?loop=${lab.loop}`)).toEqual(['overdue', 'today']);
    expect(await titles(`?pump=${lab.pump}`)).toEqual(['later']);
  });

  it.each([
    '?due=yes',
    '?due=',
    '?overdue=1',
    '?dueBy=2026-02-30',
    '?dueBy=today',
    '?status=due',
    '?kind=x',
    '?cursor=x',
  ])('refuses %s', async (query) => {
    const response = await lab.send('GET', `${TASKS}${query}`);
    expect(response.status).toBe(422);
    expect((await response.json()).errors[0]).toHaveProperty('parameter');
  });

  it('comes page by page, with the totals of all', async () => {
    const first = await lab.read(`${TASKS}?limit=2`);
    expect(first.items).toHaveLength(2);
    const second = await lab.read(`${TASKS}?limit=2&cursor=${first.next}`);
    expect([second.items[0].title, second.next]).toEqual(['later', null]);
    expect(second.attention).toEqual(first.attention);
  });

  // By hand: 10 min a month twice is 4 h, 45 min twice a year 1.5 h; parts 12 x 5 twice and 2 x 20; 30 an hour.
  it('says what all of them ask of a year', async () => {
    const { attention, today } = await lab.read(TASKS);
    expect(today).toBe('2026-01-15');
    expect(attention).toEqual({
      tasks: 3,
      due: 2,
      overdue: 1,
      hours: 5.5,
      parts: 160,
      labour: 165,
      cost: 325,
      currency: 'EUR',
    });
    const { attention: ofDue } = await lab.read(`${TASKS}?due=true`);
    expect(ofDue).toMatchObject({ tasks: 2, hours: 3.5, cost: 3.5 * 30 + 100 });
  });

  it('agrees with its items', async () => {
    const { items, attention } = await lab.read(TASKS);
    const total = (name: string) =>
      items.reduce((sum: number, item: Record<string, number>) => sum + (item[name] ?? 0), 0);
    expectClose(total('annualHours'), attention.hours, { relative: 1e-5 });
    expectClose(total('annualCost'), attention.cost, { relative: 1e-5 });
  });

  it('has no cost of work where the site has no rate for it', async () => {
    const site = await lab.read('/v1/site');
    await lab.send('PUT', '/v1/site', { ...site, labourRate: null }, { 'if-match': '*' });
    const { items, attention } = await lab.read(TASKS);
    expect(attention).toMatchObject({ hours: 5.5, parts: 160, labour: null, cost: null });
    expect(items[0].annualCost).toBeNull();
  });

  it('tells one number to a cell of a spreadsheet', async () => {
    const response = await lab.send('GET', `${TASKS}?pointer=/attention/cost`);
    expect(await response.text()).toBe('325');
  });

  it('comes as a table, formulas disarmed', async () => {
    await lab.addTask({ title: '=1+1' });
    const response = await lab.send('GET', `${TASKS}?format=csv`);
    expect(response.headers.get('content-type')).toContain('text/csv');
    const rows: Record<string, string>[] = parse(await response.text(), { columns: true });
    expect(rows.map(({ title, nextDue, overdue }) => [title, nextDue, overdue])).toEqual([
      ['overdue', '2026-01-10', 'true'],
      ['today', '2026-01-15', 'false'],
      ['later', '2026-03-01', 'false'],
      ["'=1+1", '2026-02-01', 'false'],
    ]);
    expect(rows[1]?.annualHours).toBe('1.5');
  });
});
