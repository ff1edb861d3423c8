/** The choice that only the intake screen forbids. */
import { describe, expect, it } from 'vitest';
import { sampleLoop } from '../../../models/duty/sampled-loop.ts';
import { screenVelocities } from '../../../models/intake/screen.ts';
import { DEFAULT_LIMITS, type Limits } from '../../../models/loop/limits.ts';
import type { IntakeScreen } from '../../../models/loop/loop.ts';
import { type Candidate, select } from '../../../models/selection/select.ts';
import { withoutScreenLimit } from '../../../models/selection/without-screen-limit.ts';
import { canister, LITRE_PER_HOUR, loopOf, modelOf, outlet, pipe, pumpModelOf } from '../example-loops.ts';

const FLOW = 2000 * LITRE_PER_HOUR;
const running = { price: 0.2, hoursPerDay: 24, elevation: 0 };
/** A pump of one setting that overshoots, and one of fine steps that draws more. */
const coarse: Candidate = {
  pump: pumpModelOf({ ...canister, settings: { min: 60, max: 60, step: 1 } }),
  count: 1,
};
const fine: Candidate = {
  pump: pumpModelOf({ ...canister, powerPoints: [{ setting: 100, power: 4000 }] }),
  count: 1,
};

function question(screen: IntakeScreen, candidates: readonly Candidate[], change: Partial<Limits> = {}) {
  const loop = loopOf(outlet('jet', { requiredFlow: FLOW }, [pipe(0.04, 2)]), {
    intake: { lossCoefficient: 0.5, screen },
  });
  const asked = {
    sampled: sampleLoop(modelOf(loop)),
    candidates,
    limits: { ...DEFAULT_LIMITS, ...change },
    running,
  };
  const selection = select(asked);
  return { selection, found: withoutScreenLimit({ ...asked, selection }) };
}

const flat = (length: number, count = 1): IntakeScreen => ({
  ...{ shape: 'flat', width: 0.1, openFraction: 0.4 },
  length,
  count,
});
/** Just gentle at the required flow and a little more, clogged by half. */
const tight = flat((1.02 * FLOW) / (0.1524 * 0.5 * 0.4 * 0.1));

describe('without the limit of the screen', () => {
  it('a cheaper pump would be chosen, and a longer screen would allow it', () => {
    const { selection, found } = question(tight, [fine, coarse]);
    expect(selection.ranking.map(({ candidate }) => candidate)).toEqual([0]);
    expect(found?.ranked.candidate).toBe(1);
    expect(found?.velocities.mean).toBeGreaterThan(0.1524);
    const screen = found?.screen ?? tight;
    expect(question(screen, [fine, coarse]).selection.ranking[0]?.candidate).toBe(1);
    expect(question({ ...screen, length: 0.99 * screen.length }, [fine, coarse]).found).not.toBeNull();
  });

  it('nothing is told where the screen is gentle, not judged, or the chosen pump stays the cheapest', () => {
    expect(question(flat(1), [fine, coarse]).found).toBeNull();
    expect(question(tight, [fine, coarse], { throughSlotVelocity: null }).found).toBeNull();
    const dear: Candidate = {
      ...coarse,
      pump: pumpModelOf({ ...coarse.pump.entered, powerPoints: [{ setting: 100, power: 40_000 }] }),
    };
    expect(question(tight, [fine, dear]).found).toBeNull();
  });

  it('a loop that no candidate serves would have one', () => {
    const { selection, found } = question(tight, [coarse]);
    expect(selection.ranking).toEqual([]);
    expect(found?.ranked.candidate).toBe(0);
  });

  it('as many flat screens are asked for as there are, cylinders as many as it takes', () => {
    const { found } = question(flat(0.02, 3), [coarse]);
    expect(found?.screen?.count).toBe(3);
    const slim = { shape: 'cylinder', diameter: 0.05, length: 0.2, openFraction: 0.4, count: 1 } as const;
    const cylinders = question(slim, [coarse], { screenBasis: 'peak' }).found;
    const { ranked, screen } = cylinders ?? {};
    if (ranked === undefined || screen === undefined || screen === null) throw new Error('no screen is told');
    const draw = { screen, flow: ranked.duty.flow, cloggedFraction: 0.5 };
    expect(screen.count).toBeGreaterThan(1);
    expect(screenVelocities(draw).peak).toBeLessThanOrEqual(0.1524 * (1 + 1e-9));
  });
});
