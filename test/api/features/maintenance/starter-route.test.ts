import { beforeEach, describe, expect, it } from 'vitest';
import { exampleJson } from '../../../openapi/read-example.ts';
import { type Upkeep, upkeep } from './upkeep.ts';

let lab: Upkeep;
let path: string;
beforeEach(async () => {
  lab = await upkeep();
  path = `/v1/loops/${lab.loop}/starter-tasks`;
});

const kindsOf = (items: readonly { kind: string }[]) => items.map(({ kind }) => kind);

const KINDS = ['screen-cleaning', 'wet-end-service', 'residual-current-test'];

describe('the starter set of a stored loop', () => {
  it('is stored as checks of the loop, due today where nothing else is stated', async () => {
    const response = await lab.send('POST', path, {});
    expect(response.status).toBe(201);
    const { items, existingCount: kept, cautions } = await response.json();
    expect(kindsOf(items)).toEqual(KINDS);
    expect(items[1]).toMatchObject({
      loop: lab.loop,
      every: 'P6M',
      minutes: 45,
      parts: 20,
      firstDue: '2026-01-15',
      due: true,
      overdue: false,
    });
    expect(kept).toBe(0);
    expect(cautions.map(({ code }: { code: string }) => code)).toContain('upkeep-common-practice');
    const listed = await lab.read(response.headers.get('location') ?? '');
    expect(listed.items).toEqual(items);
  });

  it('is due first on the day that is stated', async () => {
    const { items } = await (await lab.send('POST', path, { firstDue: '2026-04-01' })).json();
    expect(items[0]).toMatchObject({ firstDue: '2026-04-01', due: false });
  });

  it('is made once, and again for what was deleted or built since', async () => {
    const { items } = await (await lab.send('POST', path, {})).json();
    expect(await (await lab.send('POST', path, {})).json()).toMatchObject({ items: [], existingCount: 3 });
    await lab.send('DELETE', `/v1/maintenance-tasks/${items[0].id}`, undefined, { 'if-match': '*' });
    const loop = await lab.read(`/v1/loops/${lab.loop}`);
    const suction = [...loop.suction, { fitting: 'bulkhead', count: 2 }, { fitting: 'union' }];
    await lab.send('PUT', `/v1/loops/${lab.loop}`, { ...loop, suction }, { 'if-match': '*' });
    const again = await (await lab.send('POST', path, {})).json();
    expect(kindsOf(again.items)).toEqual([
      'bulkhead-inspection',
      'bulkhead-inspection',
      'screen-cleaning',
      'union-check',
    ]);
  });

  it('of a loop without pump, pipework and intake is one check and a caution', async () => {
    const loop = await lab.send('POST', '/v1/loops', exampleJson('loop-system-curve.json'));
    const { id } = await loop.json();
    const { items, cautions } = await (await lab.send('POST', `/v1/loops/${id}/starter-tasks`, {})).json();
    expect(kindsOf(items)).toContain('residual-current-test');
    expect(cautions.map(({ code }: { code: string }) => code)).toContain('fittings-unknown');
  });

  it('beyond its limit is refused, and nothing is stored', async () => {
    const loop = await lab.read(`/v1/loops/${lab.loop}`);
    const suction = [...loop.suction, { fitting: 'bulkhead', count: 501 }];
    await lab.send('PUT', `/v1/loops/${lab.loop}`, { ...loop, suction }, { 'if-match': '*' });
    const response = await lab.send('POST', path, {});
    expect(response.status).toBe(422);
    expect(await response.json()).toMatchObject({ code: 'limit-exceeded', limit: 500, actual: 501 });
    expect((await lab.read('/v1/maintenance-tasks')).items).toEqual([]);
  });

  it('needs a loop that there is, and a body without faults', async () => {
    expect((await lab.send('POST', '/v1/loops/none/starter-tasks', {})).status).toBe(404);
    expect((await lab.send('POST', path, { firstDue: '2026-02-30' })).status).toBe(422);
    expect((await lab.send('POST', path, { from: '2026-02-20' })).status).toBe(422);
    expect((await lab.send('POST', path)).status).toBe(400);
  });
});
