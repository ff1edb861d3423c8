/** The cautions about outlets in air that no water reaches, against the figures of a worked loop. */
import { describe, expect, it } from 'vitest';
import { dryOutletCautions } from '../../../models/cautions/dry-outlets.ts';
import { dutyPoint } from '../../../models/duty/duty-point.ts';
import type { PipeworkLoop } from '../../../models/loop/loop.ts';
import { pumpAtSetting } from '../../../models/pump/pump-at-setting.ts';
import { expectClose } from '../../expect-close.ts';
import { DRY, lowAndHigh, raised } from '../../reference/one-way-runs.ts';
import { loopOf, modelOf, outlet, pipe, pumpModelOf } from '../example-loops.ts';

function given(loop: PipeworkLoop, setting = DRY.setting) {
  const model = modelOf(loop);
  const pump = pumpModelOf(DRY.pump);
  return dryOutletCautions(model, dutyPoint(model, pumpAtSetting(pump, { setting, count: 1 })));
}

describe('a high outlet into air that stays dry', () => {
  it.each([
    ['outlet-dry', 'where no elevation is stated', undefined, DRY.level],
    ['air-drawn', 'where the root lies above the head', 1.5, 1.5],
    ['outlet-dry', 'where the root lies below it', 0.5, DRY.level],
  ])('gives %s %s', (code, _, highestElevation, limit) => {
    const [caution, ...others] = given(lowAndHigh(raised, highestElevation));
    expect(others).toEqual([]);
    expect(caution).toMatchObject({
      ...{ code, pointer: '/discharge/branches/1/outlet', quantity: 'head' },
      severity: code === 'air-drawn' ? 'danger' : 'warning',
    });
    expect(caution?.detail).toMatch(/\(high\)$/);
    expectClose(caution?.value ?? Number.NaN, DRY.head, { relative: DRY.tolerance });
    expectClose(caution?.limit ?? Number.NaN, limit, { relative: 1e-12 });
  });

  it('gives none where it runs, where it is submerged, and where the pump moves nothing', () => {
    expect(given(lowAndHigh(raised, 1.5), 80)).toEqual([]);
    const under = { ...raised, outlet: { name: 'high', staticHead: 0.8, exit: 'submerged' as const } };
    expect(given(lowAndHigh(under, 1.5))).toEqual([]);
    expect(given(lowAndHigh(raised, 1.5), 15)).toEqual([]);
  });
});

describe('of many dry outlets', () => {
  it('the five that lack the most head have a caution each, that which lacks most first', () => {
    const high = Array.from({ length: 7 }, (_, place) =>
      outlet(`rise ${place}`, { staticHead: 2 + place / 10, exit: 'free' }),
    );
    const loop = loopOf({ run: [pipe(0.04, 1)], branches: [outlet('low'), ...high] });
    expect(given(loop).map(({ limit }) => limit)).toEqual([2.6, 2.5, 2.4, 2.3, 2.2]);
  });
});
