/** Leak exposures over HTTP. */
import { beforeEach, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { expectClose } from '../../../expect-close.ts';
import { DRAIN_TIMES } from '../../../reference/drains.ts';
import { type AppUnderTest, appUnderTest } from '../../app-under-test.ts';
import { example, type Json, sent } from '../../requests.ts';
import { answered, refused } from '../../stocked-app.ts';

const SIX_DIGITS = 1e-5;
const SEAL = example('leak-exposure.json');
const HOLE = { opening: { diameter: 25 }, depth: 0.4, tank: { volume: 2400, area: 4 } };

const answer = z.object({
  flow: z.number(),
  timeToHole: z.number(),
  timeToLevel: z.number().nullable(),
  volume: z.number(),
  floodDepth: z.number().nullable(),
  summary: z.string().min(1),
  cautions: z.array(z.object({ code: z.string() })),
  units: z.record(z.string(), z.string()),
});

let app: AppUnderTest;
beforeEach(async () => {
  app = await appUnderTest();
});

const ask = (body: unknown, query = '') => app.call(`/v1/leak-exposures${query}`, sent('POST', body));
const leakOf = async (body: unknown, query = '') => answered(answer, await ask(body, query));

describe('a leak exposure', () => {
  it.each(DRAIN_TIMES)('takes $expected s: $source', async (row) => {
    const { surface, openingDiameter, from, to, dischargeCoefficient, expected, tolerance } = row;
    const found = await leakOf({
      opening: { diameter: openingDiameter * 1000 },
      depth: from,
      level: to,
      tank: { area: surface },
      dischargeCoefficient,
    });
    expectClose(found.timeToLevel ?? 0, expected, { relative: tolerance });
  });

  it('of a hole of 25 mm under 0.4 m is Torricelli with Cd 0.61', async () => {
    const { flow, volume, floodDepth, timeToLevel } = await leakOf(HOLE);
    const byHand = 0.61 * (Math.PI / 4) * 0.025 ** 2 * Math.sqrt(2 * 9.80665 * 0.4);
    expectClose(flow, byHand * 3.6e6, { relative: SIX_DIGITS });
    expectClose(volume, 1600, { relative: SIX_DIGITS });
    expect([floodDepth, timeToLevel]).toEqual([null, null]);
  });

  it('of a gaping seal floods the floor', async () => {
    const found = await leakOf(SEAL);
    expectClose(found.floodDepth ?? 0, 1.6 / 12, { relative: SIX_DIGITS });
    expect(found.timeToLevel).toBeLessThan(found.timeToHole);
    expect(found.cautions.map(({ code }) => code)).toEqual(expect.arrayContaining(['bulkheads']));
    expect(found.summary).toMatch(
      /^The leak starts at [\d.]+ L\/h\. After [\d.]+ (?:s|min|h|days), [\d.]+ L has been lost, [\d.]+ m?m deep on the floor\.$/,
    );
  });

  it('of a pipe broken below the tank is faster', async () => {
    const [here, below] = [await leakOf(HOLE), await leakOf({ ...HOLE, drop: 1.2 })];
    expectClose(below.flow / here.flow, 2, { relative: SIX_DIGITS });
    expect(below.volume).toBe(here.volume);
  });

  it('is the same asked in US units', async () => {
    const body = { opening: { diameter: '25 mm' }, depth: '0.4 m', tank: { volume: '2400 L', area: '4 m2' } };
    const us = await leakOf(body, '?units=us');
    expectClose(us.timeToHole, (await leakOf(HOLE)).timeToHole, { relative: SIX_DIGITS });
    expect(us.units).toMatchObject({ flow: 'gal/h', volume: 'gal', time: 's' });
  });
});

/** The body, and where its fault is told. */
const BAD: readonly (readonly [string, Json, string])[] = [
  ['no opening', { ...HOLE, opening: undefined }, '/opening'],
  ['an empty opening', { ...HOLE, opening: {} }, '/opening'],
  ['a hole of nothing', { ...HOLE, opening: { diameter: 0 } }, '/opening/diameter'],
  ['a gap without a fitting', { ...HOLE, opening: { gap: 1 } }, '/opening/fittingDiameter'],
  ['a gap of nothing', { ...HOLE, opening: { gap: 0, fittingDiameter: 60 } }, '/opening/gap'],
  ['a hole and a gap', { ...HOLE, opening: { diameter: 25, gap: 1 } }, '/opening/gap'],
  ['a hole wider than the tank', { ...HOLE, opening: { diameter: 2500 } }, '/opening'],
  ['no depth', { ...HOLE, depth: undefined }, '/depth'],
  ['a hole at the surface', { ...HOLE, depth: 0 }, '/depth'],
  ['a break above the hole', { ...HOLE, drop: -1 }, '/drop'],
  ['a level above the surface', { ...HOLE, level: 0.41 }, '/level'],
  ['a level below the hole', { ...HOLE, level: -0.1 }, '/level'],
  ['no tank', { ...HOLE, tank: undefined }, '/tank'],
  ['a tank without a surface', { ...HOLE, tank: { volume: 2400 } }, '/tank/area'],
  ['a tank of no surface', { ...HOLE, tank: { area: 0 } }, '/tank/area'],
  ['a tank of no volume', { ...HOLE, tank: { area: 4, volume: 0 } }, '/tank/volume'],
  ['a floor of nothing', { ...HOLE, floorArea: 0 }, '/floorArea'],
  ['a floor in another dimension', { ...HOLE, floorArea: '12 m' }, '/floorArea'],
  ['a coefficient above 1', { ...HOLE, dischargeCoefficient: 1.1 }, '/dischargeCoefficient'],
  ['a coefficient of nothing', { ...HOLE, dischargeCoefficient: 0 }, '/dischargeCoefficient'],
  ['an unknown member', { ...HOLE, colour: 'red' }, '/colour'],
];

describe('a leak that makes no sense', () => {
  it.each(BAD)('is refused where its fault is: %s', async (_, body, pointer) => {
    const problem = await refused(await ask(body));
    expect(problem.status).toBe(422);
    expect(problem.errors?.map((error) => error.pointer)).toContain(pointer);
  });

  it('never fails at the ends of its ranges', async () => {
    for (const opening of [{ diameter: '0.1 mm' }, { gap: '0.000000001 mm', fittingDiameter: '5 m' }]) {
      for (const area of ['0.000001 m2', '1000000 m2']) {
        for (const depth of ['0.000000001 m', '10000 m']) {
          const response = await ask({ opening, depth, tank: { area }, drop: 10_000, floorArea: area });
          expect([200, 422], await response.text()).toContain(response.status);
        }
      }
    }
  });
});
