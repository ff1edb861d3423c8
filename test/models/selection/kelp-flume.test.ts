/** The flume of the worked example, whose figures a solution apart gave. */
import { describe, expect, it } from 'vitest';
import { dutyCautions } from '../../../models/cautions/duty-cautions.ts';
import { dutyPoint } from '../../../models/duty/duty-point.ts';
import { sampleLoop } from '../../../models/duty/sampled-loop.ts';
import { screenVelocities } from '../../../models/intake/screen.ts';
import { DEFAULT_LIMITS } from '../../../models/loop/limits.ts';
import { outletFigures } from '../../../models/network/margins.ts';
import { pumpAtSetting } from '../../../models/pump/pump-at-setting.ts';
import { select } from '../../../models/selection/select.ts';
import { expectClose } from '../../expect-close.ts';
import { canister250, kelpFlume } from '../../reference/independent/kelp-flume.ts';
import { LITRE_PER_HOUR, modelOf, pumpModelOf, trimmedModelOf } from '../example-loops.ts';

const loop = modelOf(kelpFlume);
const pump = pumpModelOf(canister250);
const running = { price: 0.21, hoursPerDay: 24, elevation: 0 };
const selected = (model = loop) => {
  const [best] = select({
    sampled: sampleLoop(model),
    candidates: [{ pump, count: 1 }],
    limits: DEFAULT_LIMITS,
    running,
  }).ranking;
  if (best === undefined) throw new Error('the pump serves the flume');
  return best;
};

describe('the flume as built', () => {
  const { duty, annualEnergy, annualCost } = selected();
  const outlets = outletFigures(loop.system.outlets, duty.outletFlows);
  const flowOf = (name: string) =>
    (outlets.find((one) => one.name === name)?.flow ?? Number.NaN) / LITRE_PER_HOUR;

  it('runs at 70 %', () => {
    expect(duty.setting).toBe(70);
    expect(duty.speedRatio).toBe(0.7);
  });

  it.each([
    ['flow [L/h]', duty.flow / LITRE_PER_HOUR, 7533.14],
    ['head [m]', duty.head, 1.5714],
    ['power [W]', duty.power, 85.7042],
    ['efficiency', duty.efficiency, 0.385034],
    ['annual energy [kWh]', annualEnergy, 750.769],
    ['annual cost', annualCost ?? Number.NaN, 157.661],
    ['far end [L/h]', flowOf('far end'), 3028.46],
    ['left [L/h]', flowOf('left'), 2252.34],
    ['right [L/h]', flowOf('right'), 2252.34],
  ])('has the published %s', (_, actual, expected) => {
    // 0.1 % is the tolerance that the example states.
    expectClose(actual, expected, { relative: 1e-3 });
  });

  it('leaves the far end short at 69', () => {
    const at69 = dutyPoint(loop, pumpAtSetting(pump, { setting: 69, count: 1 }));
    expectClose((at69.outletFlows[0] ?? Number.NaN) / LITRE_PER_HOUR, 2984.58, { relative: 1e-3 });
  });

  it('passes its screen on the mean of 0.127 m/s, and is cautioned on the peak', () => {
    const { screen } = kelpFlume.intake ?? {};
    if (screen === undefined) throw new Error('the flume has a screen');
    expectClose(screenVelocities({ screen, flow: duty.flow, cloggedFraction: 0.5 }).mean, 0.127, {
      absolute: 5e-4,
    });
    const codes = dutyCautions({ loop, pump, limits: DEFAULT_LIMITS, elevation: 0 }, duty).map(
      ({ code }) => code,
    );
    expect(codes).toContain('screen-uneven');
    expect(codes).not.toContain('screen-velocity');
  });
});

describe('the flume trimmed', () => {
  it('needs no higher setting and serves every outlet', () => {
    const model = trimmedModelOf(kelpFlume);
    const { duty } = selected(model);
    expect(duty.setting).toBeLessThanOrEqual(70);
    for (const { margin } of outletFigures(model.system.outlets, duty.outletFlows)) {
      expect(margin ?? Number.NaN).toBeGreaterThanOrEqual(-1e-9);
    }
  });
});
