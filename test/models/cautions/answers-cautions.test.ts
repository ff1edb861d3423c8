/** Cautions of answers that are not about a duty: given where the facts call for them, and not else. */
import { describe, expect, it } from 'vitest';
import { type ConditionFacts, conditionCautions } from '../../../models/cautions/condition.ts';
import { designCautions } from '../../../models/cautions/designs.ts';
import { leakCautions } from '../../../models/cautions/installation.ts';
import { sizedScreenCautions } from '../../../models/cautions/intake.ts';
import {
  billCautions,
  comparisonCautions,
  priceCautions,
  sparesCautions,
} from '../../../models/cautions/money.ts';
import { planCautions, siteCautions } from '../../../models/cautions/plan.ts';
import { meanPriceCautions, scheduleCautions, setpointCautions } from '../../../models/cautions/time.ts';
import { starterCautions, workCautions } from '../../../models/cautions/upkeep.ts';
import { dangersOf, TASK_KINDS } from '../../../models/maintenance/task.ts';

const codes = (cautions: readonly { readonly code: string }[]) => cautions.map(({ code }) => code);

describe('the cautions of a schedule', () => {
  const PLAIN = { infeasible: [], hasBattery: false, hasVolume: false, stride: 1 };

  it('are none where every phase is served by mains electricity', () => {
    expect(scheduleCautions(PLAIN)).toEqual([]);
  });

  it('name the phases that no setting serves', () => {
    const [caution] = scheduleCautions({ ...PLAIN, infeasible: ['day', 'feeding'] });
    expect(caution?.code).toBe('phase-infeasible');
    expect(caution?.detail).toMatch(/\(day, feeding\)$/);
  });

  it('say that a battery is taken as stated', () => {
    expect(codes(scheduleCautions({ ...PLAIN, hasBattery: true }))).toEqual(['battery-as-stated']);
  });

  it('say how coarse the settings are only where a volume is moved among them', () => {
    const thinned = scheduleCautions({ ...PLAIN, hasVolume: true, stride: 3 });
    expect(thinned.map(({ detail }) => detail)).toEqual([expect.stringMatching(/\(every 3th setting\)$/)]);
    expect(scheduleCautions({ ...PLAIN, hasVolume: true })).toEqual([]);
    expect(scheduleCautions({ ...PLAIN, stride: 3 })).toEqual([]);
  });

  it('say of a setpoint that it does not serve, by the phase where there is one', () => {
    expect(setpointCautions({ feasible: true, phase: 'day', isStopped: false })).toEqual([]);
    expect(setpointCautions({ feasible: false, phase: 'day', isStopped: false })[0]?.detail).toMatch(
      /\(day\)$/,
    );
    expect(setpointCautions({ feasible: false, phase: null, isStopped: false })[0]?.detail).not.toMatch(
      /\)$/,
    );
  });
});

describe('the caution about a mean price', () => {
  it('is given where a tariff is known and the pump rests for some hours', () => {
    expect(codes(meanPriceCautions({ tariff: 'night', hoursPerDay: 12 }))).toEqual(['time-mean-price']);
    expect(meanPriceCautions({ tariff: 'night', hoursPerDay: 24 })).toEqual([]);
    expect(meanPriceCautions({ tariff: null, hoursPerDay: 12 })).toEqual([]);
  });
});

describe('the cautions of a condition', () => {
  const PLAIN: ConditionFacts = {
    ...{ used: 30, days: 30, isSteady: false, isPlaceOpen: false, isStopped: false, lacksGauges: false },
    ...{ throttles: false, formerOutlets: [], isSampled: false, hasDate: false, asksForService: false },
  };

  it('are none where nothing is found in readings enough', () => {
    expect(conditionCautions(PLAIN)).toEqual([]);
  });

  it.each<[string, Partial<ConditionFacts>]>([
    ['condition-few-readings', { used: 29 }],
    ['condition-few-readings', { days: 29.9 }],
    ['condition-steady', { isSteady: true }],
    ['condition-place-open', { isPlaceOpen: true }],
    ['pump-stopped', { isStopped: true }],
    ['gauge-bores-differ', { lacksGauges: true }],
    ['condition-openings', { throttles: true }],
    ['condition-former-outlets', { formerOutlets: ['old'] }],
    ['condition-sampled', { isSampled: true }],
    ['condition-straight-line', { hasDate: true }],
    ['isolate-before-service', { asksForService: true }],
  ])('have %s for %j', (code, facts) => {
    expect(codes(conditionCautions({ ...PLAIN, ...facts }))).toEqual([code]);
  });
});

describe('the cautions about work', () => {
  it.each<[(typeof TASK_KINDS)[number], readonly string[]]>([
    ['bulkhead-inspection', ['bulkheads']],
    ['screen-cleaning', ['isolate-before-service']],
    ['wet-end-service', ['isolate-before-service', 'electricity-near-water']],
    ['union-check', ['isolate-before-service']],
    ['residual-current-test', ['electricity-near-water']],
    ['other', ['isolate-before-service', 'electricity-near-water']],
  ])('of the kind %s are %j', (kind, expected) => {
    expect(codes(workCautions(dangersOf([kind])))).toEqual(expected);
  });

  it('of all kinds are given once each, of none not at all', () => {
    expect(codes(workCautions(dangersOf(TASK_KINDS)))).toEqual([
      ...['isolate-before-service', 'electricity-near-water', 'bulkheads'],
    ]);
    expect(workCautions(dangersOf([]))).toEqual([]);
  });

  it('of a starter set say what was assumed', () => {
    const known = { serviceAssumed: false, pipeworkKnown: true };
    expect(codes(starterCautions(known))).toEqual(['upkeep-common-practice']);
    expect(codes(starterCautions({ ...known, serviceAssumed: true }))).toContain('service-assumed');
    expect(codes(starterCautions({ ...known, pipeworkKnown: false }))).toContain('fittings-unknown');
  });
});

describe('the cautions about money', () => {
  it('of spares say that five failures are few to know a rate by', () => {
    expect(codes(sparesCautions({ failures: 4 }))).toEqual(['failures-independent', 'few-failures']);
    expect(codes(sparesCautions({ failures: 5 }))).toEqual(['failures-independent']);
  });

  it('of a comparison speak of failures where some option counts them', () => {
    const plain = ['estimate', 'electricity-near-water', 'costs-as-entered'];
    expect(codes(comparisonCautions({ countsRisk: false }))).toEqual(plain);
    expect(codes(comparisonCautions({ countsRisk: true }))).toEqual([...plain, 'failures-independent']);
  });

  it('of a pump speak of its price where it has none', () => {
    expect(codes(priceCautions({ isUnpriced: true }))).toEqual(['purchase-not-counted']);
    expect(priceCautions({ isUnpriced: false })).toEqual([]);
  });

  it('of a bill say what is not on it', () => {
    expect(codes(billCautions())).toEqual(['materials-as-entered']);
  });
});

describe('the cautions of plans and sites', () => {
  it('of a plan name what it outlives, and say whether it is proven best', () => {
    expect(codes(planCautions({ outlived: [], isProven: true }))).toEqual(['plan-as-stated']);
    const all = planCautions({ outlived: ['screen'], isProven: false });
    expect(codes(all)).toEqual(['plan-as-stated', 'plan-outlives-upgrade', 'plan-not-proven']);
    expect(all[1]?.detail).toMatch(/\(screen\)$/);
  });

  it('of a site name the loops that receive too little first', () => {
    const plain = ['site-as-stated', 'estimate'];
    expect(codes(siteCautions({ shortLoops: [], offersPumps: false }))).toEqual(plain);
    const all = siteCautions({ shortLoops: ['flume'], offersPumps: true });
    expect(codes(all)).toEqual(['outlets-below-required', 'savings-before-check', ...plain]);
  });
});

describe('the cautions of single questions', () => {
  it('of a leak are about wiring and bulkheads', () => {
    expect(codes(leakCautions())).toEqual(['electricity-near-water', 'bulkheads', 'estimate']);
  });

  it('of a screen depend on how many share the flow, and on the smallest animal', () => {
    const plain = { count: 1, slot: 0.002 };
    const common = ['screen-yardstick', 'entrapment-people', 'estimate'];
    expect(codes(sizedScreenCautions(plain))).toEqual(common);
    expect(codes(sizedScreenCautions({ ...plain, count: 2 }))).toContain('entrapment-several');
    const small = { ...plain, smallestAnimal: 0.002 };
    expect(codes(sizedScreenCautions(small))).toEqual(['animal-fits-opening', ...common]);
    expect(codes(sizedScreenCautions({ count: 1, smallestAnimal: 0.002 }))).toContain('animal-not-checked');
  });
});

describe('the cautions of a design', () => {
  it('say which designs were not searched, and what has no price', () => {
    expect(codes(designCautions())).toEqual(['untrimmed-not-searched', 'fittings-not-priced']);
  });
});
