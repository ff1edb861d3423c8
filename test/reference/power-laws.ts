/** Powers at a few speeds, and what two laws of power through them give. Speeds and settings %, flow L/h, power W. */

const APART =
  'least squares by numpy.linalg.lstsq and a scan of F/c refined by scipy.optimize, apart from this project';

interface PowerCase {
  readonly name: string;
  readonly points: readonly { readonly setting: number; readonly power: number; readonly flow?: number }[];
  readonly standbyPower: number;
  readonly law: 'exponent' | 'fixed-loss';
  /** k of the law whose exponent is free; absent at one speed. */
  readonly exponent?: number;
  readonly fixedPower?: number;
  readonly at: readonly {
    readonly setting: number;
    readonly flow?: number;
    readonly power: number;
    readonly low: number;
    readonly high: number;
  }[];
  readonly tolerance: number;
  readonly source: string;
}

const certain = (setting: number, power: number) => ({ setting, power, low: power, high: power });

export const POWER_CASES: readonly PowerCase[] = [
  {
    name: 'one point, of which 8 % are taken as fixed, 0 to 20 % as possible',
    points: [{ setting: 100, power: 245 }],
    standbyPower: 3,
    law: 'fixed-loss',
    fixedPower: 19.36,
    at: [
      { setting: 70, power: 98.7255, low: 86.006, high: 117.8048 },
      { setting: 40, power: 36.609, low: 18.488, high: 63.7904 },
    ],
    tolerance: 1e-5,
    source: '3 + 242 (s + (1 - s) r^3) by hand, s = 0.08, 0 and 0.2',
  },
  {
    name: 'two points with an exponent below 3: a fixed loss',
    points: [
      { setting: 100, power: 240 },
      { setting: 60, power: 70 },
    ],
    standbyPower: 4,
    law: 'fixed-loss',
    exponent: 2.494348,
    fixedPower: 19.1633,
    at: [certain(80, 134.1837), { setting: 30, power: 29.0179, low: 15.7131, high: 29.0179 }],
    tolerance: 1e-5,
    source: 'k = ln(236/66)/ln(1/0.6), F = (66 - 236 x 0.216)/(1 - 0.216) by hand',
  },
  {
    name: 'two points with an exponent above 3: that exponent',
    points: [
      { setting: 100, power: 245, flow: 9000 },
      { setting: 60, power: 55 },
    ],
    standbyPower: 3,
    law: 'exponent',
    exponent: 3.010213,
    fixedPower: 0,
    at: [certain(70, 85.7042), { setting: 30, power: 9.45415, low: 9.45415, high: 9.51698 }],
    tolerance: 1e-5,
    source: APART,
  },
  {
    name: 'three speeds that a fixed loss meets better',
    points: [
      { setting: 100, power: 300 },
      { setting: 70, power: 120 },
      { setting: 40, power: 42 },
    ],
    standbyPower: 0,
    law: 'fixed-loss',
    exponent: 2.121795,
    fixedPower: 24.3344,
    at: [certain(50, 58.9521), { setting: 25, power: 28.6616, low: 14.9076, high: 28.6616 }],
    tolerance: 1e-5,
    source: `${APART}; mean squares left out 0.0780971 (exponent) and 0.000536300 (fixed loss)`,
  },
  {
    name: 'four speeds that an exponent meets better',
    points: [
      { setting: 100, power: 300 },
      { setting: 80, power: 162 },
      { setting: 60, power: 72.5 },
      { setting: 50, power: 42 },
    ],
    standbyPower: 2,
    law: 'exponent',
    exponent: 2.887856,
    fixedPower: 0,
    at: [certain(70, 109.7152), { setting: 30, power: 11.3242, low: 11.3242, high: 13.0754 }],
    tolerance: 1e-5,
    source: `${APART}; mean squares left out 0.00139010 (exponent) and 0.00351198 (fixed loss)`,
  },
  {
    name: 'one speed, power rising with flow: the tangent above, held below',
    points: [
      { setting: 100, power: 200, flow: 1000 },
      { setting: 100, power: 260, flow: 4000 },
      { setting: 100, power: 290, flow: 7000 },
    ],
    standbyPower: 0,
    law: 'fixed-loss',
    at: [
      { setting: 100, flow: 9000, power: 334.345, low: 297.498, high: 334.345 },
      { setting: 100, flow: 500, power: 205.171, low: 198.818, high: 205.171 },
    ],
    tolerance: 1e-5,
    source: APART,
  },
  {
    name: 'one speed, power falling with flow: held above, the tangent below',
    points: [
      { setting: 100, power: 330, flow: 2000 },
      { setting: 100, power: 300, flow: 6000 },
      { setting: 100, power: 240, flow: 9000 },
    ],
    standbyPower: 0,
    law: 'fixed-loss',
    at: [
      { setting: 100, flow: 10_500, power: 248, low: 231.5125, high: 248 },
      { setting: 100, flow: 500, power: 360.702, low: 338.217, high: 360.702 },
    ],
    tolerance: 1e-5,
    source: APART,
  },
  {
    name: 'a large pump known at full speed only',
    points: [{ setting: 100, power: 610 }],
    standbyPower: 5,
    law: 'fixed-loss',
    fixedPower: 48.4,
    at: [
      { setting: 60, power: 173.6256, low: 135.68, high: 230.544 },
      { setting: 35, power: 77.2642, low: 30.9394, high: 146.7515 },
    ],
    tolerance: 1e-5,
    source: '5 + 605 (s + (1 - s) r^3) by hand, s = 0.08, 0 and 0.2',
  },
  {
    name: 'a large pump known at two speeds',
    points: [
      { setting: 100, power: 610 },
      { setting: 50, power: 105 },
    ],
    standbyPower: 5,
    law: 'fixed-loss',
    exponent: 2.596935,
    fixedPower: 27.8571,
    at: [certain(75, 276.3393), { setting: 30, power: 48.44, low: 31.5383, high: 48.44 }],
    tolerance: 1e-5,
    source: 'k = ln(605/100)/ln 2, F = (100 - 605/8)/(7/8) by hand',
  },
  {
    name: 'a large pump known at three speeds',
    points: [
      { setting: 100, power: 610 },
      { setting: 70, power: 231 },
      { setting: 45, power: 82 },
    ],
    standbyPower: 5,
    law: 'fixed-loss',
    exponent: 2.575926,
    fixedPower: 23.8816,
    at: [certain(60, 155.1245), { setting: 30, power: 44.662, low: 31.5864, high: 44.662 }],
    tolerance: 1e-5,
    source: `${APART}; mean squares left out 0.0116350 (exponent) and 0.000804956 (fixed loss)`,
  },
];
