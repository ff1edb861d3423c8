/** Upgrade plans with invented candidates and budgets. */
import type { Json } from '../../api/requests.ts';
import { type Draw, drawsFrom, mulberry32 } from '../../random/draw.ts';
import type { Kind } from './kind.ts';

const FIRST_SEED = 0x9a001000;
const CSV_EVERY = 4;

function candidate(draw: Draw, years: number, place: number): Json {
  const firstYear = draw.whole(1, years);
  const lastYear = draw.whole(firstYear, years + 1);
  // Most budgets reach what must be made.
  const must = draw.chance(0.08);
  return {
    name: `Upgrade ${place + 1}`,
    cost: draw.whole(50, must ? 250 : 2000),
    yearlySaving: draw.chance(0.1) ? -draw.whole(1, 40) : draw.whole(0, 500),
    lifeYears: draw.pick([2, 4.5, 8, 20]),
    ...(draw.chance(0.3) ? { group: draw.pick(['kelp flume', 'seahorse bank']) } : {}),
    ...(draw.chance(0.25) ? { firstYear } : {}),
    ...(draw.chance(0.25) ? { lastYear } : {}),
    ...(must ? { mandatory: true } : {}),
  };
}

function body(draw: Draw): Json {
  const years = draw.whole(1, 8);
  return {
    ...(draw.chance(0.5) ? { name: `Pumps of ${years} years` } : {}),
    years,
    budget: Array.from({ length: draw.whole(1, years) }, () => draw.whole(200, 2500)),
    ...(draw.chance(0.3) ? { carryOver: false } : {}),
    discountRate: Number(draw.between(0, 0.1).toFixed(3)),
    candidates: Array.from({ length: draw.whole(1, 14) }, (_, place) => candidate(draw, years, place)),
  };
}

export const upgradePlans: Kind = {
  name: 'upgrade-plan',
  count: 20,
  isShared: false,
  ask: async ({ ask }, { place, label }) => {
    const draw = drawsFrom(mulberry32(FIRST_SEED + place));
    const question = { path: '/v1/upgrade-plans', body: body(draw) };
    await ask({ ...question, label });
    if (place % CSV_EVERY === 0) await ask({ ...question, label: `${label}.csv`, query: { format: 'csv' } });
  },
};
