/** Comparisons over HTTP: the guide's example, the seahorse bank, what goes stale, what is refused. */
import { beforeEach, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { expectClose } from '../../../expect-close.ts';
import {
  GUIDE_HOURS,
  GUIDE_OPTIONS,
  GUIDE_PRICE,
  GUIDE_REPAIR,
  GUIDE_TERMS,
} from '../../../reference/life-cycle-costs.ts';
import { created, example, type Json, sent } from '../../requests.ts';
import { refused, type StockedApp, stockedApp } from '../../stocked-app.ts';

const SIX_DIGITS = 2e-6;

const elements = z.record(z.string(), z.number());
const payback = z.object({ simple: z.number().nullable(), discounted: z.number().nullable() }).nullable();
const option = z.object({
  name: z.string(),
  feasible: z.boolean(),
  presentValue: z.number(),
  presentValueInterval: z.object({ low: z.number(), high: z.number() }),
  elements,
  yearByYear: z.array(
    z.object({ year: z.int(), elements, total: z.number(), cumulativePresentValue: z.number() }),
  ),
  payback,
  breakEvenPrice: z.number().nullable(),
  annualEnergy: z.number(),
  annualCost: z.number(),
  upkeep: z.object({ pumpCount: z.int(), annualHours: z.number(), annualCost: z.number() }),
  annualExpectedLoss: z.object({ value: z.number(), low: z.number(), high: z.number() }),
  assemblies: z.array(
    z.object({
      setting: z.number().nullable(),
      settingFrom: z.string(),
      feasible: z.boolean(),
      detail: z.string().nullable(),
      remainingShare: z.number().nullable(),
      annualEnergy: z.number(),
      ageYears: z.number(),
    }),
  ),
});
const answer = z.object({
  id: z.string(),
  name: z.string(),
  stale: z.boolean(),
  options: z.array(option),
  cheapest: z.int().nullable(),
  breakEvenPrice: z.number().nullable(),
  sensitivity: z.array(z.object({ input: z.string(), largestChange: z.number() })),
  assumptions: z.object({ notes: z.array(z.string()), energyInflation: z.number() }),
  summary: z.string(),
  basis: z.object({ loops: z.array(z.object({ id: z.string(), version: z.int() })) }),
});

let app: StockedApp;
beforeEach(async () => {
  app = await stockedApp();
});

const post = (body: unknown, query = '') => app.call(`/v1/comparisons${query}`, sent('POST', body));

async function compared(body: unknown, query = '') {
  const response = await post(body, query);
  const text = await response.text();
  expect(response.status, text).toBe(201);
  return answer.parse(JSON.parse(text));
}

const read = async (id: string) => answer.parse(await (await app.call(`/v1/comparisons/${id}`)).json());

const optionOf = (found: z.infer<typeof answer>, place: number) => {
  const one = found.options[place];
  if (one === undefined) throw new Error(`no option ${place}`);
  return one;
};

/** One option that runs the stored pump on the stored loop. */
const running = (assembly: Json = {}) => ({
  years: 5,
  options: [{ name: 'as it is', assemblies: [{ loop: app.loopId, pump: app.pumpId, ...assembly }] }],
});

describe('the guide of pump life-cycle costs', () => {
  it('prints its four totals, from stated powers', async () => {
    const found = await compared({
      ...GUIDE_TERMS,
      price: GUIDE_PRICE,
      options: GUIDE_OPTIONS.map(({ name, initial, kilowatts, maintenance, other }) => ({
        name,
        assemblies: [{ power: kilowatts * 1000, hoursPerDay: GUIDE_HOURS / 365 }],
        extras: [
          { name: 'at first', kind: 'installation', cost: initial, year: 0 },
          { name: 'upkeep', kind: 'operation', cost: maintenance + other, year: 1, everyYears: 1 },
          { name: 'repair', kind: 'operation', year: 2, ...GUIDE_REPAIR },
        ],
      })),
    });
    const printed = GUIDE_OPTIONS.map((row) => row.printed);
    expect(found.options.map(({ presentValue }) => Math.round(presentValue))).toEqual(printed);
    expect(found.cheapest).toBe(1);
    expect(found.summary).toContain('B: trimmed impeller costs least over 8 years: 59480.6 EUR');
  });
});

describe('the seahorse bank', () => {
  it('lets a reader see which argument carries the one larger pump', async () => {
    const found = await compared(example('comparison-seahorse-bank.json'));
    const [three, one] = [optionOf(found, 0), optionOf(found, 1)];
    expect(found.cheapest).toBe(1);
    expect(three.upkeep.pumpCount).toBe(3);
    // 1.03/1.04 ten times, (r - r^11)/(1 - r) = 9.48612, on the energy of a year.
    expectClose(three.elements.energy ?? 0, three.annualCost * 9.48612, { relative: 1e-5 });
    // 4 failures in 18 device-years, a third of 4000 at each of three: 4000 x 0.2222 x exp(-6/12) a year.
    expectClose(three.annualExpectedLoss.value, (4000 * 4 * Math.exp(-0.5)) / 18, { relative: 1e-5 });
    // Four services of 20 min and 0.2222 failures of 120 min, three times; 30 an hour and 3 x 4 x 5 of parts.
    expectClose(three.upkeep.annualHours, (3 * (80 + (120 * 4) / 18)) / 60, { relative: 1e-5 });
    expectClose(three.upkeep.annualCost, 30 * three.upkeep.annualHours + 60, { relative: 1e-5 });
    expect(one.elements.downtime).toBeLessThan(three.elements.downtime ?? 0);
    expect(one.elements.purchase).toBeGreaterThan(three.elements.purchase ?? 0);
    expect(found.summary).toContain('Most is saved on expected losses');
    for (const each of found.options) {
      const sum = Object.values(each.elements).reduce((total, value) => total + value, 0);
      expectClose(sum, each.presentValue, { relative: 1e-5 });
      expectClose(each.yearByYear.at(-1)?.cumulativePresentValue ?? 0, each.presentValue, {
        relative: SIX_DIGITS,
      });
    }
  });

  it('is told as a table too', async () => {
    const text = await (await post(example('comparison-seahorse-bank.json'), '?format=csv')).text();
    const [header, first] = text.split('\r\n');
    expect(header).toMatch(
      /^optionName,feasible,presentValue \[EUR\],purchase \[EUR\],installation \[EUR\],energy \[EUR\],/,
    );
    expect(first).toMatch(/^Three Inline 60,true,/);
  });
});

describe('what an assembly runs at', () => {
  const first = async (body: unknown) => {
    const [assembly] = optionOf(await compared(body), 0).assemblies;
    if (assembly === undefined) throw new Error('no assembly');
    return assembly;
  };

  it('is recommended for a new pump: 70 %, 750.769 kWh a year, as the main job says', async () => {
    const assembly = await first(running());
    expect(assembly).toMatchObject({ setting: 70, settingFrom: 'recommended', feasible: true });
    expectClose(assembly.annualEnergy, 750.769, { relative: 1e-3 });
  });

  it('is the installed setting for a pump that is there, with its age since it was installed', async () => {
    const installed = { pump: app.pumpId, count: 1, setting: 80, since: '2025-01-15' };
    const loop = await created(app, '/v1/loops', { ...example('loop-kelp-flume.json'), installed });
    const assembly = await first({
      years: 5,
      options: [{ name: 'old', assemblies: [{ loop, new: false }] }],
    });
    expect(assembly).toMatchObject({ setting: 80, settingFrom: 'installed' });
    // The clock of the test stands at 2026-01-15T12:00Z.
    expectClose(assembly.ageYears, 1, { absolute: 0.01 });
  });

  it('is what is stated, whether it serves or not', async () => {
    expect(await first(running({ setting: 80 }))).toMatchObject({
      setting: 80,
      settingFrom: 'stated',
      feasible: true,
    });
    const low = await first(running({ setting: 60 }));
    expect(low.feasible).toBe(false);
    expect(low.detail).toBe('At 60 % not every outlet gets what it needs.');
  });

  it('is the highest where no setting serves, with the reason', async () => {
    const weak = await first(running({ pump: example('pump-inline-60.json') }));
    expect(weak).toMatchObject({ setting: 100, settingFrom: 'highest', feasible: false });
    expect(weak.detail).not.toBeNull();
  });

  it('follows the schedule of its loop, at less energy than at the day setting all day', async () => {
    const schedule = {
      phases: [
        { name: 'day', from: '08:00', factor: 1 },
        { name: 'night', from: '20:00', factor: 0.5 },
      ],
    };
    const installed = { pump: app.pumpId, count: 1, setting: 80 };
    const loop = await created(app, '/v1/loops', { ...example('loop-kelp-flume.json'), installed });
    const put = await app.call(`/v1/loops/${loop}/schedule`, sent('PUT', schedule));
    expect(put.status).toBe(201);
    const told: { annualEnergy: number } = JSON.parse(
      await (await app.call(`/v1/loops/${loop}/schedule`)).text(),
    );
    const assembly = await first({
      years: 5,
      options: [{ name: 'by day and night', assemblies: [{ loop }] }],
    });
    expect(assembly.settingFrom).toBe('schedule');
    expectClose(assembly.annualEnergy, told.annualEnergy, { relative: SIX_DIGITS });
    expect(assembly.annualEnergy).toBeLessThan(750);
  });

  it('of several pumps tells what is left with one at rest', async () => {
    const pair = await first(running({ count: 2 }));
    expect(pair.remainingShare).toBeGreaterThan(0);
    expect(pair.remainingShare).toBeLessThan(1);
    expect((await first(running())).remainingShare).toBe(0);
  });
});

describe('a stored comparison', () => {
  it('is read back as it was made, until its basis moves', async () => {
    const made = await compared({ ...running(), name: 'Flume' });
    expect(made.stale).toBe(false);
    expect(made.basis.loops).toEqual([{ id: app.loopId, version: 1 }]);
    expect(await read(made.id)).toEqual(made);
    const changed = { ...example('loop-kelp-flume.json'), frictionMultiplier: 1.1 };
    await app.call(app.loop, sent('PUT', changed, { 'If-Match': '*' }));
    expect(await read(made.id)).toEqual({ ...made, stale: true });
  });

  it('goes stale by the price of the site, not by its name', async () => {
    const made = await compared(running());
    const site = example('site.json');
    await app.call('/v1/site', sent('PUT', { ...site, name: 'Another name' }, { 'If-Match': '*' }));
    expect((await read(made.id)).stale).toBe(false);
    await app.call('/v1/site', sent('PUT', { ...site, price: 0.5 }, { 'If-Match': '*' }));
    expect((await read(made.id)).stale).toBe(true);
  });

  it('goes stale when a schedule comes, or its pump goes', async () => {
    const pump = await created(app, '/v1/pumps', example('pump-canister-120.json'));
    const made = await compared(running({ pump }));
    await app.call(`/v1/pumps/${pump}`, { method: 'DELETE', headers: { 'If-Match': '*' } });
    expect((await read(made.id)).stale).toBe(true);
  });

  it('goes stale when its loop is to be checked more often', async () => {
    const made = await compared(running());
    const starter = await app.call(`${app.loop}/starter-tasks`, sent('POST', {}));
    expect(starter.status).toBe(201);
    expect((await read(made.id)).stale).toBe(true);
    expect(optionOf(await compared(running()), 0).upkeep.annualHours).toBeGreaterThan(
      optionOf(made, 0).upkeep.annualHours,
    );
  });

  it('counts the checks of a loop once, however many run on it, and those of a pump', async () => {
    const check = { name: 'look', every: 'P1M', minutes: 60, parts: 0, firstDue: '2026-02-01' };
    const hours = async (assemblies: Json[]) =>
      optionOf(await compared({ years: 5, options: [{ name: 'a', assemblies }] }), 0).upkeep.annualHours;
    const one = { loop: app.loopId, pump: app.pumpId };
    // Two services of 45 min and 2/30 failures of 120 min: 1.63333 h a pump.
    expectClose(await hours([one]), 1.63333, { relative: 1e-5 });
    await created(app, '/v1/maintenance-tasks', { ...check, loop: app.loopId });
    expectClose(await hours([one]), 12 + 1.63333, { relative: 1e-5 });
    expectClose(await hours([one, one]), 12 + 2 * 1.63333, { relative: 1e-5 });
    const before = await compared(running());
    await created(app, '/v1/maintenance-tasks', { ...check, pump: app.pumpId });
    expectClose(await hours([one]), 24 + 1.63333, { relative: 1e-5 });
    expect((await read(before.id)).stale).toBe(true);
  });

  it('is a 304 while it stands, and never once it is stale', async () => {
    const { id } = await compared(running());
    const etag = (await app.call(`/v1/comparisons/${id}`)).headers.get('etag') ?? '';
    const again = () => app.call(`/v1/comparisons/${id}`, { headers: { 'If-None-Match': etag } });
    expect((await again()).status).toBe(304);
    await app.call(
      app.loop,
      sent('PUT', { ...example('loop-kelp-flume.json'), name: 'Moved' }, { 'If-Match': '*' }),
    );
    expect((await again()).status).toBe(200);
  });

  it('is listed by name, and deleted', async () => {
    const { id } = await compared({ ...running(), name: 'Flume' });
    const list: { items: Json[] } = JSON.parse(await (await app.call('/v1/comparisons?name=Flume')).text());
    expect(list.items).toMatchObject([{ id, name: 'Flume', optionCount: 1, cheapest: 'as it is' }]);
    const gone = await app.call(`/v1/comparisons/${id}`, { method: 'DELETE', headers: { 'If-Match': '*' } });
    expect(gone.status).toBe(204);
    expect((await app.call(`/v1/comparisons/${id}`)).status).toBe(404);
  });

  it('is deleted by the ETag that was read', async () => {
    const { id } = await compared(running());
    const path = `/v1/comparisons/${id}`;
    const etag = (await app.call(path)).headers.get('etag') ?? '';
    expect(etag).toBe('"1-metric"');
    const gone = await app.call(path, { method: 'DELETE', headers: { 'If-Match': etag } });
    expect(gone.status).toBe(204);
  });

  it('goes stale by the tariff of a schedule that its energy is priced by', async () => {
    const tariff = await created(app, '/v1/tariffs', example('tariff.json'));
    const installed = { pump: app.pumpId, count: 1, setting: 80 };
    const loop = await created(app, '/v1/loops', { ...example('loop-kelp-flume.json'), installed });
    const schedule = { ...example('schedule.json'), tariff };
    await app.call(`/v1/loops/${loop}/schedule`, sent('PUT', schedule));
    const made = await compared({ years: 5, options: [{ name: 'a', assemblies: [{ loop }] }] });
    expect((await read(made.id)).stale).toBe(false);
    const dearer = { ...example('tariff.json'), otherwise: { name: 'base', price: 0.5 } };
    await app.call(`/v1/tariffs/${tariff}`, sent('PUT', dearer, { 'If-Match': '*' }));
    expect((await read(made.id)).stale).toBe(true);
  });
});

describe('what makes no sense', () => {
  const kelp = example('loop-kelp-flume.json');
  const option = (assembly: Json, more: Json = {}) => ({
    years: 5,
    price: 0.2,
    options: [{ name: 'a', assemblies: [assembly], ...more }],
  });
  const powered = { power: 100 };
  const wide = (outlets: number) => ({
    ...kelp,
    discharge: {
      run: [{ pipe: 'sch80 1-1/2', length: 2.5 }],
      branches: Array.from({ length: outlets }, (_, i) => ({ run: [], outlet: { name: `o${i}` } })),
    },
  });

  it.each([
    { why: 'no options', body: { years: 5, options: [] }, pointer: '/options' },
    {
      why: 'two options of one name',
      body: { years: 5, price: 1, options: [...option(powered).options, ...option(powered).options] },
      pointer: '/options/1/name',
    },
    { why: 'no years', body: { options: option(powered).options }, pointer: '/years' },
    { why: 'years below 1', body: { ...option(powered), years: 0 }, pointer: '/years' },
    { why: 'half a year', body: { ...option(powered), years: 2.5 }, pointer: '/years' },
    { why: 'a discount of -100 %', body: { ...option(powered), discountRate: -1 }, pointer: '/discountRate' },
    {
      why: 'a discount of nearly -100 % for a century: sums beyond all numbers',
      body: { ...option(powered), years: 100, discountRate: -0.9999999 },
      pointer: '/discountRate',
    },
    {
      why: 'a discount that is -100 % once it is 20 % more',
      body: { ...option(powered), discountRate: -0.9 },
      pointer: '/discountRate',
    },
    {
      why: 'prices that grow beyond all numbers',
      body: { ...option(powered), years: 100, inflation: 10 },
      pointer: '/inflation',
    },
    {
      why: 'energy prices that do',
      body: { ...option(powered), years: 100, energyInflation: 10 },
      pointer: '/energyInflation',
    },
    {
      why: 'more assemblies in all than one request may have',
      body: {
        years: 5,
        price: 0.2,
        options: Array.from({ length: 5 }, (_, i) => ({ name: `${i}`, assemblies: Array(41).fill(powered) })),
      },
      pointer: '/options',
    },
    {
      why: 'more branches than a loop may have, joined',
      body: option({
        consolidate: { loops: [wide(1200), wide(1200)], suction: [], manifold: [] },
        pump: example('pump-canister-250.json'),
      }),
      pointer: '/options/0/assemblies/0/consolidate/loops',
    },
    { why: 'prices that fall by all', body: { ...option(powered), inflation: -1 }, pointer: '/inflation' },
    { why: 'another currency', body: { ...option(powered), currency: 'USD' }, pointer: '/currency' },
    {
      why: 'price and tariff',
      body: { ...option(powered), tariff: example('tariff.json') },
      pointer: '/tariff',
    },
    {
      why: 'an unknown tariff',
      body: { ...option(powered), price: undefined, tariff: 'nowhere' },
      pointer: '/tariff',
    },
    {
      why: 'no assemblies',
      body: { years: 5, options: [{ name: 'a', assemblies: [] }] },
      pointer: '/options/0/assemblies',
    },
    { why: 'neither loop nor power', body: option({}), pointer: '/options/0/assemblies/0' },
    { why: 'a loop without a pump', body: option({ loop: kelp }), pointer: '/options/0/assemblies/0/pump' },
    { why: 'an unknown loop', body: option({ loop: 'nowhere' }), pointer: '/options/0/assemblies/0/loop' },
    {
      why: 'an unknown pump',
      body: option({ loop: kelp, pump: 'nowhere' }),
      pointer: '/options/0/assemblies/0/pump',
    },
    {
      why: 'a negative life',
      body: option({ loop: kelp, pump: { ...example('pump-canister-250.json'), expectedLifeYears: -1 } }),
      pointer: '/options/0/assemblies/0/pump/expectedLifeYears',
    },
    {
      why: 'power and setting',
      body: option({ ...powered, setting: 70 }),
      pointer: '/options/0/assemblies/0/setting',
    },
    {
      why: 'a setting out of range',
      body: option({ loop: kelp, pump: example('pump-canister-250.json'), setting: 20 }),
      pointer: '/options/0/assemblies/0/setting',
    },
    {
      why: 'loop and consolidation',
      body: option({ loop: kelp, consolidate: { loops: [kelp, kelp], suction: [], manifold: [] } }),
      pointer: '/options/0/assemblies/0/consolidate',
    },
    {
      why: 'other water to join',
      body: option({
        consolidate: { loops: [kelp, { ...kelp, water: { temperature: 10 } }], suction: [], manifold: [] },
        pump: example('pump-canister-250.json'),
      }),
      pointer: '/options/0/assemblies/0/consolidate/loops/1',
    },
    {
      why: 'a manifold of unknown pipe',
      body: option({
        consolidate: { loops: [kelp, kelp], suction: [], manifold: [{ pipe: 'sch40 99', length: 1 }] },
        pump: example('pump-canister-250.json'),
      }),
      pointer: '/options/0/assemblies/0/consolidate/manifold/0/pipe',
    },
    {
      why: 'an extra after the end',
      body: option(powered, { extras: [{ name: 'late', kind: 'operation', cost: 1, year: 6 }] }),
      pointer: '/options/0/extras/0/year',
    },
    {
      why: 'an extra of no kind',
      body: option(powered, { extras: [{ name: 'odd', kind: 'energy', cost: 1, year: 0 }] }),
      pointer: '/options/0/extras/0/kind',
    },
    {
      why: 'a risk without a time',
      body: option(powered, { risk: { valueAtRisk: 1, survivalHours: 1 } }),
      pointer: '/options/0/risk/meanRestoreHours',
    },
  ])('is refused: $why', async ({ body, pointer }) => {
    const problem = await refused(await post(body));
    expect(problem.status).toBe(422);
    expect(problem.errors?.[0]?.pointer).toBe(pointer);
  });

  it('is refused: no price at all', async () => {
    await app.call('/v1/site', sent('PUT', { ...example('site.json'), price: null }, { 'If-Match': '*' }));
    const { errors } = await refused(await post({ years: 5, options: option(powered).options }));
    expect(errors?.[0]?.pointer).toBe('/price');
  });
});
