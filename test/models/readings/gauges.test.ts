/** Pressures at gauges in pipes of unlike bores. */
import { describe, expect, it } from 'vitest';
import { conditionOf } from '../../../models/condition/condition.ts';
import { predictedAt, type Station } from '../../../models/condition/predicted.ts';
import type { Gauges, Loop } from '../../../models/loop/loop.ts';
import { GRAVITY } from '../../../models/physics/gravity.ts';
import { lacksGauges, velocityHeads, velocityRise } from '../../../models/readings/gauges.ts';
import type { Reading } from '../../../models/readings/reading.ts';
import { expectClose } from '../../expect-close.ts';
import { DAY, NO_COSTS, START, stationWith } from '../condition/synthetic.ts';
import { modelOf } from '../example-loops.ts';

/** Bores of schedule 80 pipe of 2 and 1-1/2 in. */
const GAUGES: Gauges = { suctionDiameter: 0.0489, dischargeDiameter: 0.0375 };
const SETTING = 80;

const withGauges = (station: Station, gauges: Gauges | undefined): Station => {
  const loop: Loop = { ...station.loop.entered, gauges };
  return { ...station, loop: modelOf(loop) };
};

/** What gauges in the walls of these pipes show: the pressures of the total heads, less rho V^2/2. */
function shown(station: Station): readonly Reading[] {
  const total = predictedAt(withGauges(station, undefined), SETTING);
  if (total === null || total.suctionPressure === null || total.dischargePressure === null) {
    throw new Error('nothing flows');
  }
  const { density } = station.loop.water;
  const dynamic = (diameter: number) => (density * (total.flow / ((Math.PI / 4) * diameter ** 2)) ** 2) / 2;
  const { flow, power, suctionPressure, dischargePressure } = total;
  return Array.from({ length: 40 }, (_, i) => ({
    ...{ time: START + i * DAY, setting: SETTING, flow, power },
    suctionPressure: suctionPressure - dynamic(GAUGES.suctionDiameter),
    dischargePressure: dischargePressure - dynamic(GAUGES.dischargeDiameter),
  }));
}

const judged = (station: Station, readings: readonly Reading[]) =>
  conditionOf({ station, setting: SETTING, readings, cleanings: [], price: null, costs: NO_COSTS });

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
  it('is as expected once the bores are stated, with the head of the pump in full', () => {
    const station = stationWith();
    const found = judged(withGauges(station, GAUGES), shown(station));
    expect([found.verdict, found.lacksGauges]).toEqual(['as-expected', false]);
    for (const { residual } of found.assessed) expectClose(residual, 0, { absolute: 1e-9 });
  });

  it('is told what to state, where that matters', () => {
    const station = stationWith();
    expect(judged(station, shown(station)).lacksGauges).toBe(true);
    expect(lacksGauges(station.loop, { flow: 1e-4, head: 2 })).toBe(false);
  });

  it('has its clogs placed all the same', () => {
    for (const [fault, verdict] of [
      [{ intake: 25 }, 'clogged-intake'],
      [{ outlets: 0.9 }, 'clogged-discharge'],
      [{ head: 0.8 }, 'worn-pump'],
    ] as const) {
      expect(judged(withGauges(stationWith(), GAUGES), shown(stationWith(fault))).verdict).toBe(verdict);
    }
  });
});
