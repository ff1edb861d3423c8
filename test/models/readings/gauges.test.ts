/** Pressures at gauges in pipes of unlike bores. */
import { describe, expect, it } from 'vitest';
import { predictedAt, type Station } from '../../../models/condition/predicted.ts';
import type { Gauges, Loop } from '../../../models/loop/loop.ts';
import { GRAVITY } from '../../../models/physics/gravity.ts';
import { lacksGauges, velocityHeads, velocityRise } from '../../../models/readings/gauges.ts';
import { expectClose } from '../../expect-close.ts';
import { FLUME, stationAt } from '../../rates/stations.ts';
import { modelOf } from '../example-loops.ts';

/** Bores of schedule 80 pipe of 2 and 1-1/2 in. */
const GAUGES: Gauges = { suctionDiameter: 0.0489, dischargeDiameter: 0.0375 };
const SETTING = 80;

const withGauges = (station: Station, gauges: Gauges | undefined): Station => {
  const loop: Loop = { ...station.loop.entered, gauges };
  return { ...station, loop: modelOf(loop) };
};

describe('velocity heads at gauges', () => {
  it('are V^2/2g of each bore: 1 m/s is 0.05099 m', () => {
    const diameter = 0.05;
    const flow = (Math.PI / 4) * diameter ** 2;
    const { suction, discharge } = velocityHeads(
      { suctionDiameter: diameter, dischargeDiameter: diameter / 2 },
      flow,
    );
    expectClose(suction, 1 / (2 * GRAVITY), { relative: 1e-12 });
    expectClose(discharge, 16 / (2 * GRAVITY), { relative: 1e-12 });
  });

  it('are left out where no bores are stated, and even out where they are alike', () => {
    expect(velocityHeads(undefined, 1)).toEqual({ suction: 0, discharge: 0 });
    expect(velocityRise({ suctionDiameter: 0.05, dischargeDiameter: 0.05 }, 1)).toBe(0);
  });
});

describe('a loop with gauges in unlike bores', () => {
  const station = stationAt(FLUME);

  it('is predicted to show the pressures of the total heads, less rho V^2/2', () => {
    const [total, shown] = [undefined, GAUGES].map((gauges) =>
      predictedAt(withGauges(station, gauges), SETTING),
    );
    const { density } = station.loop.water;
    const flow = total?.flow ?? Number.NaN;
    const dynamic = (diameter: number) => (density * (flow / ((Math.PI / 4) * diameter ** 2)) ** 2) / 2;
    const { suctionDiameter, dischargeDiameter } = GAUGES;
    expectClose(
      shown?.suctionPressure ?? Number.NaN,
      (total?.suctionPressure ?? Number.NaN) - dynamic(suctionDiameter),
      { relative: 1e-9 },
    );
    expectClose(
      shown?.dischargePressure ?? Number.NaN,
      (total?.dischargePressure ?? Number.NaN) - dynamic(dischargeDiameter),
      { relative: 1e-9 },
    );
    expect(shown?.head).toBe(total?.head);
  });

  it('lacks them where that matters', () => {
    const shown = predictedAt(station, SETTING);
    expect(shown !== null && lacksGauges(station.loop, shown)).toBe(true);
    expect(lacksGauges(withGauges(station, GAUGES).loop, { flow: 2e-3, head: 2 })).toBe(false);
    expect(lacksGauges(station.loop, { flow: 1e-4, head: 2 })).toBe(false);
  });
});
