/** The heat of a duty, and what it does to the ranking. */
import { describe, expect, it } from 'vitest';
import type { HeatTerms } from '../../../models/duty/heat.ts';
import { sampleLoop } from '../../../models/duty/sampled-loop.ts';
import { DEFAULT_LIMITS } from '../../../models/loop/limits.ts';
import type { Pump } from '../../../models/pump/pump.ts';
import { dutyHeat } from '../../../models/selection/duty-heat.ts';
import { select } from '../../../models/selection/select.ts';
import { expectClose } from '../../expect-close.ts';
import { canister, LITRE_PER_HOUR, loopOf, modelOf, outlet, pipe, pumpModelOf } from '../example-loops.ts';

const jet = outlet('jet', { requiredFlow: 2000 * LITRE_PER_HOUR }, [pipe(0.04, 2)]);
const loop = modelOf(loopOf(jet, { tank: { volume: 2.4 } }));
const pumpWith = (facts: Partial<Pump>) => pumpModelOf({ ...canister, ...facts });
const running = { price: 0.2, hoursPerDay: 24, elevation: 0 };
const cooling: HeatTerms = { cop: 2, mode: 'cooling', inRanking: true };

describe('the heat of a duty', () => {
  it('counts the standby power of every pump', () => {
    const pump = pumpWith({ mounting: 'dry', motorEfficiency: 0.5 });
    expect(dutyHeat({ loop, pump }, { power: 106, count: 2 }, running).power).toBe(50);
  });

  it('says where the efficiency of a motor is assumed', () => {
    const assumed = (facts: Partial<Pump>) =>
      dutyHeat({ loop, pump: pumpWith(facts) }, { power: 103, count: 1 }, running).motorEfficiencyAssumed;
    expect(assumed({})).toBe(true);
    expect(assumed({ motorEfficiency: 0.8 })).toBe(false);
    expect(assumed({ mounting: 'submerged' })).toBe(false);
  });

  it('of 85.7042 W with 3 W standby through a motor of 0.8 warms 2400 L by 0.5822 K a day (by hand)', () => {
    const pump = pumpWith({ mounting: 'dry', motorEfficiency: 0.8 });
    const { dailyRise } = dutyHeat({ loop, pump }, { power: 85.7042, count: 1 }, running);
    // 66.1634 W x 86400 s over 1023.343 kg/m3 x 3997.68 J/(kg K) x 2.4 m3.
    expectClose(dailyRise ?? 0, (66.16336 * 86_400) / (1023.343 * 3997.68 * 2.4), { relative: 1e-5 });
  });

  it('is not told by the day without a volume, nor by the year without terms', () => {
    const still = modelOf(loopOf(jet));
    const heat = dutyHeat({ loop: still, pump: pumpWith({}) }, { power: 100, count: 1 }, running);
    expect(heat).toMatchObject({ dailyRise: null, annualEnergy: null, annualCost: null });
  });
});

describe('the ranking', () => {
  /** Draws a little less than the dry one, but warms the water with all of it. */
  const submerged = pumpWith({ mounting: 'submerged', powerPoints: [{ setting: 100, power: 240 }] });
  const dry = pumpWith({ mounting: 'dry', motorEfficiency: 0.6 });
  const candidates = [submerged, dry].map((pump) => ({ pump, count: 1 }));
  const order = (heat?: HeatTerms) =>
    select({
      sampled: sampleLoop(loop),
      candidates,
      limits: DEFAULT_LIMITS,
      running: { ...running, heat },
    }).ranking.map(({ candidate }) => candidate);

  it('leaves heat out unless it is to count', () => {
    expect(order()).toEqual([0, 1]);
    expect(order({ ...cooling, inRanking: false })).toEqual([0, 1]);
  });

  it('counts what a chiller takes, so that the cooler pump comes first', () => {
    expect(order(cooling)).toEqual([1, 0]);
  });

  it('counts what a heater is spared, so that the warmer pump stays first', () => {
    expect(order({ ...cooling, mode: 'heating' })).toEqual([0, 1]);
  });
});
