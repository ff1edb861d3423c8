/** Recommendations for invented loops, with every variety of body. */
import type { Json } from '../../api/requests.ts';
import type { Draw } from '../../random/draw.ts';
import type { Stock } from './asker.ts';
import { type Invented, invented, isTrimmable, outletsOf, scaledPump } from './invented.ts';
import type { Kind } from './kind.ts';
import { randomTariff } from './random-tariff.ts';
import { type Manner, unitsQuery, written } from './written.ts';

const FIRST_SEED = 1;
const CSV_EVERY = 10;

function candidates({ draw, pump, count }: Invented, { pumps }: Stock): Json {
  if (draw.chance(0.04)) return {};
  const others = Array.from({ length: draw.whole(0, 4) }, (_, place) => {
    const scale = { flow: draw.between(0.7, 2), head: draw.between(0.8, 2) };
    const other = scaledPump(pump, { name: `Inline ${place + 1}`, ...scale });
    return draw.chance(0.3) ? { pump: other, count: draw.whole(2, 3) } : other;
  });
  const first = count === 1 ? pump : { pump, count };
  return { pumps: [first, ...others, ...(draw.chance(0.1) ? [draw.pick(pumps)] : [])] };
}

function money(draw: Draw, { tariff }: Stock): Json {
  const price = Number(draw.between(0.05, 0.5).toFixed(3));
  switch (draw.whole(0, 9)) {
    case 0:
      return { tariff: randomTariff(draw) };
    case 1:
      return { tariff };
    case 2:
      return {};
    case 3:
      return { price, currency: 'USD' };
    default:
      return { price };
  }
}

const limits = (draw: Draw): Json => ({
  ...(draw.chance(0.5) ? { throughSlotVelocity: draw.chance(0.4) ? null : draw.between(0.05, 0.4) } : {}),
  ...(draw.chance(0.3) ? { cloggedFraction: draw.pick([0, 0.3, 0.7]) } : {}),
  ...(draw.chance(0.3) ? { screenBasis: draw.pick(['mean', 'peak']) } : {}),
  ...(draw.chance(0.3) ? { pipeVelocity: draw.between(0.8, 3) } : {}),
  ...(draw.chance(0.3) ? { maximumEfficiency: draw.between(0.5, 1) } : {}),
  ...(draw.chance(0.3) ? { enforceNpsh: true } : {}),
  ...(draw.chance(0.4) ? { allowExtrapolation: true } : {}),
});

const lifeCycle = (draw: Draw): Json => ({
  years: draw.whole(1, 20),
  discountRate: Number(draw.between(0, 0.08).toFixed(3)),
  ...(draw.chance(0.5) ? { inflation: 0.02 } : {}),
  ...(draw.chance(0.5) ? { energyInflation: 0.035 } : {}),
  ...(draw.chance(0.5) ? { labourRate: draw.whole(10, 60) } : {}),
  ...(draw.chance(0.5) ? { minutesPerFailure: draw.whole(30, 300) } : {}),
});

const assurance = (draw: Draw): Json =>
  draw.pick<() => Json>([
    () => ({ grade: draw.pick(['1B', '1E', '1U', '2B', '2U', '3B']) }),
    () => ({ margin: Number(draw.between(0, 0.3).toFixed(2)) }),
    () => ({ frictionMultiplier: Number(draw.between(1, 1.6).toFixed(2)) }),
  ])();

const options = (draw: Draw, trims: boolean): Json => ({
  ...(draw.chance(0.4) ? { hoursPerDay: draw.pick([0, 6, 10.5, 18, 24]) } : {}),
  ...(trims && draw.chance(0.6) ? { balancing: 'trimmed' } : {}),
  ...(draw.chance(0.25) ? { objective: 'life-cycle-cost', lifeCycle: lifeCycle(draw) } : {}),
  ...(draw.chance(0.4) ? { limits: limits(draw) } : {}),
  ...(draw.chance(0.35) ? { assurance: assurance(draw) } : {}),
  ...(draw.chance(0.2)
    ? {
        heat: {
          cop: draw.between(2, 5),
          mode: draw.pick(['cooling', 'heating']),
          inRanking: draw.chance(0.5),
        },
      }
    : {}),
  ...(draw.chance(0.2) ? { detail: 'losses' } : {}),
  ...(draw.chance(0.15) ? { rankingLimit: draw.whole(1, 3) } : {}),
});

/** The same tank and pump, as somebody knows them who never saw the pipes. */
function systemCurveLoop({ draw, loop, pump }: Invented): object {
  const full = pump.headPoints.filter(({ setting }) => setting === pump.settings.max);
  const { flow, head } = full[Math.floor(full.length / 2)] ?? { flow: 0, head: 0 };
  const share = draw.between(0.4, 0.8);
  const point = { flow: share * flow, head: draw.between(0.3, 0.7) * head };
  const more = { flow: 1.3 * point.flow, head: 1.6 * point.head };
  const outlets = outletsOf(loop.discharge).slice(0, 2);
  const parts = outlets.length === 1 ? [1] : [0.4, 0.6];
  return {
    name: loop.name,
    water: loop.water,
    tank: loop.tank,
    intake: loop.intake,
    pumpElevation: loop.pumpElevation,
    frictionMultiplier: loop.frictionMultiplier,
    systemCurve: {
      ...(draw.chance(0.5) ? { staticHead: 0.4 * point.head } : {}),
      points: draw.chance(0.5) ? [point] : [point, more],
    },
    outlets: outlets.map(({ name }, place) => ({
      name,
      share: parts[place],
      requiredFlow: draw.between(0.4, 1) * (parts[place] ?? 0) * point.flow,
    })),
  };
}

function body(asked: Invented, stock: Stock): object {
  const { draw } = asked;
  const byCurve = draw.chance(0.08);
  return {
    loop: byCurve ? systemCurveLoop(asked) : asked.loop,
    ...candidates(asked, stock),
    ...money(draw, stock),
    ...options(draw, isTrimmable(asked.loop) && !byCurve),
  };
}

export const recommendations: Kind = {
  name: 'recommendation',
  count: 300,
  isShared: true,
  ask: async ({ ask, stock }, { place, label }) => {
    const asked = invented(FIRST_SEED + place);
    const manner: Manner = asked.draw.pick(['metric', 'metric', 'metric', 'metric', 'us', 'us', 'texts']);
    const question = {
      path: '/v1/recommendations',
      body: written(body(asked, stock), manner),
    };
    await ask({ ...question, label, query: unitsQuery(manner) });
    if (place % CSV_EVERY !== 0) return;
    await ask({ ...question, label: `${label}.csv`, query: { ...unitsQuery(manner), format: 'csv' } });
  },
};
