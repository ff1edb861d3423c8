/** What the demo shows of animals, floods and people. */
import { describe, expect, it } from 'vitest';
import { sampleLoop } from '../../models/duty/sampled-loop.ts';
import { drainBack } from '../../models/hazards/drain-back.ts';
import { DEFAULT_LIMITS } from '../../models/loop/limits.ts';
import { select } from '../../models/selection/select.ts';
import { withoutScreenLimit } from '../../models/selection/without-screen-limit.ts';
import { bestOf, candidates, installedDuty, loopModel, nameOf, selectionFor } from './demo-world.ts';

const RACEWAYS = 'loop-nursery-raceways.json';
const POOL = 'loop-touch-pool.json';

describe('the touch pool', () => {
  const asked = {
    sampled: sampleLoop(loopModel(POOL)),
    candidates,
    limits: DEFAULT_LIMITS,
    running: { price: 0.21, hoursPerDay: 24, elevation: 10 },
  };

  it('half clogged breaks 0.1524 m/s with the pump that is cheapest without the limit', () => {
    const found = withoutScreenLimit({ ...asked, selection: select(asked) });
    expect(nameOf(found?.ranked.candidate ?? -1)).toBe('Canister 120');
    expect(found?.velocities.mean).toBeGreaterThan(0.1524);
  });

  it('could have that pump with a screen a little longer', () => {
    const { screen } = withoutScreenLimit({ ...asked, selection: select(asked) }) ?? {};
    expect(screen).toMatchObject({ shape: 'flat', width: 0.3, count: 1 });
    expect(screen?.length).toBeGreaterThan(0.13);
    expect(screen?.length).toBeLessThan(0.15);
  });
});

describe('the nursery raceways', () => {
  const { entered: loop } = loopModel(RACEWAYS);

  it('flood their basin on a power cut until the siphon break is raised', () => {
    const found = drainBack(loop);
    expect(found?.floods).toBe(true);
    const deepest = found?.deepestSiphonBreak ?? 0;
    expect(deepest).toBeGreaterThan(0.04);
    expect(drainBack({ ...loop, siphonBreakDepth: 0.04 })?.floods).toBe(false);
  });

  it('overrun their overflow at the installed setting, but not at the one recommended', () => {
    const capacity = loop.overflowCapacity ?? 0;
    expect(installedDuty(RACEWAYS).flow).toBeGreaterThan(capacity);
    expect(bestOf(selectionFor(RACEWAYS)).duty.flow).toBeLessThan(capacity);
  });
});
