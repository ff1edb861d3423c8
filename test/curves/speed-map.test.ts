import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { buildSpeedMap, speedRatioAt } from '../../curves/speed-map.ts';
import { expectClose } from '../expect-close.ts';
import { expectValue } from './expect-value.ts';

const range = { min: 30, max: 100 };
const points = [
  { setting: 30, speed: 41 },
  { setting: 60, speed: 70 },
  { setting: 100, speed: 100 },
];
const map = expectValue(buildSpeedMap(points, range));

describe('a speed map', () => {
  it('is speed = setting, to the last bit, when none is given', () => {
    const identity = expectValue(buildSpeedMap(undefined, range));
    for (let setting = 0; setting <= 120; setting += 1) {
      expect(speedRatioAt(identity, setting)).toBe(setting / 100);
    }
  });

  it('meets its points and lies on straight lines between them', () => {
    for (const { setting, speed } of points) expect(speedRatioAt(map, setting)).toBe(speed / 100);
    expectClose(speedRatioAt(map, 45), 0.555, { relative: 1e-14 });
    expectClose(speedRatioAt(map, 90), 0.925, { relative: 1e-14 });
  });

  it('rises strictly', () => {
    const settings = fc.double({ min: 0, max: 120, noNaN: true });
    fc.assert(
      fc.property(settings, settings, (a, b) => {
        if (b - a > 1e-9) expect(speedRatioAt(map, b)).toBeGreaterThan(speedRatioAt(map, a));
      }),
      { seed: 1 },
    );
  });

  it('goes on along its end pieces, not below standstill', () => {
    expectClose(speedRatioAt(map, 110), 1.075, { relative: 1e-14 });
    expectClose(speedRatioAt(map, 0), 0.12, { relative: 1e-13 });
    const steep = expectValue(
      buildSpeedMap(
        [
          { setting: 50, speed: 10 },
          { setting: 100, speed: 100 },
        ],
        { min: 50, max: 100 },
      ),
    );
    expect(speedRatioAt(steep, 10)).toBe(0);
  });

  it('may be one point for a pump of one setting, whose speed it holds', () => {
    const single = expectValue(buildSpeedMap([{ setting: 100, speed: 96 }], { min: 100, max: 100 }));
    expect(speedRatioAt(single, 100)).toBe(0.96);
    expect(speedRatioAt(single, 50)).toBe(0.96);
  });
});

describe('a speed map is refused', () => {
  it.each([
    [
      'equal settings',
      [
        { setting: 30, speed: 40 },
        { setting: 30, speed: 50 },
      ],
      'setting',
      1,
    ],
    [
      'a falling setting',
      [
        { setting: 30, speed: 40 },
        { setting: 100, speed: 90 },
        { setting: 60, speed: 95 },
      ],
      'setting',
      2,
    ],
    [
      'equal speeds',
      [
        { setting: 30, speed: 40 },
        { setting: 100, speed: 40 },
      ],
      'speed',
      1,
    ],
  ] as const)('for %s', (_, list, member, index) => {
    expect(buildSpeedMap(list, range)).toEqual({
      ok: false,
      failure: { code: 'speed-map-not-rising', index, member },
    });
  });

  it.each([
    [
      'starts late',
      [
        { setting: 31, speed: 40 },
        { setting: 100, speed: 100 },
      ],
      0,
      30,
    ],
    [
      'ends early',
      [
        { setting: 30, speed: 40 },
        { setting: 60, speed: 70 },
        { setting: 99, speed: 99 },
      ],
      2,
      100,
    ],
    ['is empty', [], 0, 30],
  ] as const)('when it %s', (_, list, index, needed) => {
    expect(buildSpeedMap(list, range)).toEqual({
      ok: false,
      failure: { code: 'speed-map-too-short', index, needed },
    });
  });
});
