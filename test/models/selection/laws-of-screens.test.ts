/** More clogging, a less open screen or a stricter limit never make an infeasible loop feasible. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sampleLoop } from '../../../models/duty/sampled-loop.ts';
import { DEFAULT_LIMITS, type Limits } from '../../../models/loop/limits.ts';
import type { IntakeScreen } from '../../../models/loop/loop.ts';
import { select } from '../../../models/selection/select.ts';
import { canister, LITRE_PER_HOUR, loopOf, modelOf, outlet, pipe, pumpModelOf } from '../example-loops.ts';

const RUNS = 200;
const pump = pumpModelOf({ ...canister, settings: { min: 40, max: 100, step: 10 } });
const running = { price: 0.2, hoursPerDay: 24, elevation: 0 };
const share = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Screens and limits around what a flow of 1000 to 5000 L/h needs. */
const situation = fc.record({
  shape: fc.constantFrom('cylinder' as const, 'flat' as const, 'box' as const),
  size: share(0.05, 0.6),
  openFraction: share(0.1, 0.9),
  requiredFlow: share(1000, 5000),
  cloggedFraction: share(0, 0.9),
  throughSlotVelocity: share(0.02, 0.5),
  screenBasis: fc.constantFrom('mean' as const, 'peak' as const),
  less: share(0.3, 1),
});

type Situation = typeof situation extends fc.Arbitrary<infer Drawn> ? Drawn : never;

function screenOf({ shape, size, openFraction }: Situation): IntakeScreen {
  const face = { openFraction, length: size, count: 1 };
  if (shape === 'cylinder') return { ...face, shape, diameter: size / 3 };
  if (shape === 'flat') return { ...face, shape, width: size / 2 };
  return { ...face, shape, width: size / 2, height: size / 4 };
}

function isFeasible(drawn: Situation): boolean {
  const { requiredFlow, cloggedFraction, throughSlotVelocity, screenBasis } = drawn;
  const jet = outlet('jet', { requiredFlow: requiredFlow * LITRE_PER_HOUR }, [pipe(0.04, 2)]);
  const loop = loopOf(jet, { intake: { lossCoefficient: 0.5, screen: screenOf(drawn) } });
  const limits: Limits = { ...DEFAULT_LIMITS, cloggedFraction, throughSlotVelocity, screenBasis };
  const candidates = [{ pump, count: 1 }];
  return select({ sampled: sampleLoop(modelOf(loop)), candidates, limits, running }).ranking.length > 0;
}

const HARDER: readonly (readonly [string, (drawn: Situation) => Situation])[] = [
  ['more clogging', (drawn) => ({ ...drawn, cloggedFraction: 1 - drawn.less * (1 - drawn.cloggedFraction) })],
  ['a smaller slot share', (drawn) => ({ ...drawn, openFraction: drawn.less * drawn.openFraction })],
  [
    'a stricter limit',
    (drawn) => ({ ...drawn, throughSlotVelocity: drawn.less * drawn.throughSlotVelocity }),
  ],
];

describe('an infeasible loop', () => {
  it.each(HARDER)('stays so with %s', (_, harder) => {
    const seen = new Set<boolean>();
    fc.assert(
      fc.property(situation, (drawn) => {
        const before = isFeasible(drawn);
        const after = isFeasible(harder(drawn));
        seen.add(before).add(after);
        expect(after && !before).toBe(false);
      }),
      { seed: 1, numRuns: RUNS },
    );
    expect(seen.size).toBe(2);
  });
});
