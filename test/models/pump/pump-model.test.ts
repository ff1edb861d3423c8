/** A pump fitted at true speed. */
import { describe, expect, it } from 'vitest';
import { pumpAtSetting } from '../../../models/pump/pump-at-setting.ts';
import { fitPump } from '../../../models/pump/pump-model.ts';
import { expectClose } from '../../expect-close.ts';
import { canister, LITRE_PER_HOUR, pumpModelOf } from '../example-loops.ts';

describe('a fitted pump', () => {
  it('meets points that lie on a parabola', () => {
    const at = pumpAtSetting(pumpModelOf(canister), { setting: 100, count: 1 });
    for (const { flow, head } of canister.headPoints)
      expectClose(at.headAt(flow).head, head, { relative: 1e-9 });
  });

  it('takes points at other settings back to full speed by the true speed', () => {
    const speedMap = [
      { setting: 30, speed: 50 },
      { setting: 100, speed: 100 },
    ];
    // Setting 65 is 75 % of full speed: flows by 0.75, heads by 0.75^2.
    const headPoints = canister.headPoints.map(({ flow, head }) => ({
      flow: 0.75 * flow,
      head: 0.75 ** 2 * head,
      setting: 65,
    }));
    const at = pumpAtSetting(pumpModelOf({ ...canister, headPoints, speedMap }), { setting: 100, count: 1 });
    expectClose(at.headAt(8000 * LITRE_PER_HOUR).head, 6 - (4 * 4) / 9, { relative: 1e-9 });
  });

  it('is the same after a trip through JSON', () => {
    const { fit } = pumpModelOf(canister);
    expect(JSON.parse(JSON.stringify(fit))).toEqual(fit);
  });

  it.each([
    ['a power at standby', { powerPoints: [{ setting: 100, power: 3 }] }, 'powerPoints'],
    [
      'two head points of which none is at flow 0',
      { headPoints: canister.headPoints.slice(1, 3) },
      'headPoints',
    ],
    [
      'a falling speed map',
      {
        speedMap: [
          { setting: 30, speed: 60 },
          { setting: 100, speed: 50 },
        ],
      },
      'speedMap',
    ],
  ])('cannot be made of %s', (_, facts, place) => {
    const fit = fitPump({ ...canister, ...facts });
    expect(fit.ok ? null : fit.failure.path[0]).toBe(place);
  });
});
