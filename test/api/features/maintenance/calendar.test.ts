import ICAL from 'ical.js';
import { beforeEach, describe, expect, it } from 'vitest';
import { DEFAULT_SITE_ID } from '../../../../api/access/site.ts';
import { TASKS } from '../../../../api/records/task/kind.ts';
import { civilDate } from '../../../../models/calendar/civil-day.ts';
import { dayOfText, textOfDate } from '../../../../models/calendar/civil-text.ts';
import { dayAfter } from '../../../../models/maintenance/interval.ts';
import type { MaintenanceTask } from '../../../../models/maintenance/task.ts';
import { type Upkeep, upkeep } from './upkeep.ts';

let lab: Upkeep;
beforeEach(async () => {
  lab = await upkeep();
});

const PATH = '/v1/maintenance.ics';
/** Less than the ten years that the last days of February are told for. */
const ROUNDS = 7;

async function textOf(query = ''): Promise<string> {
  const response = await lab.send('GET', `${PATH}${query}`);
  expect(response.status).toBe(200);
  return await response.text();
}

/** Read back by another library than the one that wrote it. */
const calendarOf = (text: string) => new ICAL.Component(ICAL.parse(text));

const eventsOf = (text: string) =>
  calendarOf(text)
    .getAllSubcomponents('vevent')
    .map((component) => ({ component, event: new ICAL.Event(component) }));

async function onlyEvent(query = '') {
  const [one, ...others] = eventsOf(await textOf(query));
  if (one === undefined) throw new Error('no event');
  expect(others).toEqual([]);
  return one;
}

describe('the calendar of checks', () => {
  it('is one that a calendar program takes, also without checks', async () => {
    const response = await lab.send('GET', PATH);
    expect(response.headers.get('content-type')).toBe('text/calendar; charset=utf-8');
    const calendar = calendarOf(await response.text());
    expect(calendar.getFirstPropertyValue('version')).toBe('2.0');
    expect(calendar.getFirstPropertyValue('prodid')).toBe('-//loopwright//maintenance//EN');
    expect(calendar.getFirstPropertyValue('name')).toBe('Maintenance: Lab');
    expect(calendar.getAllSubcomponents('vevent')).toEqual([]);
  });

  it('has an event all day long on the day that a check is due next', async () => {
    const id = await lab.addTask();
    const { component, event } = await onlyEvent();
    expect(event.uid).toBe(`${id}@loopwright`);
    expect(event.summary).toBe('Clean the intake screen (Kelp flume)');
    expect(event.description).toContain('About 10 min, parts 5 EUR.');
    expect([event.startDate.isDate, event.startDate.toString()]).toEqual([true, '2026-02-01']);
    expect(String(component.getFirstPropertyValue('transp'))).toBe('TRANSPARENT');
    expect(event.isRecurring()).toBe(true);
  });

  it.each([
    ['P1M', '2026-01-31'],
    ['P1M', '2026-02-28'],
    ['P6M', '2026-08-31'],
    ['P1Y', '2028-02-29'],
    ['P2W', '2026-03-02'],
    ['P10D', '2026-03-02'],
    ['P18M', '2026-05-30'],
  ])('recurs every %s from %s as the check does', async (every, firstDue) => {
    const id = await lab.addTask({ every, firstDue });
    const { event } = await onlyEvent();
    const iterator = event.iterator();
    const days = Array.from({ length: ROUNDS }, () => iterator.next()?.toString());
    const interval = await storedInterval(id);
    const start = dayOfText(firstDue) ?? Number.NaN;
    expect(days).toEqual(
      Array.from({ length: ROUNDS }, (_, times) => textOfDate(civilDate(dayAfter(start, interval, times)))),
    );
  });

  async function storedInterval(id: string) {
    const record = await lab.api.deps.store.of(DEFAULT_SITE_ID, TASKS).get(id);
    if (record === undefined) throw new Error('no task');
    return record.document.every;
  }

  it('is stamped by its record, and the same at any later moment', async () => {
    await lab.addTask();
    const before = await textOf();
    expect((await onlyEvent()).component.getFirstPropertyValue('dtstamp')?.toString()).toBe(
      '2026-01-15T12:00:00Z',
    );
    lab.setClock('2026-03-15T12:00:00Z');
    expect(await textOf()).toBe(before);
  });

  it('moves on by a completion, under the same UID and the next sequence', async () => {
    const id = await lab.addTask();
    const before = await onlyEvent();
    lab.setClock('2026-02-03T12:00:00Z');
    await lab.complete(id, '2026-02-03T09:00:00Z');
    const { component, event } = await onlyEvent();
    expect(event.uid).toBe(before.event.uid);
    expect([before.event.sequence, event.sequence]).toEqual([0, 1]);
    expect(event.startDate.toString()).toBe('2026-03-03');
    expect(component.getFirstPropertyValue('dtstamp')?.toString()).toBe('2026-02-03T12:00:00Z');
    expect(component.getFirstPropertyValue('created')?.toString()).toBe('2026-01-15T12:00:00Z');
  });

  it('is not sent again while nothing has changed, whatever has changed is', async () => {
    const id = await lab.addTask();
    const tagNow = async () => (await lab.send('GET', PATH)).headers.get('etag') ?? '';
    const tag = await tagNow();
    const kept = await lab.send('GET', PATH, undefined, { 'if-none-match': tag });
    expect([kept.status, await kept.text()]).toEqual([304, '']);
    const tags = [tag];
    await lab.complete(id, '2026-01-15T09:00:00Z');
    tags.push(await tagNow());
    const loop = await lab.read(`/v1/loops/${lab.loop}`);
    await lab.send('PUT', `/v1/loops/${lab.loop}`, { ...loop, name: 'Flume' }, { 'if-match': '*' });
    tags.push(await tagNow());
    await lab.send('DELETE', `/v1/maintenance-tasks/${id}`, undefined, { 'if-match': '*' });
    tags.push(await tagNow());
    expect(new Set(tags).size).toBe(4);
  });

  it('may be that of one loop, or of one pump', async () => {
    await lab.addTask();
    await lab.addTask({ title: 'Impeller', loop: undefined, pump: lab.pump });
    expect((await onlyEvent(`?loop=${lab.loop}`)).event.summary).toBe('Clean the intake screen (Kelp flume)');
    expect((await onlyEvent(`?pump=${lab.pump}`)).event.summary).toBe('Impeller (Canister 250)');
    expect((await lab.send('GET', `${PATH}?loop=none`)).status).toBe(422);
    expect((await lab.send('GET', `${PATH}?tank=1`)).status).toBe(422);
    expect((await lab.send('GET', PATH, undefined, { accept: 'application/json' })).status).toBe(406);
  });

  it('is refused where it would be too long to subscribe to', async () => {
    const document: MaintenanceTask = {
      title: 'Check',
      kind: 'other',
      every: { days: 1 },
      minutes: 1,
      parts: 0,
      firstDue: '2026-02-01',
      loop: lab.loop,
    };
    for (let first = 0; first < 1_001; first += 143) {
      const tasks = Array.from({ length: 143 }, (_, place) => ({ id: `many-${first + place}`, document }));
      await lab.api.deps.store.of(DEFAULT_SITE_ID, TASKS).insertAll({ now: 0, tasks });
    }
    const response = await lab.send('GET', PATH);
    expect(response.status).toBe(422);
    expect(await response.json()).toMatchObject({ code: 'limit-exceeded', limit: 1_000, actual: 1_001 });
  });
});

describe('a text in the calendar', () => {
  const AWKWARD = [
    'commas, semicolons; and a back\\slash',
    'two\nlines',
    '"quoted": x=y',
    'A screen so long that its line must be folded more than once, ää and 🪸🪸🪸🪸🪸🪸🪸🪸',
    'END:VEVENT',
    '\u202Eright to left',
  ];

  it.each(AWKWARD)('is read back as it was entered: %j', async (title) => {
    await lab.addTask({ title });
    expect((await onlyEvent()).event.summary).toBe(`${title} (Kelp flume)`);
  });

  it('makes no line of its own', async () => {
    const title = 'x\r\nEND:VEVENT\r\nBEGIN:VALARM';
    await lab.addTask({ title });
    const site = await lab.read('/v1/site');
    const name = 'Lab, of;\r\nX-INJECTED:1\u0007';
    await lab.send('PUT', '/v1/site', { ...site, name }, { 'if-match': '*' });
    const text = await textOf();
    const { component } = await onlyEvent();
    expect(component.getAllSubcomponents()).toEqual([]);
    const calendar = calendarOf(text);
    expect(calendar.getFirstProperty('x-injected')).toBeNull();
    expect(text.split('\r\n')).toContain('NAME:Maintenance: Lab\\, of\\;\\nX-INJECTED:1 ');
  });

  // RFC 5545, 3.1: lines end in CRLF and have at most 75 octets, their end aside.
  it('stands in lines as the standard wants them', async () => {
    for (const title of AWKWARD) await lab.addTask({ title });
    const text = await textOf();
    expect(text.endsWith('END:VCALENDAR\r\n')).toBe(true);
    expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
    const lines = text.split('\r\n');
    for (const line of lines) expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
    const extensions = lines.filter((line) => line.startsWith('X-')).map((line) => line.split(':')[0]);
    expect(extensions).toEqual(['X-WR-CALNAME']);
  });
});
