/** Schedules of invented loops, with what a controller is to set at some instants. */
import type { Json } from '../../api/requests.ts';
import type { Draw } from '../../random/draw.ts';
import { SITE } from './asker.ts';
import { type Invented, invented, type Outlet, outletsOf, settingNear } from './invented.ts';
import type { Kind } from './kind.ts';
import { randomTariff } from './random-tariff.ts';
import { type Manner, unitsQuery, written } from './written.ts';

const FIRST_SEED = 151;
const CSV_EVERY = 4;

const ZONES = ['Europe/Lisbon', 'America/New_York', 'Australia/Lord_Howe', 'Asia/Kolkata'];
const STARTS = ['00:00', '02:30', '07:00', '12:15', '18:00', '22:00'];
const WORKDAYS = ['mon', 'tue', 'wed', 'thu', 'fri'];
const WEEKEND = ['sat', 'sun', 'holiday'];

/** Ordinary days, and those on which the clocks of a zone change. */
const INSTANTS = [
  '2026-01-20T07:05:00Z',
  '2026-03-08T06:59:00Z',
  '2026-03-29T00:59:00Z',
  '2026-04-05T02:00:00Z',
  '2026-07-04T22:30:00+02:00',
  '2026-10-25T00:30:00Z',
  '2026-12-25T12:00:00Z',
];

const total = (outlets: readonly Outlet[]): number =>
  outlets.reduce((sum, { requiredFlow = 0 }) => sum + requiredFlow, 0);

/** Of a day: somewhat less or more than the required flows would move in that time. */
function volume(draw: Draw, required: number): Json {
  return {
    volume: required * 3600 * draw.between(3, 12),
    ...(draw.chance(0.6) ? { minimumFlow: required * draw.between(0.2, 0.6) } : {}),
    ...(draw.chance(0.4) ? { maximumFlow: required * draw.between(1.2, 2) } : {}),
    ...(draw.chance(0.4) ? { mayStop: true } : {}),
    ...(draw.chance(0.3) ? { splits: false } : {}),
  };
}

function demand(draw: Draw, outlets: readonly Outlet[]): Json {
  switch (draw.whole(0, 4)) {
    case 0:
    case 1: {
      const some = outlets.filter(() => draw.chance(0.6));
      const flows = some.map(({ name, requiredFlow = 0 }) => [name, requiredFlow * draw.between(0.3, 1)]);
      return { requiredFlows: Object.fromEntries(flows) };
    }
    case 2:
      return { dailyVolume: volume(draw, total(outlets)) };
    default:
      return { factor: Number(draw.between(0.3, 1.2).toFixed(2)) };
  }
}

/** Outlets that are closed in a phase that states no flow for them. */
function openings(draw: Draw, outlets: readonly Outlet[], { requiredFlows }: Json): Json {
  const named = Object.keys(requiredFlows ?? {});
  const free = outlets.filter(({ name }) => !named.includes(name));
  if (free.length < 2 || !draw.chance(0.25)) return {};
  return { openings: { [draw.pick(free).name]: 0 } };
}

function phase(draw: Draw, outlets: readonly Outlet[], from: string): Json {
  const demanded = demand(draw, outlets);
  const steady = demanded.dailyVolume !== undefined;
  return {
    name: `from ${from}`,
    from,
    ...demanded,
    ...openings(draw, outlets, demanded),
    ...(!steady && draw.chance(0.2) ? { rampMinutes: draw.whole(5, 30) } : {}),
    ...(!steady && draw.chance(0.2)
      ? { pulse: { otherFactor: 0.4, periodMinutes: 15, share: draw.between(0.2, 0.8) } }
      : {}),
  };
}

function schedule({ draw, loop }: Invented, tariff: string | null): Json {
  const outlets = outletsOf(loop.discharge);
  const starts = STARTS.filter(() => draw.chance(0.5));
  const phases = (starts.length > 0 ? starts : ['07:00']).map((from) => phase(draw, outlets, from));
  const [first, ...others] = phases;
  // The first phase begins at another hour on free days, by a phase of its own.
  const apart = draw.chance(0.25) && first !== undefined && !starts.includes('09:00');
  const weekend = { ...phase(draw, outlets, '09:00'), days: WEEKEND };
  return {
    tariff,
    phases: apart ? [{ ...first, days: WORKDAYS }, ...others, weekend] : phases,
    ...(draw.chance(0.4)
      ? { emergency: { factor: 0.3, ...(draw.chance(0.5) ? { batteryEnergy: 1.2 } : {}) } }
      : {}),
  };
}

export const schedules: Kind = {
  name: 'schedule',
  count: 20,
  isShared: false,
  ask: async ({ ask, store, stock }, { place, label }) => {
    const asked = invented(FIRST_SEED + place);
    const { draw, loop, pump, count } = asked;
    const site = { ...SITE, timeZone: draw.pick(ZONES) };
    await ask({ label: `${label}.site`, path: '/v1/site', method: 'PUT', body: site, ifMatch: '*' });
    const own = draw.chance(0.3) ? await store('/v1/tariffs', randomTariff(draw)) : stock.tariff;
    const pumpId = await store('/v1/pumps', written(pump, 'metric'));
    const installed = { pump: pumpId, count, setting: settingNear(pump, draw.between(0.8, 1)) };
    const path = `/v1/loops/${await store('/v1/loops', { ...written(loop, 'metric'), installed })}`;
    const manner: Manner = draw.pick(['metric', 'metric', 'metric', 'us', 'texts']);
    const query = unitsQuery(manner);
    if (draw.chance(0.3)) await ask({ label: `${label}.unscheduled`, path: `${path}/setpoint`, query });
    const body = written(schedule(asked, draw.chance(0.6) ? own : null), manner);
    await ask({ label, path: `${path}/schedule`, method: 'PUT', query, body });
    await ask({
      label: `${label}.year`,
      path: `${path}/schedule`,
      query: { ...query, year: draw.whole(2024, 2030) },
    });
    for (const [nth, at] of [draw.pick(INSTANTS), draw.pick(INSTANTS)].entries()) {
      await ask({ label: `${label}.setpoint-${nth}`, path: `${path}/setpoint`, query: { ...query, at } });
      await ask({ label: `${label}.setpoints-${nth}`, path: `${path}/setpoints`, query: { ...query, at } });
    }
    if (place % CSV_EVERY !== 0) return;
    const form = { ...query, format: 'csv' };
    await ask({ label: `${label}.csv`, path: `${path}/schedule`, query: form });
    await ask({ label: `${label}.setpoints.csv`, path: `${path}/setpoints`, query: form });
  },
};
