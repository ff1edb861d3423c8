/** The two laws of power, the interval that they leave, and worked figures. */
import { describe, expect, it } from 'vitest';
import { expectClose } from '../../expect-close.ts';
import { LH, pumpE, STATED } from './cases.ts';
import { isExtrapolated, powerAt, powerBand } from './power-at.ts';
import { choosePower, type PowerChoice } from './power-choice.ts';

/** Setting, power, and flow in L/h where it was noted. */
type Point = readonly [setting: number, power: number, flow?: number];

const choiceOf = (standbyPower: number, points: readonly Point[]): PowerChoice =>
  choosePower({
    ...pumpE,
    standbyPower,
    powerPoints: points.map(([setting, power, flow]) =>
      flow === undefined ? { setting, power } : { setting, power, flow: flow * LH },
    ),
  });

/** Setting, power, low and high in W. */
type Row = readonly [setting: number, power: number, low: number, high: number];

interface Case {
  readonly name: string;
  readonly choice: PowerChoice;
  readonly law: PowerChoice['name'];
  readonly fixed: number;
  readonly exponent?: number;
  readonly errors?: { readonly exponent: number; readonly fixedLoss: number };
  readonly rows: readonly Row[];
}

const same = (setting: number, power: number): Row => [setting, power, power, power];

// Figures of a separate calculation.
const STATED_CASES: readonly Case[] = [
  {
    name: '245 at 100 %',
    choice: choiceOf(3, [[100, 245]]),
    law: 'fixed-loss',
    fixed: 19.36,
    rows: [
      [70, 98.7255, 86.006, 117.8048],
      [40, 36.609, 18.488, 63.7904],
    ],
  },
  {
    name: '240 at 100, 70 at 60',
    choice: choiceOf(4, [
      [100, 240],
      [60, 70],
    ]),
    law: 'fixed-loss',
    fixed: 19.1633,
    exponent: 2.494348,
    rows: [same(80, 134.1837), [30, 29.0179, 15.7131, 29.0179]],
  },
  {
    name: '245 with its flow at 100, 55 at 60',
    choice: choiceOf(3, [
      [100, 245, 9000],
      [60, 55],
    ]),
    law: 'exponent',
    fixed: 0,
    exponent: 3.010213,
    rows: [same(70, 85.7042), [30, 9.45415, 9.45415, 9.51698]],
  },
  {
    name: '300, 120, 42 at 100, 70, 40',
    choice: choiceOf(0, [
      [100, 300],
      [70, 120],
      [40, 42],
    ]),
    law: 'fixed-loss',
    fixed: 24.3344,
    errors: { exponent: 0.0780971, fixedLoss: 0.000536299 },
    rows: [same(50, 58.9521), [25, 28.6616, 14.9076, 28.6616]],
  },
  {
    name: '300, 162, 72.5, 42 at 100, 80, 60, 50',
    choice: choiceOf(2, [
      [100, 300],
      [80, 162],
      [60, 72.5],
      [50, 42],
    ]),
    law: 'exponent',
    fixed: 0,
    exponent: 2.887856,
    errors: { exponent: 0.0013901, fixedLoss: 0.00351198 },
    rows: [same(70, 109.7152), [30, 11.3242, 11.3242, 13.0754]],
  },
  {
    name: '610 at 100',
    choice: choiceOf(5, [[100, 610]]),
    law: 'fixed-loss',
    fixed: 48.4,
    rows: [
      [60, 173.6256, 135.68, 230.544],
      [35, 77.2642, 30.9394, 146.7515],
    ],
  },
  {
    name: '610 at 100, 105 at 50',
    choice: choiceOf(5, [
      [100, 610],
      [50, 105],
    ]),
    law: 'fixed-loss',
    fixed: 27.8571,
    exponent: 2.596935,
    rows: [same(75, 276.3393), [30, 48.44, 31.5383, 48.44]],
  },
  {
    name: '610, 231, 82 at 100, 70, 45',
    choice: choiceOf(5, [
      [100, 610],
      [70, 231],
      [45, 82],
    ]),
    law: 'fixed-loss',
    fixed: 23.8816,
    exponent: 2.575926,
    errors: { exponent: 0.011635, fixedLoss: 0.000804956 },
    rows: [same(60, 155.1245), [30, 44.662, 31.5864, 44.662]],
  },
];

describe.each(STATED_CASES)('$name', ({ choice, law, fixed, exponent, errors, rows }) => {
  it('follows the stated law', () => {
    expect(choice.name).toBe(law);
    expectClose(choice.chosen.fixed, fixed, { ...STATED, absolute: 1e-9 });
    if (exponent !== undefined) expectClose(choice.exponent, exponent, STATED);
  });

  it('has the stated errors, where there are several speeds', () => {
    expect(choice.errors === undefined).toBe(choice.data.speeds < 3);
    if (errors === undefined || choice.errors === undefined) return;
    expectClose(choice.errors.exponent, errors.exponent, STATED);
    expectClose(choice.errors.fixedLoss, errors.fixedLoss, STATED);
  });

  it.each(rows)('draws at %d %% its %d W, between %d and %d', (setting, power, low, high) => {
    const ratio = setting / 100;
    const at = { ratio, flow: ratio * 9000 * LH };
    expectClose(powerAt(choice, at), power, STATED);
    const band = powerBand(choice, { ratio, flows: [at.flow], tolerance: 0 });
    expectClose(band.low, low, STATED);
    expectClose(band.high, high, STATED);
    expect(isExtrapolated(choice, at)).toBe(low !== high && choice.data.speeds > 1);
  });
});

// Figures of a separate calculation.
describe('beyond the measured flows', () => {
  const rising = choiceOf(0, [
    [100, 200, 1000],
    [100, 260, 4000],
    [100, 290, 7000],
  ]);
  const falling = choiceOf(0, [
    [100, 330, 2000],
    [100, 300, 6000],
    [100, 240, 9000],
  ]);

  it.each([
    ['rising', rising, 9000, 334.345, 297.498, 334.345],
    ['rising', rising, 500, 205.171, 198.818, 205.171],
    ['falling', falling, 10_500, 248, 231.513, 248],
    ['falling', falling, 500, 360.702, 338.217, 360.702],
  ] as const)(
    '%s power at a flow is held or goes on, whichever is more (%#)',
    (_, choice, flow, power, low, high) => {
      const at = { ratio: 1, flow: flow * LH };
      expectClose(powerAt(choice, at), power, STATED);
      const band = powerBand(choice, { ratio: 1, flows: [at.flow], tolerance: 0 });
      expectClose(band.low, low, STATED);
      expectClose(band.high, high, STATED);
      expect(isExtrapolated(choice, at)).toBe(true);
    },
  );

  it('nothing is uncertain inside them', () => {
    const band = powerBand(rising, { ratio: 1, flows: [3000 * LH], tolerance: 0 });
    expectClose(band.high, band.low, { relative: 1e-12 });
    expect(isExtrapolated(rising, { ratio: 1, flow: 3000 * LH })).toBe(false);
  });
});
