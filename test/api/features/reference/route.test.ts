/** Pipes, fittings and water over HTTP. */
import { beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { expectClose } from '../../../expect-close.ts';
import { type AppUnderTest, appUnderTest } from '../../app-under-test.ts';
import { answered, refused } from '../../stocked-app.ts';

let app: AppUnderTest;
beforeAll(async () => {
  app = await appUnderTest();
});

const pipes = z.object({
  items: z.array(
    z.object({
      name: z.string(),
      insideDiameter: z.number(),
      outsideDiameter: z.number(),
      roughness: z.number(),
      source: z.string().min(1),
    }),
  ),
  units: z.record(z.string(), z.string()),
});
const fittings = z.object({
  items: z.array(
    z.object({
      name: z.string(),
      kind: z.enum(['fitting', 'valve']),
      method: z.string(),
      value: z.number().nullable(),
      source: z.string().min(1),
    }),
  ),
});
const water = z.object({
  temperature: z.number(),
  salinity: z.number(),
  density: z.number(),
  viscosity: z.number(),
  kinematicViscosity: z.number(),
  vapourPressure: z.number(),
  source: z.string().min(1),
});

describe('the pipes', () => {
  // Mean bores OD - 2(t_min + tolerance/2) of ASTM D1785 walls; the wall tolerance is from memory.
  it.each([
    ['sch40 1/2', 15.29],
    ['sch40 1', 26.14],
    ['sch80 1-1/2', 37.49],
    ['sch80 2', 48.59],
    ['sch80 4', 96.16],
  ])('%s has the mean bore of its standard', async (name, bore) => {
    const { items } = await answered(pipes, await app.call('/v1/reference/pipes'));
    const row = items.find((one) => one.name === name);
    expectClose(row?.insideDiameter ?? 0, bore, { absolute: 0.03 });
    expect(row?.roughness).toBe(0.0015);
  });

  it('come in inches', async () => {
    const metric = await answered(pipes, await app.call('/v1/reference/pipes'));
    const us = await answered(pipes, await app.call('/v1/reference/pipes?units=us'));
    expect([metric.units.diameter, us.units.diameter]).toEqual(['mm', 'in']);
    us.items.forEach(({ insideDiameter }, i) => {
      expectClose(insideDiameter * 25.4, metric.items[i]?.insideDiameter ?? 0, { relative: 1e-5 });
    });
  });

  it('come in CSV and by pointer', async () => {
    const csv = await (await app.call('/v1/reference/pipes?format=csv')).text();
    expect(csv.split('\r\n')[0]).toBe(
      'name,standard,insideDiameter [mm],outsideDiameter [mm],minimumWall [mm],source',
    );
    const { items } = await answered(pipes, await app.call('/v1/reference/pipes'));
    const text = await (await app.call('/v1/reference/pipes?pointer=/items/0/name')).text();
    expect(text).toBe(items[0]?.name);
  });
});

describe('the fittings', () => {
  // Multiples n of K = n fT: Crane TP-410 (2009); elbow-45 and the tees are from memory.
  it.each([
    ['elbow-90', 'fitting', 30],
    ['elbow-45', 'fitting', 16],
    ['tee-run', 'fitting', 20],
    ['tee-branch', 'fitting', 60],
    ['ball', 'valve', 3],
    ['gate', 'valve', 8],
  ])('%s is there with its source', async (name, kind, value) => {
    const { items } = await answered(fittings, await app.call('/v1/reference/fittings'));
    expect(items.find((one) => one.name === name)).toMatchObject({
      kind,
      value,
      method: 'equivalent-diameters',
    });
  });
});

describe('water', () => {
  it.each<[string, number, number]>([
    // UNESCO technical paper 44 (Fofonoff and Millard 1983), check values of EOS-80 at one atmosphere.
    ['temperature=25&salinity=35', 1023.34306, 1e-5],
    ['temperature=5&salinity=35', 1027.67547, 1e-5],
    ['temperature=5&salinity=0', 999.96675, 1e-5],
    ['', 1023.34306, 1e-5],
    ['temperature=77&salinity=35&units=us', 1023.34306, 1e-5],
    ['temperature=77%20degF', 1023.34306, 1e-5],
  ])('at "%s" has the density of EOS-80', async (query, density, relative) => {
    const found = await answered(water, await app.call(`/v1/reference/water?${query}`));
    expectClose(found.density, density, { relative });
  });

  it('has the viscosity of Sharqawy et al. and the vapour pressure of IAPWS', async () => {
    const found = await answered(water, await app.call('/v1/reference/water?temperature=25&salinity=35'));
    // Sharqawy, Lienhard and Zubair 2010, eq. 22-23, computed apart: 0.958828 mPa s.
    expectClose(found.viscosity, 0.958828e-3, { relative: 1e-4 });
    expectClose(found.kinematicViscosity, found.viscosity / found.density, { relative: 1e-5 });
    // IAPWS-95 at 25 degC, computed apart: 3169.9 Pa.
    const text = await (await app.call('/v1/reference/water?pointer=/vapourPressure')).text();
    expectClose(Number(text) * 1000, 3169.9, { relative: 1e-3 });
  });

  it.each([
    ['temperature=46', 'temperature'],
    ['temperature=-1', 'temperature'],
    ['temperature=warm', 'temperature'],
    ['temperature=20%20K', 'temperature'],
    ['temperature=1e1', 'temperature'],
    ['temperature=', 'temperature'],
    ['salinity=61', 'salinity'],
    ['salinity=NaN', 'salinity'],
    ['pressure=1', 'pressure'],
  ])('is refused for ?%s', async (query, parameter) => {
    const { status, errors } = await refused(await app.call(`/v1/reference/water?${query}`));
    expect([status, errors?.map((error) => error.parameter)]).toEqual([422, [parameter]]);
  });
});

it.each(['/v1/reference/pipes', '/v1/reference/fittings', '/v1/reference/water'])(
  '%s is spared when it is known, and takes no other method',
  async (path) => {
    const tag = (await app.call(path)).headers.get('etag') ?? '';
    expect((await app.call(path, { headers: { 'If-None-Match': tag } })).status).toBe(304);
    const response = await app.call(path, { method: 'POST' });
    expect([response.status, response.headers.get('allow')]).toEqual([405, 'GET, HEAD']);
  },
);
