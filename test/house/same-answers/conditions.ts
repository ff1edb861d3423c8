/** Conditions of invented loops by months of readings, healthy and with faults that come at once or slowly. */
import type { Json } from '../../api/requests.ts';
import type { Draw } from '../../random/draw.ts';
import type { Asker } from './asker.ts';
import { FAULTS, type Fault, faulty, meterGains, stopped } from './faults.ts';
import { type History, randomHistory } from './history.ts';
import { type Invented, invented, outletsOf } from './invented.ts';
import type { Kind } from './kind.ts';
import { type Meters, readingOf, readsPressures } from './meters.ts';
import { between, type Shown } from './shown.ts';
import { type Station, station } from './station.ts';

const FIRST_SEED = 1;
const CSV_EVERY = 5;

const MEASURES = [
  ['power'],
  ['flow'],
  ['flow', 'power'],
  ['flow', 'power'],
  ['flow', 'power', 'head'],
  ['flow', 'power', 'suctionPressure', 'dischargePressure'],
  ['power', 'suctionPressure', 'dischargePressure'],
  ['flow', 'head', 'power', 'suctionPressure', 'dischargePressure'],
];

interface Case {
  readonly asked: Invented;
  readonly fault: Fault;
  readonly size: number;
  readonly history: History;
}

function randomMeters(known: Case): Meters {
  const { draw, loop } = known.asked;
  const byOutlet = draw.chance(0.4);
  const outlets = outletsOf(loop.discharge).map(({ name }) => name);
  const measures = byOutlet && draw.chance(0.4) ? ['power'] : draw.pick(MEASURES);
  return {
    measures,
    outlets: byOutlet ? outlets.slice(0, draw.whole(1, outlets.length)) : [],
    scatter: draw.pick([0.003, 0.01, 0.01, 0.03, 0.08]),
    gains: meterGains(draw, known, measures),
  };
}

/** Of several pumps one may stop: every second loop on which that happens has several. */
function loopFor(fault: Fault, place: number): Invented {
  const asked = invented(FIRST_SEED + place);
  return fault === 'pump-stopped' && place % 2 === 0 ? { ...asked, count: Math.max(2, asked.count) } : asked;
}

/** What is there to be read at a setting once the fault has come so far. */
function shownAt({ asked, fault }: Case, { before, after }: Station, setting: number, course: number): Shown {
  const [from, to] = [before.get(setting), after.get(setting)];
  if (from === undefined || to === undefined) throw new Error(`nothing is shown at ${setting}`);
  if (fault !== 'pump-stopped') return between(from, to, course);
  // A pump runs or it does not.
  if (course < 0.9) return from;
  return asked.count > 1 ? to : stopped(from, asked.pump);
}

function readings(known: Case, at: Station, meters: Meters): readonly Json[] {
  const { draw } = known.asked;
  const [usual, other = usual] = at.before.keys();
  return known.history.times.map(({ time, course }) => {
    const setting = draw.chance(0.25) ? other : usual;
    if (setting === undefined) throw new Error('a station without a setting');
    // A meter drifts; its unit is one or the other.
    const far = known.fault === 'unit-slip' ? Math.round(course) : course;
    const gains = Object.fromEntries(
      Object.entries(meters.gains).map(([name, gain]) => [name, 1 + far * (gain - 1)]),
    );
    const read = readingOf(draw, shownAt(known, at, setting, course), { ...meters, gains });
    return { time: new Date(time).toISOString(), setting, ...read };
  });
}

async function addCleaning(
  { store, ask }: Asker,
  label: string,
  loop: string,
  history: History,
): Promise<void> {
  const task = { name: 'Clean the intake screen', kind: 'screen-cleaning', loop, every: 'P4W' };
  const id = await store('/v1/maintenance-tasks', { ...task, minutes: 20, parts: 2, firstDue: '2025-12-01' });
  for (const time of history.cleanedAt) {
    const body = { at: new Date(time).toISOString() };
    await ask({ label: `${label}.cleaned`, path: `/v1/maintenance-tasks/${id}/completions`, body });
  }
}

function randomQuery(draw: Draw, { timeAt }: History): Json {
  const text = (share: number) => new Date(timeAt(share)).toISOString();
  return {
    ...(draw.chance(0.3) ? { price: 0.34 } : {}),
    ...(draw.chance(0.3) ? { cleaningCost: draw.whole(5, 60) } : {}),
    ...(draw.chance(0.12) ? { from: text(0.2) } : {}),
    ...(draw.chance(0.12) ? { to: text(0.9) } : {}),
    ...(draw.chance(0.2) ? { units: 'us' } : {}),
  };
}

function randomInstalled(draw: Draw, { timeAt }: History): Json {
  return {
    ...(draw.chance(0.5) ? { checkValves: draw.chance(0.7) } : {}),
    ...(draw.chance(0.4)
      ? { since: new Date(timeAt(draw.between(-0.5, 0.3))).toISOString().slice(0, 10) }
      : {}),
  };
}

export const conditions: Kind = {
  name: 'condition',
  count: 50,
  isShared: false,
  ask: async (asker, { place, label }) => {
    const fault = FAULTS[place % FAULTS.length] ?? 'none';
    const asked = loopFor(fault, place);
    const { draw } = asked;
    const known = { asked, fault, size: draw.between(0.3, 1), history: randomHistory(draw) };
    const meters = randomMeters(known);
    const at = await station(asker, {
      label,
      asked,
      shares: draw.chance(0.3) ? [draw.between(0.75, 1), 0.7] : [draw.between(0.75, 1)],
      installed: randomInstalled(draw, known.history),
      change: (healthy) => faulty(asked, draw, { ...known, healthy }),
      pressures: readsPressures(meters),
    });
    const loop = `/v1/loops/${at.loop}`;
    const body = { readings: readings(known, at, meters) };
    await asker.ask({ label: `${label}.readings`, path: `${loop}/readings`, body });
    if (known.history.cleanedAt.length > 0) await addCleaning(asker, label, at.loop, known.history);
    const query = randomQuery(draw, known.history);
    await asker.ask({ label, path: `${loop}/condition`, query });
    if (place % CSV_EVERY !== 0) return;
    await asker.ask({ label: `${label}.csv`, path: `${loop}/condition`, query: { ...query, format: 'csv' } });
  },
};
