/** Comparisons of invented options over the years. */
import type { Json } from '../../api/requests.ts';
import type { Draw } from '../../random/draw.ts';
import type { Asker } from './asker.ts';
import { type Invented, invented, isTrimmable, scaledPump, settingNear } from './invented.ts';
import type { Kind } from './kind.ts';
import { randomTariff } from './random-tariff.ts';
import { type Manner, unitsQuery, written } from './written.ts';

const FIRST_SEED = 171;
const CSV_EVERY = 5;
const KINDS = ['pipework', 'installation', 'operation', 'environment', 'disposal'];

/** The loops and pumps that all options of a question are made of. */
interface World {
  readonly draw: Draw;
  readonly one: Invented;
  readonly other: Invented;
  /** A loop in the application with its pump installed. */
  readonly stored: string;
}

const running = ({ draw, one: { pump } }: World, trims: boolean): Json => ({
  ...(draw.chance(0.3) ? { hoursPerDay: draw.pick([8, 16.5, 24]) } : {}),
  ...(draw.chance(0.25) ? { riskShare: 0.5 } : {}),
  ...(trims && draw.chance(0.3)
    ? { balancing: 'trimmed' }
    : draw.chance(0.25)
      ? { setting: settingNear(pump, draw.between(0.7, 1)) }
      : {}),
});

function onOneLoop(world: World): Json {
  const { draw, one } = world;
  const scale = { flow: draw.between(0.9, 1.8), head: draw.between(1, 1.8) };
  const pump = draw.chance(0.5) ? one.pump : scaledPump(one.pump, { name: 'Canister 600', ...scale });
  return {
    loop: one.loop,
    pump,
    ...(draw.chance(0.3) || one.count > 1 ? { count: Math.max(one.count, draw.whole(1, 2)) } : {}),
    ...(draw.chance(0.3) ? { new: false, ageYears: draw.whole(0, 6) } : {}),
    ...running(world, isTrimmable(one.loop)),
  };
}

function consolidated(world: World): Json {
  const { draw, one, other } = world;
  const { water, frictionMultiplier, suction, intake } = one.loop;
  const joined = { ...other.loop, water, frictionMultiplier };
  const bore = draw.between(0.04, 0.075);
  return {
    consolidate: {
      loops: draw.chance(0.3) ? [one.loop, joined, { ...joined, name: 'Third bay' }] : [one.loop, joined],
      suction,
      manifold: [{ pipe: { insideDiameter: bore }, length: draw.between(0.5, 4) }, { fitting: 'tee-run' }],
      ...(draw.chance(0.6) ? { intake } : {}),
    },
    pump: scaledPump(one.pump, {
      name: 'Canister 900',
      flow: draw.between(1.6, 3),
      head: draw.between(1, 2),
    }),
  };
}

function assembly(world: World): Json {
  const { draw, one, other, stored } = world;
  switch (draw.whole(0, 7)) {
    case 0:
      return { power: draw.between(40, 400), ...(draw.chance(0.5) ? { pump: one.pump } : {}) };
    case 1:
      return { loop: stored, new: false };
    case 2:
    case 3:
      return consolidated(world);
    case 4:
      return { loop: other.loop, pump: other.pump, count: other.count };
    default:
      return onOneLoop(world);
  }
}

const extra = (draw: Draw, years: number, place: number): Json => ({
  name: `Extra ${place + 1}`,
  kind: draw.pick(KINDS),
  cost: draw.whole(-50, 600),
  year: draw.whole(0, years),
  ...(draw.chance(0.3) ? { everyYears: draw.whole(1, 4) } : {}),
});

function option(world: World, years: number, place: number): Json {
  const { draw } = world;
  const risk = {
    valueAtRisk: draw.whole(500, 20_000),
    survivalHours: draw.whole(1, 24),
    meanRestoreHours: draw.whole(1, 48),
    ...(draw.chance(0.5) ? { requiredShare: draw.pick([0.3, 0.5, 0.8]) } : {}),
  };
  return {
    name: `Option ${place + 1}`,
    assemblies: Array.from({ length: draw.whole(1, 3) }, () => assembly(world)),
    ...(draw.chance(0.6)
      ? { extras: Array.from({ length: draw.whole(1, 3) }, (_, at) => extra(draw, years, at)) }
      : {}),
    ...(draw.chance(0.5) ? { risk } : {}),
  };
}

function money(draw: Draw, tariff: string): Json {
  if (draw.chance(0.6)) return { price: Number(draw.between(0.08, 0.5).toFixed(3)) };
  return draw.chance(0.5) ? { tariff: draw.chance(0.5) ? tariff : randomTariff(draw) } : {};
}

function body(world: World, tariff: string): Json {
  const { draw } = world;
  const years = draw.whole(1, 20);
  return {
    years,
    ...(draw.chance(0.8) ? { discountRate: Number(draw.between(0, 0.08).toFixed(3)) } : {}),
    ...(draw.chance(0.5) ? { inflation: 0.02 } : {}),
    ...(draw.chance(0.5) ? { energyInflation: 0.03 } : {}),
    ...(draw.chance(0.5) ? { labourRate: draw.whole(10, 60) } : {}),
    ...(draw.chance(0.3) ? { minutesPerFailure: draw.whole(20, 300) } : {}),
    ...money(draw, tariff),
    options: Array.from({ length: draw.whole(2, 4) }, (_, place) => option(world, years, place)),
  };
}

async function worldOf({ store }: Asker, place: number): Promise<World> {
  const one = invented(FIRST_SEED + 2 * place);
  const other = invented(FIRST_SEED + 2 * place + 1);
  const { draw, loop, pump, count } = one;
  const pumpId = await store('/v1/pumps', written(pump, 'metric'));
  const setting = settingNear(pump, draw.between(0.8, 1));
  const installed = { pump: pumpId, count, setting, since: '2024-05-01' };
  const stored = await store('/v1/loops', { ...written(loop, 'metric'), installed });
  return { draw, one, other, stored };
}

export const comparisons: Kind = {
  name: 'comparison',
  count: 50,
  isShared: false,
  ask: async (asker, { place, label }) => {
    const world = await worldOf(asker, place);
    const manner: Manner = world.draw.pick(['metric', 'metric', 'metric', 'us', 'texts']);
    const query = unitsQuery(manner);
    const question = {
      path: '/v1/comparisons',
      body: written(body(world, asker.stock.tariff), manner),
    };
    await asker.ask({ ...question, label, query });
    if (place % CSV_EVERY !== 0) return;
    await asker.ask({ ...question, label: `${label}.csv`, query: { ...query, format: 'csv' } });
  },
};
