import { describe, expect, it } from 'vitest';
import { type PowerPoint, powerPointsFailure } from '../../curves/electrical-power-points.ts';

const at = (speedRatio: number, power: number, flow?: number): PowerPoint => ({ speedRatio, power, flow });

describe('power points are refused', () => {
  it('when there are none', () => {
    expect(powerPointsFailure([], 0)).toEqual({ code: 'no-points' });
  });

  it('when a power is at or below standby, by its place in the list', () => {
    expect(powerPointsFailure([at(1, 50), at(0.5, 3)], 3)).toEqual({
      code: 'power-not-above-standby',
      index: 1,
      power: 3,
      standbyPower: 3,
    });
  });

  it('when one was taken at standstill', () => {
    expect(powerPointsFailure([at(0, 50)], 3)).toEqual({
      code: 'speed-not-positive',
      index: 0,
      speedRatio: 0,
    });
  });

  it('when power falls with speed between points without flow, naming both places', () => {
    expect(powerPointsFailure([at(1, 40), at(0.5, 50), at(0.3, 10)], 0)).toEqual({
      code: 'power-falls-with-speed',
      index: 0,
      power: 40,
      slowerIndex: 1,
      slowerPower: 50,
    });
  });

  it('when power falls against any of several readings at a lower speed', () => {
    const failure = powerPointsFailure([at(0.5, 30), at(0.5, 50), at(0.6, 40), at(0.7, 90)], 0);
    expect(failure).toMatchObject({ code: 'power-falls-with-speed', index: 2, slowerIndex: 1 });
  });
});

describe('power points are taken', () => {
  it('when power falls with speed only where a flow is stated', () => {
    expect(powerPointsFailure([at(1, 40, 0.001), at(0.5, 50)], 0)).toBeUndefined();
    expect(powerPointsFailure([at(1, 40), at(0.5, 50, 0.002)], 0)).toBeUndefined();
  });

  it('when readings at one speed scatter, or powers are equal', () => {
    expect(powerPointsFailure([at(0.5, 52), at(0.5, 50), at(0.5 + 1e-12, 49), at(1, 52)], 0)).toBeUndefined();
  });
});
