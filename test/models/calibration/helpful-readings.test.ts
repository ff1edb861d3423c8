/** Readings to take next: each leaves what it was said to leave. */
import { describe, expect, it } from 'vitest';
import type { LoopCalibration } from '../../../models/calibration/calibrate-loop.ts';
import type { HelpfulReading } from '../../../models/calibration/helpful-readings.ts';
import type { Loop } from '../../../models/loop/loop.ts';
import type { Reading } from '../../../models/readings/reading.ts';
import { expectClose } from '../../expect-close.ts';
import { calibrated } from './known-loops.ts';
import { curveLoop, type Noise, normals, pipedLoop, readings } from './synthetic.ts';

const NOISE: Noise = { flow: 0.03, head: 0.015, power: 0.01 };
const TRUTH = { friction: 1.3, head: 0.95, power: 1.04 };

const taken = (seed: number, loop: Loop, kinds: readonly (keyof Noise)[]): readonly Reading[] =>
  readings(
    { loop, truth: TRUTH, settings: [60, 80, 100], times: 3 },
    { noise: NOISE, normal: normals(seed), kinds },
  );

/** A reading that shows what is predicted. */
function asPredicted(next: HelpfulReading): Reading {
  const { measure, setting, outlet, shut, zeroFlow, predicted } = next;
  const closed = Object.fromEntries(shut.map((name) => [name, 0]));
  const own = outlet === null ? {} : { [outlet]: predicted };
  return {
    ...{ time: 99, setting },
    ...(zeroFlow ? { flow: 0 } : {}),
    ...(measure === 'flow' ? { flow: predicted } : {}),
    ...(measure === 'head' ? { head: predicted } : {}),
    ...(measure === 'power' ? { power: predicted } : {}),
    ...(shut.length > 0 || outlet !== null ? { outletFlows: { ...closed, ...own } } : {}),
  };
}

const cases = [
  { what: 'flows on a system curve', loop: curveLoop(), kinds: ['flow'] as const },
  { what: 'flows and powers on a system curve', loop: curveLoop(), kinds: ['flow', 'power'] as const },
  { what: 'heads besides', loop: curveLoop(), kinds: ['flow', 'head', 'power'] as const },
  { what: 'a static head', loop: curveLoop(0.8), kinds: ['flow', 'power'] as const },
  { what: 'flows on pipework', loop: pipedLoop(), kinds: ['flow', 'power'] as const },
  { what: 'heads on pipework', loop: pipedLoop(), kinds: ['flow', 'head', 'power'] as const },
];

describe.each(cases)('a reading to take next: $what', ({ loop, kinds }) => {
  const before = calibrated({ loop }, taken(5, loop, kinds));
  const after = (next: HelpfulReading): LoopCalibration =>
    calibrated({ loop }, [...taken(5, loop, kinds), asPredicted(next)]);

  it('leaves the standard errors that it was said to leave, within 10 %', () => {
    expect(before.nextReadings.length).toBeGreaterThan(2);
    for (const next of before.nextReadings) {
      const found = after(next);
      expect(found.parameters.map(({ name }) => name)).toEqual(next.parameters.map(({ name }) => name));
      for (const [index, { standardError }] of next.parameters.entries()) {
        expectClose(found.parameters[index]?.standardError ?? Number.NaN, standardError, { relative: 0.1 });
      }
      const left = found.smallestMargin?.uncertainty?.standardError ?? Number.NaN;
      expectClose(left, next.margin?.standardError ?? Number.NaN, { relative: 0.1 });
    }
  });

  it('stands before those that leave more of the doubt, and never adds to it', () => {
    const errors = before.nextReadings.map(({ margin }) => margin?.standardError ?? Number.POSITIVE_INFINITY);
    expect(errors).toEqual(errors.toSorted((a, b) => a - b));
    const now = before.smallestMargin?.uncertainty?.standardError ?? Number.NaN;
    expect(errors[0]).toBeLessThan(now);
  });
});

describe('a reading to take next', () => {
  it('that is a head tells friction and head apart where flows on pipework leave them together', () => {
    const loop = pipedLoop();
    const { nextReadings } = calibrated({ loop }, taken(5, loop, ['flow', 'power']));
    const first = nextReadings.find(({ measure }) => measure === 'head');
    expect(first?.parameters.map(({ name }) => name)).toEqual(['friction', 'head', 'power']);
  });

  it('is a flow where only powers are known', () => {
    const loop = curveLoop();
    const [first] = calibrated({ loop }, taken(5, loop, ['power'])).nextReadings;
    expect(['flow', 'outletFlow']).toContain(first?.measure);
  });
});
