import { beforeEach, describe, expect, it } from 'vitest';
import { jsonOf, sent } from '../../requests.ts';
import { refused } from '../../stocked-app.ts';
import { type MeasuredLoop, measuredLoop, posted, table } from './measured-loop.ts';

let app: MeasuredLoop;

beforeEach(async () => {
  app = await measuredLoop();
});

const GOOD = { time: '2026-01-15T10:00:00Z', setting: 80 };
const LATER = { ...GOOD, time: '2026-01-15T10:01:00Z' };

/** A fault of the second of two readings, by the member it stands at, and what is said of it. */
const FAULTS = [
  ['a time without offset', { ...LATER, time: '2026-01-15T10:01:00' }, 'time', 'offset'],
  ['a time that is none', { ...LATER, time: '2026-02-30T10:01:00Z' }, 'time', 'offset'],
  ['a number for a time', { ...LATER, time: 1768471200 }, 'time', 'string'],
  ['a time in the future', { ...LATER, time: '2026-01-15T12:30:00Z' }, 'time', 'future'],
  ['a time long ago', { ...LATER, time: '1950-01-01T00:00:00Z' }, 'time', 'years'],
  ['a time before that of the reading before', { ...LATER, time: '2026-01-15T09:59:00Z' }, 'time', 'before'],
  ['no time', { setting: 80 }, 'time', 'required'],
  ['no setting', { time: LATER.time }, 'setting', 'required'],
  ['a setting below those of the pump', { ...LATER, setting: 29 }, 'setting', '30..100'],
  ['a setting above 100 %', { ...LATER, setting: 101 }, 'setting', 'at most'],
  ['no flow while the pump runs', { ...LATER, flow: 0 }, 'flow', 'must not be 0'],
  [
    'a flow beside outlets that are all shut',
    { ...LATER, flow: 8000, head: 3, outletFlows: { 'far end': 0, left: 0, right: 0 } },
    'flow',
    'must be 0',
  ],
  ['a flow below 0', { ...LATER, flow: -1 }, 'flow', 'at least'],
  ['a flow beyond all pumps', { ...LATER, flow: 1e9 }, 'flow', 'at most'],
  ['a flow in watts', { ...LATER, flow: '5 W' }, 'flow', 'unit'],
  ['a power below 0', { ...LATER, power: -1 }, 'power', 'at least'],
  ['a power beyond all pumps', { ...LATER, power: 1e9 }, 'power', 'at most'],
  ['a head that is text', { ...LATER, head: 'high' }, 'head', 'must be a number'],
  ['a suction beyond vacuum', { ...LATER, suctionPressure: -200 }, 'suctionPressure', 'at least'],
  ['a pressure that bursts', { ...LATER, dischargePressure: 1e6 }, 'dischargePressure', 'at most'],
  ['an outlet that is not there', { ...LATER, outletFlows: { attic: 5 } }, 'outletFlows/attic', 'no outlet'],
  ['an outlet with a flow below 0', { ...LATER, outletFlows: { left: -5 } }, 'outletFlows/left', 'at least'],
  ['outlets as a list', { ...LATER, outletFlows: [5] }, 'outletFlows', 'record'],
  ['a field that is not there', { ...LATER, colour: 'blue' }, 'colour', 'not a field'],
] as const;

describe('readings in JSON', () => {
  it.each(FAULTS)('with %s are all refused, at its place', async (_, second, member, words) => {
    const problem = await refused(await posted(app, app.readings, [GOOD, second]));
    expect(problem.status).toBe(422);
    const [error] = problem.errors ?? [];
    expect(error?.pointer).toBe(`/readings/1/${member}`);
    expect(error?.detail).toContain(words);
    expect(await jsonOf(await app.call(app.readings))).toMatchObject({ items: [] });
  });

  it.each([
    ['none at all', { readings: [] }, 422],
    ['a list of its own', [GOOD], 422],
    ['another field', { readings: [GOOD], loop: 'x' }, 422],
  ])('that are %s are refused', async (_, body, status) => {
    expect((await refused(await app.call(app.readings, sent('POST', body)))).status).toBe(status);
  });

  it('tells ten faults at most', async () => {
    const many = Array.from({ length: 30 }, () => ({ ...GOOD, setting: 10 }));
    expect((await refused(await posted(app, app.readings, many))).errors).toHaveLength(10);
  });
});

describe('readings in CSV', () => {
  it.each([
    ['a time without offset', '2026-01-15T10:01:00,80,', '/1/time'],
    ['a time in the future', '2027-01-15T10:01:00Z,80,', '/1/time'],
    ['an earlier time', '2026-01-15T09:01:00Z,80,', '/1/time'],
    ['a setting outside the pump', '2026-01-15T10:01:00Z,20,', '/1/setting'],
    ['no flow while the pump runs', '2026-01-15T10:01:00Z,80,0', '/1/flow'],
    ['a flow that is text', '2026-01-15T10:01:00Z,80,much', '/1/flow'],
    ['no setting', '2026-01-15T10:01:00Z,,5000', '/1/setting'],
  ])('with %s are told by row and line', async (_, row, pointer) => {
    const text = `time,setting,flow\r\n2026-01-15T10:00:00Z,80,8000\r\n\r\n${row}\r\n`;
    const problem = await refused(await table(app, app.readings, text));
    expect(problem.status).toBe(422);
    expect(problem.errors?.[0]).toMatchObject({ pointer, line: 4 });
  });

  it.each([
    ['a column that is no outlet', 'time,setting,attic'],
    ['a column in a unit of something else', 'time,setting,flow [kPa]'],
    ['an outlet twice', 'time,setting,far end,outletFlows/far end'],
    ['no column for the time', 'setting,flow'],
  ])('with %s are refused at the header', async (_, header) => {
    const problem = await refused(await table(app, app.readings, `${header}\r\n`));
    expect(problem).toMatchObject({ status: 422, errors: [{ pointer: '', line: 1 }] });
  });

  it('with a member that no document keeps are refused, not taken without it', async () => {
    const text = '{"readings":[{"time":"2026-01-15T10:00:00Z","setting":80,"outletFlows":{"__proto__":5}}]}';
    const problem = await refused(await app.call(app.readings, { ...sent('POST', {}), body: text }));
    expect(problem).toMatchObject({
      status: 422,
      errors: [{ pointer: '/readings/0/outletFlows/__proto__' }],
    });
  });

  it('of another type are refused', async () => {
    const init = { method: 'POST', headers: { 'Content-Type': 'text/plain' }, body: 'time' };
    expect((await refused(await app.call(app.readings, init))).status).toBe(415);
  });
});

describe('a question for readings', () => {
  it.each([
    ['a range that ends before it begins', '?from=2026-01-02T00:00:00Z&to=2026-01-01T00:00:00Z', 'to'],
    ['a range without offset', '?from=2026-01-02T00:00:00', 'from'],
    ['a stretch that is none', '?groupBy=week', 'groupBy'],
    ['a limit above 200', '?limit=201', 'limit'],
    ['a limit of 0', '?limit=0', 'limit'],
    ['a limit above 1000 by day', '?groupBy=day&limit=1001', 'limit'],
    ['a cursor that is none', '?cursor=x', 'cursor'],
    ['a cursor of another kind', '?groupBy=day&cursor=MTc2ODQ3MTIwMDAwMC5yZWFkaW5n', 'cursor'],
  ])('with %s is refused', async (_, query, parameter) => {
    const problem = await refused(await app.call(`${app.readings}${query}`));
    expect(problem).toMatchObject({ status: 422, errors: [{ parameter }] });
  });

  it.each(['GET', 'POST'])('of a loop that is not there is 404: %s', async (method) => {
    const init = method === 'POST' ? sent('POST', { readings: [GOOD] }) : {};
    expect((await refused(await app.call('/v1/loops/away/readings', init))).status).toBe(404);
  });
});
