/** NPSH and suction pressure of duties against worked figures. */
import { describe, expect, it } from 'vitest';
import { expectClose } from '../../expect-close.ts';
import { ATMOSPHERES, VAPOUR_PRESSURES } from '../suction.ts';
import { FRESH_DENSITY, LH, loopOf, pipe, pumpE, pumpW, SEA, SEA_DENSITY, STATED } from './cases.ts';
import { circuitOfLoop, landing } from './duties.ts';
import { atmosphere, available, required, suctionPressure, vapourPressure } from './npsh.ts';

describe('pressures', () => {
  it.each(VAPOUR_PRESSURES)('of vapour at $temperature degC', ({ temperature, expected, tolerance }) => {
    expectClose(vapourPressure(temperature), expected, { relative: tolerance });
  });

  it.each(ATMOSPHERES)('of air at $elevation m', ({ elevation, expected, tolerance }) => {
    expectClose(atmosphere(elevation), expected, { relative: tolerance });
  });
});

/** Velocity head [m] of a flow [m3/s] in a pipe of a bore [m]. */
const velocityHead = (flow: number, bore: number): number =>
  (flow / ((Math.PI / 4) * bore ** 2)) ** 2 / (2 * 9.80665);

// Figures of a separate calculation, fresh water of 20 degC at sea level.
describe('a pump 1.5 m above the water', () => {
  const loop = loopOf({
    pumpElevation: 1.5,
    suction: [pipe(50, 3)],
    discharge: { run: [pipe(40, 2)], outlet: { name: 'end' } },
  });
  const points = [
    { flow: 2000 * LH, head: 0.8 },
    { flow: 5000 * LH, head: 1.5 },
  ];

  it.each([
    [60, 5685.62, 0.0601475, 8.55173, 3.44814, 2.4801, -15.5953],
    [100, 9506.81, 0.155216, 8.45667, 5.42277, 1.55947, -17.1058],
  ])('at %d %%', (setting, expectedFlow, expectedLoss, head, need, ratio, kilopascals) => {
    const flow = landing(loop, pumpE, setting).flow * LH;
    expectClose(flow / LH, expectedFlow, STATED);
    const loss = circuitOfLoop(loop).suction(flow);
    expectClose(loss, expectedLoss, STATED);
    const suction = {
      loss,
      density: FRESH_DENSITY,
      pumpElevation: 1.5,
      velocityHead: velocityHead(flow, 0.05),
    };
    const has = available(suction, { temperature: 20, elevation: 0 });
    const needs = required(points, { ratio: setting / 100, flow });
    expectClose(has, head, STATED);
    expectClose(needs, need, STATED);
    expectClose(has / needs, ratio, STATED);
    expectClose(suctionPressure(suction) / 1000, kilopascals, STATED);
  });
});

// Figures of a separate calculation, seawater of 25 degC at sea level.
describe('a pump 2 m above the sea', () => {
  const loop = loopOf({
    water: SEA,
    pumpElevation: 2,
    suction: [pipe(45, 5), { fitting: 'elbow-90', count: 2 }],
    discharge: { run: [pipe(40, 6)], outlet: { name: 'end' } },
  });
  const points = [
    { flow: 4000 * LH, head: 1.2 },
    { flow: 8000 * LH, head: 2.2 },
  ];
  const flow = landing(loop, pumpW, 75).flow * LH;
  const suction = {
    density: SEA_DENSITY,
    pumpElevation: 2,
    loss: circuitOfLoop(loop).suction(flow),
    velocityHead: velocityHead(flow, 0.045),
  };
  const has = available(suction, { temperature: 25, elevation: 0 });
  const needs = required(points, { ratio: 0.75, flow });

  it.each([
    ['flow', flow / LH, 8766.96],
    ['suction loss', suction.loss, 0.458131],
    ['head of the air', has + 2 + suction.loss, 9.78073],
    ['available', has, 7.3226],
    ['flow at full speed', flow / LH / 0.75, 11_689.28],
    ['required', needs, 3.006062],
    ['ratio', has / needs, 2.435945],
    ['velocity', Math.sqrt(suction.velocityHead * 2 * 9.80665), 1.531198],
    ['suction pressure', suctionPressure(suction) / 1000, -25.8684],
  ])('has the stated %s', (_, actual, expected) => {
    expectClose(actual, expected, STATED);
  });

  it('needs no less below the least measured flow', () => {
    expect(required(points, { ratio: 1, flow: 0 })).toBe(1.2);
  });
});
