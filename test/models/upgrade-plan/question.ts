/** Questions of upgrade plans for tests. */
import type { PlanQuestion, Upgrade } from '../../../models/upgrade-plan/upgrade.ts';
import { type Draw, drawsFrom, mulberry32 } from '../../random/draw.ts';

export const upgrade = (change: Partial<Upgrade> = {}): Upgrade => ({
  name: 'a pump',
  cost: 1000,
  yearlySaving: 300,
  lifeYears: 10,
  ...change,
});

export const question = (change: Partial<PlanQuestion> = {}): PlanQuestion => ({
  years: 3,
  budget: [1000, 1000, 1000],
  carryOver: true,
  discountRate: 0.05,
  candidates: [upgrade()],
  ...change,
});

function drawnUpgrade(draw: Draw, years: number, place: number): Upgrade {
  const cost = draw.chance(0.05) ? 0 : draw.whole(1, 20) * 50;
  const notBefore = draw.chance(0.2) ? { firstYear: draw.whole(1, years + 1) } : {};
  const notAfter = draw.chance(0.2) ? { lastYear: draw.whole(notBefore.firstYear ?? 1, years + 1) } : {};
  return {
    name: `upgrade ${place}`,
    cost,
    yearlySaving: draw.chance(0.1) ? -draw.whole(0, 50) : Math.round(cost * draw.between(0.02, 0.6)),
    lifeYears: draw.whole(1, 2 * years),
    ...notBefore,
    ...notAfter,
    ...(draw.chance(0.4) ? { group: draw.pick(['a', 'b']) } : {}),
    ...(draw.chance(0.12) ? { mandatory: true } : {}),
  };
}

/** Small enough to try out every plan; some with must-dos that cannot be, some where nothing fits. */
export function drawnQuestions(count: number, seed: number): readonly PlanQuestion[] {
  const draw = drawsFrom(mulberry32(seed));
  return Array.from({ length: count }, () => {
    const years = draw.whole(1, 4);
    const budget = Array.from({ length: draw.whole(1, years) }, () => draw.whole(0, 16) * 50);
    const candidates = Array.from({ length: draw.whole(1, 5) }, (_, place) =>
      drawnUpgrade(draw, years, place),
    );
    return {
      years,
      budget,
      carryOver: draw.chance(0.6),
      discountRate: draw.between(-0.02, 0.15),
      candidates,
    };
  });
}

const EXTREMES = [0, 1e-9, 0.01, 33.33, 1e3, 1e6, 5e8 + 0.01, 1e9] as const;

/** Sums and rates at the ends of what may be entered. */
export function extremeQuestions(count: number, seed: number): readonly PlanQuestion[] {
  const draw = drawsFrom(mulberry32(seed));
  const money = () => draw.pick(EXTREMES);
  return Array.from({ length: count }, () => {
    const years = draw.pick([1, 5, 40]);
    return {
      years,
      budget: Array.from({ length: draw.whole(1, years) }, money),
      carryOver: draw.chance(0.5),
      discountRate: draw.pick([-0.5, 0, 1]),
      candidates: Array.from({ length: draw.whole(1, 10) }, () => {
        const yearlySaving = draw.chance(0.2) ? -money() : money();
        return upgrade({ cost: money(), yearlySaving, lifeYears: draw.pick([1e-6, 7.3, 100]) });
      }),
    };
  });
}
