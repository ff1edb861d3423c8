/** Readings that must not be applied, and what an applied calibration leaves open in plain answers. */
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { expectClose } from '../../../expect-close.ts';
import { jsonOf, sent } from '../../requests.ts';
import { answered, refused } from '../../stocked-app.ts';
import { calibrate, calibratedLoop } from './calibrated-loop.ts';

const TRUTH = { friction: 1.4, head: 0.95, power: 1 };
const SETTINGS = [50, 60, 70, 80, 90, 100];
const IF_ANY = { 'If-Match': '*' };

async function read(change: (place: number) => { readonly flow: number; readonly head: number }) {
  const app = await calibratedLoop(TRUTH);
  const duties = await Promise.all(SETTINGS.map((setting) => app.truly(setting)));
  await app.taken(
    SETTINGS.map((setting, place) => {
      const { flow = 1, head = 1 } = change(place);
      return {
        setting,
        flow: flow * (duties[place]?.flow ?? 0),
        head: head * (duties[place]?.head ?? 0),
      };
    }),
  );
  return app;
}

const AS_IS = { flow: 1, head: 1 };

describe('one reading in another unit among six', () => {
  it('moves no factor, is named with its slip, and the others are applied', async () => {
    const app = await read((place) => (place === 2 ? { flow: 1 / 3.785, head: 1 } : AS_IS));
    const found = await calibrate(app);
    expect(found.misfits).toMatchObject([{ measure: 'flow', setting: 70, slip: 'gallons-and-litres' }]);
    const friction = found.parameters.find(({ name }) => name === 'friction');
    expectClose(friction?.value ?? 0, TRUTH.friction, { relative: 0.01 });
    expect(found.summary).toContain('One reading does not fit: total flow at 70 %, -74 %.');
    expect((await calibrate(app, { apply: true }, IF_ANY)).applied).toBe(true);
  });
});

describe('readings that scatter by 15 %', () => {
  it('are answered with a refusal, and not applied', async () => {
    const signs = [1, -1, 1, -1, -1, 1];
    const app = await read((place) => ({ flow: 1 + 0.15 * (signs[place] ?? 0), head: 1 }));
    expect((await calibrate(app)).refusal?.code).toMatch(/^readings-(scatter|do-not-fit)$/);
    const problem = await refused(await app.call(app.calibration, sent('POST', { apply: true }, IF_ANY)));
    expect(problem).toMatchObject({
      status: 422,
      code: 'calibration-refused',
      errors: [{ pointer: '/apply' }],
    });
    expect(await jsonOf(await app.call(app.loop))).toMatchObject({ version: 1 });
  });
});

describe('a duty on a calibrated loop', () => {
  const dutyBody = z.looseObject({
    flow: z.number(),
    outlets: z.array(z.looseObject({ name: z.string(), margin: z.number().nullable() })),
    uncertainty: z
      .looseObject({
        flow: z.object({ low: z.number(), high: z.number() }),
        margin: z.object({ low: z.number(), high: z.number() }).optional(),
      })
      .nullable(),
  });

  it('has the uncertainty of the calibration in its flow, and the margin of the limiting outlet', async () => {
    const app = await read(() => AS_IS);
    const duty = async () => answered(dutyBody, await app.call(`${app.loop}/duty-point?setting=80`));
    const before = await duty();
    expect(before.uncertainty?.margin).toBeUndefined();
    const { smallestMargin } = await calibrate(app, { apply: true }, IF_ANY);
    const after = await duty();
    const { low = 0, high = 0 } = after.uncertainty?.margin ?? {};
    const interval = smallestMargin?.uncertainty?.interval;
    // The same interval by the slopes of the fit.
    expectClose(high - low, (interval?.high ?? 0) - (interval?.low ?? 0), { relative: 0.05 });
    const truth = (await app.truly(80)).outlets.find(({ name }) => name === 'far end')?.flow ?? 0;
    expect(truth / 3000 - 1).toBeGreaterThan(low);
    expect(truth / 3000 - 1).toBeLessThan(high);
    expect(after.uncertainty?.flow.low).toBeLessThan(after.flow);
    expect(after.uncertainty?.flow.high).toBeGreaterThan(after.flow);
  });
});
