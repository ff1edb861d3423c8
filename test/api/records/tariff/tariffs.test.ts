import { beforeEach, describe, expect, it } from 'vitest';
import { expectClose } from '../../../expect-close.ts';
import { type Facility, facility } from '../../features/schedule/facility.ts';

const TARIFF = {
  name: 'Evening',
  holidays: ['2026-12-25'],
  periods: [{ name: 'peak', price: 0.32, days: ['mon', 'tue'], months: [1, 12], from: '17:00', to: '21:00' }],
  otherwise: { name: 'base', price: 0.15 },
  standingChargePerDay: 0.4,
};

let lab: Facility;
beforeEach(async () => {
  lab = await facility();
});

const created = async (tariff: unknown = TARIFF): Promise<string> =>
  (await (await lab.send('POST', '/v1/tariffs', tariff)).json()).id;

describe('a tariff', () => {
  it('is read back as it was entered, replaced by version, listed and deleted', async () => {
    const id = await created();
    const read = await lab.send('GET', `/v1/tariffs/${id}`);
    expect(await read.json()).toMatchObject({ ...TARIFF, id, version: 1, units: {} });
    expect(read.headers.get('etag')).toBe('"1-metric"');
    const other = { ...TARIFF, name: 'Other' };
    expect((await lab.send('PUT', `/v1/tariffs/${id}`, other)).status).toBe(428);
    expect((await lab.send('PUT', `/v1/tariffs/${id}`, other, { 'if-match': '"9-metric"' })).status).toBe(
      412,
    );
    expect((await lab.send('PUT', `/v1/tariffs/${id}`, other, { 'if-match': '"1-metric"' })).status).toBe(
      200,
    );
    const list = await (await lab.send('GET', '/v1/tariffs?name=Other')).json();
    expect(list.items.map((item: { id: string }) => item.id)).toEqual([id]);
    expect((await lab.send('DELETE', `/v1/tariffs/${id}`, undefined, { 'if-match': '*' })).status).toBe(204);
    expect((await lab.send('GET', `/v1/tariffs/${id}`)).status).toBe(404);
  });

  it('is taken back as it was answered', async () => {
    const id = await created();
    const answer = await (await lab.send('GET', `/v1/tariffs/${id}`)).json();
    expect((await lab.send('PUT', `/v1/tariffs/${id}`, answer, { 'if-match': '*' })).status).toBe(200);
  });

  it('may have negative prices, and one price alone', async () => {
    const flat = { name: 'flat', otherwise: { name: 'all', price: -0.01 } };
    expect((await lab.send('POST', '/v1/tariffs', flat)).status).toBe(201);
  });

  const period = (facts: object) => ({ ...TARIFF, periods: [{ ...TARIFF.periods[0], ...facts }] });

  it.each([
    [period({ from: '24:00' }), '/periods/0/from'],
    [period({ to: '24:00' }), '/periods/0/to'],
    [period({ to: '7:00' }), '/periods/0/to'],
    [period({ to: undefined }), '/periods/0/to'],
    [period({ from: undefined }), '/periods/0/from'],
    [period({ to: '17:00' }), '/periods/0/to'],
    [period({ months: [] }), '/periods/0/months'],
    [period({ months: [13] }), '/periods/0/months/0'],
    [period({ months: [1, 1] }), '/periods/0/months/1'],
    [period({ days: ['monday'] }), '/periods/0/days/0'],
    [period({ days: [] }), '/periods/0/days'],
    [period({ price: '0.1' }), '/periods/0/price'],
    [period({ price: 1e9 }), '/periods/0/price'],
    [{ ...TARIFF, holidays: ['2026-02-29'] }, '/holidays/0'],
    [{ ...TARIFF, otherwise: undefined }, '/otherwise'],
    [{ ...TARIFF, standingChargePerDay: -1 }, '/standingChargePerDay'],
    [{ ...TARIFF, zone: 'UTC' }, '/zone'],
    [{ ...TARIFF, name: '' }, '/name'],
  ])('with a fault is refused where the fault is: case %#', async (body, pointer) => {
    const response = await lab.send('POST', '/v1/tariffs', body);
    expect(response.status).toBe(422);
    const { errors } = await response.json();
    expect(errors.map((error: { pointer: string }) => error.pointer)).toContain(pointer);
  });
});

describe('the tariff of a site', () => {
  const site = (tariff: string | null, timeZone = 'Europe/Lisbon') => ({
    name: 'Lab',
    timeZone,
    currency: 'EUR',
    elevation: 10,
    price: 0.21,
    labourRate: 30,
    tariff,
  });

  it('must be stored, and stays while the site goes by it', async () => {
    const id = await created();
    const put = (body: object) => lab.send('PUT', '/v1/site', body, { 'if-match': '*' });
    const unknown = await put(site('nothing'));
    expect(unknown.status).toBe(422);
    expect((await unknown.json()).errors[0].pointer).toBe('/tariff');
    expect((await put(site(id))).status).toBe(200);
    const kept = await lab.send('DELETE', `/v1/tariffs/${id}`, undefined, { 'if-match': '*' });
    expect(kept.status).toBe(409);
    expect((await kept.json()).usedBy).toEqual([{ kind: 'site', id: 'default', name: 'Lab' }]);
    await put(site(null));
    expect((await lab.send('DELETE', `/v1/tariffs/${id}`, undefined, { 'if-match': '*' })).status).toBe(204);
  });

  it('must go with a zone that there is', async () => {
    const response = await lab.send('PUT', '/v1/site', site(null, 'Mars/Olympus'), { 'if-match': '*' });
    expect((await response.json()).errors[0].pointer).toBe('/timeZone');
  });

  it('prices duty points and recommendations by its time mean, before the price of the site', async () => {
    const id = await created({
      name: 'half and half',
      periods: [{ name: 'night', price: 0.1, from: '00:00', to: '12:00' }],
      otherwise: { name: 'day', price: 0.3 },
    });
    await lab.send('PUT', '/v1/site', site(id, 'Asia/Tokyo'), { 'if-match': '*' });
    const duty = await (await lab.send('GET', `/v1/loops/${lab.loop}/duty-point`)).json();
    expectClose(duty.annualCost, 0.2 * duty.annualEnergy, { relative: 1e-5 });
    const best = await (await lab.send('GET', `/v1/loops/${lab.loop}/recommendation`)).json();
    expectClose(best.best.annualCost, 0.2 * best.best.annualEnergy, { relative: 1e-5 });
    expect(best.assumptions).toMatchObject({ price: 0.2, tariff: { id, name: 'half and half', year: 2026 } });
    const stated = await (await lab.send('GET', `/v1/loops/${lab.loop}/duty-point?price=0.5`)).json();
    expectClose(stated.annualCost, 0.5 * stated.annualEnergy, { relative: 1e-5 });
  });
});

describe('the tariff of a recommendation', () => {
  const ask = (facts: object) => lab.send('POST', '/v1/recommendations', { loop: lab.loop, ...facts });

  it('may come with the request', async () => {
    const tariff = { name: 'inline', otherwise: { name: 'all', price: 0.4 } };
    const { best, assumptions } = await (await ask({ tariff })).json();
    expectClose(best.annualCost, 0.4 * best.annualEnergy, { relative: 1e-5 });
    expect(assumptions.tariff).toEqual({ id: null, name: 'inline', year: 2026 });
  });

  it('says that it averages where the hours of the day are not known', async () => {
    const id = await created();
    const codes = async (facts: object) =>
      (await (await ask({ tariff: id, ...facts })).json()).cautions.map(({ code }: { code: string }) => code);
    expect(await codes({ hoursPerDay: 8 })).toContain('time-mean-price');
    expect(await codes({})).not.toContain('time-mean-price');
  });

  it.each([
    [{ tariff: 'nothing' }, '/tariff'],
    [{ tariff: { name: 'x' } }, '/tariff/otherwise'],
    [{ tariff: { name: 'x', otherwise: { name: 'a', price: 1 } }, price: 0.1 }, '/tariff'],
  ])('is refused where it is wrong: %j', async (facts, pointer) => {
    const response = await ask(facts);
    expect(response.status).toBe(422);
    expect((await response.json()).errors[0].pointer).toBe(pointer);
  });
});
