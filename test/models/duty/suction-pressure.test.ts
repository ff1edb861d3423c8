/** What is before the pump at a duty: net positive suction head, and the pressure that a gauge reads. */
import { describe, expect, it } from 'vitest';
import { suctionCautions } from '../../../models/cautions/suction.ts';
import { dutyPoint } from '../../../models/duty/duty-point.ts';
import { suctionPressure } from '../../../models/duty/suction-pressure.ts';
import { DEFAULT_LIMITS } from '../../../models/loop/limits.ts';
import { pumpAtSetting } from '../../../models/pump/pump-at-setting.ts';
import { npshFigures } from '../../../models/selection/criteria.ts';
import { expectClose } from '../../expect-close.ts';
import { LH } from '../../reference/independent-complementarity/cases.ts';
import { SUCTION_CASES } from '../../reference/suction-sides.ts';
import { canister, modelOf, pumpModelOf } from '../example-loops.ts';

describe('before the pump', () => {
  it.each(SUCTION_CASES)('$name has the stated figures ($source)', ({ loop, pump, duties, tolerance }) => {
    const model = modelOf(loop);
    const fitted = pumpModelOf(pump);
    const context = { loop: model, pump: fitted, limits: DEFAULT_LIMITS, elevation: 0 };
    for (const expected of duties) {
      const duty = dutyPoint(model, pumpAtSetting(fitted, { setting: expected.setting, count: 1 }));
      const { available, required } = npshFigures(context)(duty);
      const close = (actual: number, figure: number) => expectClose(actual, figure, { relative: tolerance });
      close(duty.flow / LH, expected.flow);
      close(duty.suctionLoss, expected.suctionLoss);
      close(available, expected.available);
      close(required ?? 0, expected.required);
      close(available / (required ?? 0), expected.ratio);
      close(suctionPressure(model, duty) / 1000, expected.suctionPressure);
      const extrapolated = suctionCautions(context, duty).find(({ code }) => code === 'npsh-extrapolated');
      const end = Math.max(...(pump.npshPoints ?? []).map(({ flow }) => flow));
      expect(extrapolated).toMatchObject({ severity: 'note', pointer: '/npshPoints', quantity: 'flow' });
      close((extrapolated?.value ?? 0) / LH, expected.flow / (expected.setting / 100));
      close(extrapolated?.limit ?? 0, end);
    }
  });

  it('of a system curve only the height of the pump is known', () => {
    const model = modelOf({
      ...{
        name: 'curve',
        water: { temperature: 20, salinity: 0 },
        pumpElevation: 1.5,
        frictionMultiplier: 1,
      },
      systemCurve: { points: [{ flow: 2e-3, head: 2 }] },
      outlets: [{ name: 'end', share: 1 }],
    });
    const duty = dutyPoint(model, pumpAtSetting(pumpModelOf(canister), { setting: 80, count: 1 }));
    // 998.2063 kg/m3 x 9.80665 m/s2 x 1.5 m
    expectClose(suctionPressure(model, duty), -14_683.6, { relative: 1e-5 });
  });
});
