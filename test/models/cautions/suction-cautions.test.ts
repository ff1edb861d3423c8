/** The cautions about the suction of a pump: where water would boil, and where the pump stands. */
import { describe, expect, it } from 'vitest';
import { suctionCautions } from '../../../models/cautions/suction.ts';
import { dutyPoint } from '../../../models/duty/duty-point.ts';
import { DEFAULT_LIMITS, type Limits } from '../../../models/loop/limits.ts';
import type { PipeworkLoop } from '../../../models/loop/loop.ts';
import type { Pump } from '../../../models/pump/pump.ts';
import { pumpAtSetting } from '../../../models/pump/pump-at-setting.ts';
import { criteriaFor } from '../../../models/selection/criteria.ts';
import { canister, loopOf, modelOf, outlet, pipe, pumpModelOf } from '../example-loops.ts';

interface Case {
  readonly loop?: Partial<PipeworkLoop>;
  readonly pump?: Partial<Pump>;
  readonly limits?: Partial<Limits>;
  readonly elevation?: number;
}

function at({ loop = {}, pump: facts = {}, limits = {}, elevation = 0 }: Case) {
  const model = modelOf(loopOf(outlet('jet', { requiredFlow: 2e-4 }, [pipe(0.05, 2)]), loop));
  const pump = pumpModelOf({ ...canister, ...facts });
  const context = { loop: model, pump, limits: { ...DEFAULT_LIMITS, ...limits }, elevation };
  return { context, duty: dutyPoint(model, pumpAtSetting(pump, { setting: 60, count: 1 })) };
}

function cautionsOf(facts: Case) {
  const { context, duty } = at(facts);
  return suctionCautions(context, duty);
}

const codesOf = (facts: Case) => cautionsOf(facts).map(({ code }) => code);

function npshHolds(facts: Case): boolean {
  const { context, duty } = at({ ...facts, limits: { enforceNpsh: true } });
  const condition = criteriaFor(context).find(({ reason }) => reason === 'npsh');
  return (condition?.judge(duty).clearance ?? Number.NaN) >= 0;
}

const points = [
  { flow: 1e-3, head: 1 },
  { flow: 1e-2, head: 1 },
];

/** Given of every lift, whatever the pressure. */
const ASIDE: ReadonlySet<string> = new Set(['npsh-not-checked', 'priming']);

describe('a lift', () => {
  // A column of water of 25 degC and 35 g/kg balances (101325 - 3169)/(1023.3 x 9.80665) = 9.78 m at sea level
  // (vapour pressure of water at 25 degC: 3169 Pa, IAPWS-IF97), and 5.4 m at 4000 m where the air weighs 61640 Pa (ISO 2533).
  it.each<[string, Case, boolean]>([
    ['of 10.5 m at sea level', { loop: { pumpElevation: 10.5 } }, true],
    ['of 9 m at sea level', { loop: { pumpElevation: 9 } }, false],
    ['of 6 m at 4000 m', { loop: { pumpElevation: 6 }, elevation: 4000 }, true],
    ['of 5 m at 4000 m', { loop: { pumpElevation: 5 }, elevation: 4000 }, false],
    ['of nothing through 4 km of narrow pipe', { loop: { suction: [pipe(0.03, 4000)] } }, false],
    [
      'of 6 m through 600 m of narrow pipe',
      { loop: { pumpElevation: 6, suction: [pipe(0.03, 600)] } },
      false,
    ],
  ])('%s that boils the water (%o): %s', (_, facts, boils) => {
    const expected = boils ? ['suction-boils'] : [];
    expect(codesOf(facts).filter((code) => !ASIDE.has(code))).toEqual(expected);
    expect(npshHolds(facts)).toBe(!boils);
  });

  it('that boils the water is a danger, whether the pump has points or not', () => {
    const loop = { pumpElevation: 12 };
    expect(cautionsOf({ loop })[1]).toMatchObject({ code: 'suction-boils', severity: 'danger', limit: 0 });
    expect(codesOf({ loop, pump: { npshPoints: points } })).toEqual(['priming', 'suction-boils']);
  });

  it('that leaves less than the pump requires cavitates, and is judged by its points', () => {
    const loop = { pumpElevation: 9.2 };
    expect(codesOf({ loop, pump: { npshPoints: points } })).toEqual(['priming', 'cavitation']);
    expect(npshHolds({ loop, pump: { npshPoints: points } })).toBe(false);
    expect(npshHolds({ loop })).toBe(true);
  });
});

describe('a pump without points', () => {
  it('is told to be not checked, and what was judged in place of it where that is asked for', () => {
    expect(cautionsOf({}).map(({ detail }) => detail)).toEqual([
      'The pump has no NPSH points: cavitation was not checked.',
    ]);
    expect(cautionsOf({ limits: { enforceNpsh: true } })[0]?.detail).toContain(
      'does not boil before the pump',
    );
  });
});

describe('a pump above the water', () => {
  const foot = { suction: [{ valve: 'foot-poppet' }, pipe(0.05, 1)] };
  it.each<[string, Case, boolean]>([
    ['dry, with an open suction', { loop: { pumpElevation: 0.4 } }, true],
    ['level with the water', { loop: { pumpElevation: 0 } }, false],
    ['below it', { loop: { pumpElevation: -0.6 } }, false],
    ['with a foot valve', { loop: { pumpElevation: 0.4, ...foot } }, false],
    [
      'with a check valve',
      { loop: { pumpElevation: 0.4, suction: [pipe(0.05, 1), { valve: 'check-swing' }] } },
      false,
    ],
    ['entered as submerged', { loop: { pumpElevation: 0.4 }, pump: { mounting: 'submerged' } }, false],
  ])('%s must be primed: %o %s', (_, facts, isGiven) => {
    const priming = cautionsOf(facts).find(({ code }) => code === 'priming');
    expect(priming !== undefined).toBe(isGiven);
    if (priming === undefined) return;
    expect(priming).toMatchObject({
      ...{ severity: 'warning', pointer: '/pumpElevation', value: 0.4, limit: 0, quantity: 'elevation' },
    });
  });
});

describe('a submerged pump', () => {
  it.each<['dry' | 'submerged', number, boolean]>([
    ['submerged', 0.4, true],
    ['submerged', 0, false],
    ['submerged', -0.6, false],
    ['dry', 0.4, false],
  ])('that is %s %d m above the surface contradicts itself: %s', (mounting, pumpElevation, contradicts) => {
    const codes = codesOf({ loop: { pumpElevation }, pump: { mounting } });
    expect(codes.includes('submerged-above-surface')).toBe(contradicts);
  });
});
