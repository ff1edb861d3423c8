/** The tables of fittings and cautions over HTTP. */
import { beforeEach, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { CAUTIONS } from '../../../../models/cautions/catalogue.ts';
import { BORE_CHANGES } from '../../../../models/components/bore-change.ts';
import { FITTINGS } from '../../../../models/components/fittings.ts';
import { VALVES } from '../../../../models/components/valves.ts';
import { created } from '../../requests.ts';
import { answered, refused, type StockedApp, stockedApp } from '../../stocked-app.ts';

const cautionTable = z.strictObject({
  items: z.array(
    z.strictObject({
      code: z.string(),
      severity: z.enum(['note', 'warning', 'danger']),
      text: z.string().min(20),
      source: z.string().min(5),
    }),
  ),
});
const number = z.number().nullable();
const fittingTable = z.object({
  items: z.array(
    z.object({
      name: z.string(),
      kind: z.enum(['fitting', 'valve']),
      method: z.string(),
      ...{ value: number, laminarValue: number, sizeValue: number, angle: number },
      source: z.string().min(10),
      verified: z.boolean(),
    }),
  ),
});

let app: StockedApp;
beforeEach(async () => {
  app = await stockedApp();
});

describe('the cautions', () => {
  it('are all that answers can carry, each with severity, sentence and source', async () => {
    const { items } = await answered(cautionTable, await app.call('/v1/reference/cautions'));
    expect(items.map(({ code }) => code)).toEqual(Object.keys(CAUTIONS));
    expect(items.find(({ code }) => code === 'dead-head')?.severity).toBe('danger');
  });

  it('come as CSV', async () => {
    const text = await (await app.call('/v1/reference/cautions?format=csv')).text();
    expect(text.split('\r\n')[0]).toBe('code,severity,text,source');
  });

  it.each(['limit=5', 'units=si'])('refuse the query %s', async (query) => {
    expect((await refused(await app.call(`/v1/reference/cautions?${query}`))).status).toBe(422);
  });
});

describe('the fittings', () => {
  it('are all that a loop may name, with the figures of their method', async () => {
    const { items } = await answered(fittingTable, await app.call('/v1/reference/fittings'));
    const names = [...FITTINGS, ...BORE_CHANGES, ...VALVES].map(({ name }) => name);
    expect(items.map(({ name }) => name)).toEqual(names);
    for (const row of items) {
      const given = [row.value, row.laminarValue, row.sizeValue, row.angle].map((figure) => figure !== null);
      const asked: Record<string, boolean[]> = {
        'equivalent-diameters': [true, false, false, false],
        'fixed-k': [true, false, false, false],
        'two-k': [true, true, false, false],
        'three-k': [true, true, true, false],
        'two-bores': [false, false, false, true],
      };
      expect(given).toEqual(asked[row.method]);
    }
  });

  it('are each accepted in a loop', async () => {
    const pipe = (insideDiameter: number) => ({ pipe: { insideDiameter }, length: 1 });
    const { items } = await answered(fittingTable, await app.call('/v1/reference/fittings'));
    for (const { name, kind, method } of items) {
      const [before, after] = name.startsWith('enlargement') ? [30, 50] : [50, 30];
      const run = [pipe(before), kind === 'valve' ? { valve: name } : { fitting: name }, pipe(after)];
      const id = await created(app, '/v1/loops', { name, discharge: { run, outlet: { name: 'only' } } });
      const curve = await app.call(`/v1/loops/${id}/system-curve?flow=3000&points=2`);
      expect(curve.status, `${name} by ${method}`).toBe(200);
    }
  });
});

describe('a reducer or enlargement', () => {
  const P40 = { pipe: { insideDiameter: 40 }, length: 1 };
  const P50 = { pipe: { insideDiameter: 50 }, length: 1 };
  const R = { fitting: 'reducer' };
  const at = (place: number, member = '') => `/discharge/run/${place}${member}`;

  it.each<[string, unknown[], string, RegExp]>([
    ['no pipe before it', [R, P40], at(0), /no pipe before it/],
    ['no pipe after it', [P50, R], at(1), /no pipe after it/],
    ['equal bores', [P50, R, P50], at(1), /50 mm to one of 50 mm, which is not narrower/],
    ['bores that widen', [P40, R, P50], at(1), /not narrower; an enlargement widens/],
    ['bores that narrow', [P50, { fitting: 'enlargement' }, P40], at(1), /not wider; a reducer narrows/],
    ['a diameter', [P50, { ...R, diameter: 40 }, P40], at(1, '/diameter'), /must be left out/],
    ['a count of two', [P50, { ...R, count: 2 }, P40], at(1, '/count'), /must be left out/],
    [
      'another name',
      [P50, { fitting: 'reducer-taper-20' }, P40],
      at(1, '/fitting'),
      /no fitting of the table/,
    ],
  ])('is refused with %s', async (_, run, pointer, detail) => {
    const loop = { name: 'a', discharge: { run, outlet: { name: 'only' } } };
    const body = {
      method: 'POST',
      headers: { 'Content-Type': 'application/json' },
      body: JSON.stringify(loop),
    };
    const problem = await refused(await app.call('/v1/loops', body));
    expect(problem.status).toBe(422);
    expect(problem.errors?.[0]?.pointer).toBe(pointer);
    expect(problem.errors?.[0]?.detail).toMatch(detail);
  });
});
