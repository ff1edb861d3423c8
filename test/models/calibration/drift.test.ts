/** Changes in the course of readings, told from noise. */
import { describe, expect, it } from 'vitest';
import { driftOf } from '../../../models/calibration/drift.ts';
import { rowCollector } from '../../../models/calibration/row-collector.ts';
import type { Reading } from '../../../models/readings/reading.ts';
import { expectClose } from '../../expect-close.ts';
import { normals } from './synthetic.ts';

const DAY = 86_400_000;
const STATION = {
  density: 1000,
  outlets: [],
  knowsPipework: false,
  settings: { min: 30, max: 100 },
  gauges: undefined,
};

const driftIn = (readings: readonly Reading[]) => {
  const collector = rowCollector(STATION);
  for (const reading of readings) collector.add(reading);
  return driftOf(collector.rows().rows);
};

/** Flows at two settings by turns, changing by a share from the first to the last. */
const flows = (change: number, { noise = 0, seed = 1, count = 60 } = {}): readonly Reading[] => {
  const normal = normals(seed);
  return Array.from({ length: count }, (_, i) => ({
    time: i * DAY,
    setting: i % 2 === 0 ? 80 : 60,
    flow: (i % 2 === 0 ? 2e-3 : 1.5e-3) * (1 + change * (i / (count - 1) - 0.5) + noise * normal()),
  }));
};

describe('drift of readings', () => {
  it('is the change from the first reading to the last, whatever the settings', () => {
    const drift = driftIn(flows(-0.2));
    expect(drift?.measure).toBe('flow');
    expectClose(drift?.change ?? Number.NaN, -0.2, { relative: 0.01 });
  });

  it('is told under noise, and hardly ever of noise alone', () => {
    const seeds = Array.from({ length: 200 }, (_, i) => i + 1);
    const told = (change: number) =>
      seeds.filter((seed) => driftIn(flows(change, { noise: 0.03, seed })) !== null).length;
    expect(told(-0.15)).toBeGreaterThan(190);
    expect(told(0)).toBeLessThanOrEqual(2);
  });

  it('is none of a change too small to matter, nor of fewer than three readings of a row', () => {
    expect(driftIn(flows(0.02))).toBeNull();
    expect(driftIn(flows(-0.5, { count: 2 }))).toBeNull();
    expect(driftIn([])).toBeNull();
  });

  it('is the greatest among the measures', () => {
    const both = flows(-0.1).map((one, i) => ({ ...one, power: 100 * (1 + 0.3 * (i / 59)) }));
    expect(driftIn(both)?.measure).toBe('power');
  });
});
