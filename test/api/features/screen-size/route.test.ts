/** Screen sizes over HTTP. */
import { beforeEach, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { expectClose } from '../../../expect-close.ts';
import { type AppUnderTest, appUnderTest } from '../../app-under-test.ts';
import { example, type Json, sent } from '../../requests.ts';
import { answered, refused } from '../../stocked-app.ts';

const SIX_DIGITS = 1e-5;
const REQUEST = example('screen-size.json');
const { slot, pitch, ...CYLINDER } = REQUEST;
const FLAT = { flow: 4000, shape: 'flat', width: 0.3, openFraction: 0.4 };
const BOX = { ...FLAT, shape: 'box', height: 0.2 };

const answer = z.object({
  length: z.number(),
  count: z.int(),
  diameter: z.number().nullable(),
  openFraction: z.number(),
  meanVelocity: z.number(),
  peakVelocity: z.number(),
  summary: z.string().min(1),
  cautions: z.array(z.object({ code: z.string() })),
  basis: z.object({ modelVersion: z.string() }),
  units: z.record(z.string(), z.string()),
});

let app: AppUnderTest;
beforeEach(async () => {
  app = await appUnderTest();
});

const ask = (body: unknown, query = '') => app.call(`/v1/screen-sizes${query}`, sent('POST', body));
const sizeOf = async (body: unknown, query = '') => answered(answer, await ask(body, query));

describe('a screen size', () => {
  it('of a flat screen is by continuity: 4000 L/h at 0.1524 m/s, half clogged, 40 % open, 0.3 m wide', async () => {
    const found = await sizeOf(FLAT);
    expectClose(found.length, 4000 / 3.6e6 / (0.1524 * 0.5 * 0.4 * 0.3), { relative: SIX_DIGITS });
    expectClose(found.meanVelocity, 0.1524, { relative: SIX_DIGITS });
    expect(found).toMatchObject({ count: 1, diameter: null, peakVelocity: found.meanVelocity });
  });

  it('of a cylinder that no length mends is a count, or a diameter', async () => {
    const found = await sizeOf(REQUEST);
    expect(found.count).toBeGreaterThan(1);
    expectClose(found.peakVelocity, 0.1524, { relative: SIX_DIGITS });
    expect(found.length).toBeLessThanOrEqual(0.6);
    const wider = await sizeOf({ ...REQUEST, diameter: (found.diameter ?? 0) * 1.001 });
    expect(wider).toMatchObject({ count: 1, diameter: null });
    // The words of the design for this case, with the figures of the answer.
    expect(found.summary).toMatch(
      /^No single cylinder of 60 mm is enough\. Five, each 1\d\d mm long, are\. One of 1\d\d mm, 1\.\d\d m long, is as well\.$/,
    );
  });

  it.each([
    [{ slot: 1, pitch: 4 }, 0.25],
    [{ hole: 2, pitch: 4, pattern: 'square' }, Math.PI / 16],
    [{ hole: 2, pitch: 4, pattern: 'staggered' }, Math.PI / (8 * Math.sqrt(3))],
    [{ openFraction: 0.25, slot: 1 }, 0.25],
  ])('takes the open fraction from %o', async (openings, expected) => {
    const { openFraction } = await sizeOf({ ...FLAT, openFraction: undefined, ...openings });
    expectClose(openFraction, expected, { relative: SIX_DIGITS });
  });

  it('of a box is shorter than of the flat screen of its width', async () => {
    const flow = 40_000;
    const flat = await sizeOf({ ...FLAT, flow });
    expect((await sizeOf({ ...BOX, flow })).length).toBeLessThan(flat.length);
  });

  it('is the same asked in US units', async () => {
    const us = await sizeOf({ ...FLAT, flow: '4000 L/h', width: '0.3 m' }, '?units=us');
    expectClose(us.length * 0.3048, (await sizeOf(FLAT)).length, { relative: SIX_DIGITS });
    expect(us.units).toMatchObject({ length: 'ft', velocity: 'ft/s' });
  });

  it('cautions openings that the smallest animal passes', async () => {
    const codes = async (smallestAnimal: number) =>
      (await sizeOf({ ...REQUEST, smallestAnimal })).cautions.map(({ code }) => code);
    expect(await codes(2)).toContain('animal-fits-opening');
    expect(await codes(2.1)).not.toContain('animal-fits-opening');
    expect(await codes(2.1)).toContain('screen-yardstick');
  });
});

/** The body, and where its fault is told. */
const BAD: readonly (readonly [string, Json, string])[] = [
  ['no flow', { ...FLAT, flow: undefined }, '/flow'],
  ['flow of nothing', { ...FLAT, flow: 0 }, '/flow'],
  ['flow in another dimension', { ...FLAT, flow: '3 m' }, '/flow'],
  ['unknown shape', { ...FLAT, shape: 'cone' }, '/shape'],
  ['no shape', { ...FLAT, shape: undefined }, '/shape'],
  ['no width', { ...FLAT, width: undefined }, '/width'],
  ['width of nothing', { ...FLAT, width: 0 }, '/width'],
  ['no height', { ...BOX, height: undefined }, '/height'],
  ['a diameter on a flat screen', { ...FLAT, diameter: 60 }, '/diameter'],
  ['a negative diameter', { ...REQUEST, diameter: -60 }, '/diameter'],
  ['no openings', CYLINDER, '/openFraction'],
  ['a fraction of nothing', { ...FLAT, openFraction: 0 }, '/openFraction'],
  ['a fraction above 1', { ...FLAT, openFraction: 1.01 }, '/openFraction'],
  ['a slot as wide as its pitch', { ...CYLINDER, slot: 2, pitch: 2 }, '/pitch'],
  ['a pitch alone', { ...CYLINDER, pitch: 2 }, '/pitch'],
  ['holes without a pattern', { ...CYLINDER, hole: 2, pitch: 3 }, '/pattern'],
  ['an unknown pattern', { ...CYLINDER, hole: 2, pitch: 3, pattern: 'random' }, '/pattern'],
  ['a pattern of slots', { ...REQUEST, pattern: 'square' }, '/pattern'],
  ['slots and holes', { ...REQUEST, hole: 2 }, '/hole'],
  ['a fraction that the slots do not give', { ...REQUEST, openFraction: 0.5 }, '/openFraction'],
  ['hardly an opening', { ...CYLINDER, slot: '0.00001 mm', pitch: '1 m' }, '/pitch'],
  ['all clogged', { ...FLAT, cloggedFraction: 1 }, '/cloggedFraction'],
  ['no velocity allowed', { ...FLAT, throughSlotVelocity: 0 }, '/throughSlotVelocity'],
  ['a velocity of null', { ...FLAT, throughSlotVelocity: null }, '/throughSlotVelocity'],
  ['an animal of no width', { ...FLAT, smallestAnimal: 0 }, '/smallestAnimal'],
  ['an unknown member', { ...FLAT, colour: 'red' }, '/colour'],
  ['other units', { ...FLAT, units: 'us' }, '/units'],
];

describe('a question for a screen that makes no sense', () => {
  it.each(BAD)('is refused where its fault is: %s', async (_, body, pointer) => {
    const problem = await refused(await ask(body));
    expect(problem.status).toBe(422);
    expect(problem.errors?.map((error) => error.pointer)).toContain(pointer);
  });

  it('is refused with the limit where it takes over a thousand screens', async () => {
    const problem = await refused(await ask({ ...REQUEST, flow: 1e6, diameter: 1 }));
    expect(problem).toMatchObject({ status: 422, code: 'limit-exceeded', limit: 1000 });
    expect(problem.actual).toBeGreaterThan(1000);
  });

  it('never fails at the ends of its ranges', async () => {
    const flows = ['0.000000000001 m3/s', '10 m3/s'];
    for (const flow of flows) {
      for (const openFraction of [1e-4, 1]) {
        for (const cloggedFraction of [0, 0.99]) {
          for (const face of [
            { shape: 'cylinder', diameter: '0.1 mm' },
            { shape: 'cylinder', diameter: '5 m' },
            { shape: 'flat', width: '10000 m' },
            { shape: 'box', width: '0.000001 m', height: '0.000001 m' },
          ]) {
            const response = await ask({ ...face, flow, openFraction, cloggedFraction });
            expect([200, 422], await response.text()).toContain(response.status);
          }
        }
      }
    }
  });
});
