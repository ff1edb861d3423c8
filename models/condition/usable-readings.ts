/** Sorts readings by what they can say, and holds each against what its setting should show. */
import { median } from '../../curves/theil-sen.ts';
import { MS_PER_DAY } from '../calendar/zone-offsets.ts';
import { type Gauge, gaugeOf, isPressure } from '../readings/measure.ts';
import type { Reading } from '../readings/reading.ts';
import { slipOf, type UnitSlip } from '../readings/slip.ts';
import { isStopped, isWithoutFlow } from '../readings/stopped.ts';
import type { ReadDay } from './baseline.ts';
import type { GaugeValue } from './day-values.ts';
import type { MeteredLoop, Shown } from './metered-loop.ts';

/** Values whose median a unit slip is held against, the nearest in time: a new unit for good is a step after half of them. */
const NEAREST = 9;
/** Residuals that lie closer together hold no mix-up: the smallest factor is over 3. */
const LEAST_SLIP = 1;
/** A pressure this share of the predicted head is large enough for its ratio to show a unit. */
const LARGE_PRESSURE = 0.5;

export interface SetAside extends UnitSlip {
  readonly time: number;
  readonly gauge: Gauge;
}

export interface UsableReadings {
  readonly gauges: readonly GaugeValues[];
  readonly setAside: readonly SetAside[];
  /** Each day with a reading of a pump that turned, and its first one. */
  readonly days: readonly ReadDay[];
  /** Whether the latest reading of a pump that is set to run is of one that stands still. */
  readonly isStopped: boolean;
  readonly counts: Readonly<Record<'used' | 'stopped' | 'closedValve' | 'rareSetting', number>>;
}

interface GaugeValues {
  readonly gauge: Gauge;
  readonly values: readonly GaugeValue[];
}

/** Readings in the order of time; `dayOf` numbers the days of the site's calendar. */
export function usableReadings(
  loop: MeteredLoop,
  readings: readonly Reading[],
  dayOf: (time: number) => number,
): UsableReadings {
  const solved = settingsSolved(loop, readings);
  const counts = { used: 0, stopped: 0, closedValve: 0, rareSetting: 0 };
  const days: ReadDay[] = [];
  const collector = valueCollector(loop);
  let isLatestStopped = false;
  for (const reading of readings) {
    const shown = solved.get(reading.setting);
    const sort = sortOf(loop, reading, shown);
    counts[sort] += 1;
    if (shown === undefined || shown === null) continue;
    if (reading.setting > 0) isLatestStopped = sort === 'stopped';
    if (sort === 'stopped') continue;
    const [time, day] = [reading.time / MS_PER_DAY, dayOf(reading.time)];
    collector.add({ reading, shown, time, day, isOpen: sort === 'used' });
    if (sort === 'used' && days.at(-1)?.day !== day) days.push({ day, time });
  }
  const sorted = collector.gauges().map((one) => withoutSlips(loop, one));
  return {
    gauges: sorted.map(({ gauge, kept }) => ({ gauge, values: kept })),
    setAside: sorted.flatMap(({ setAside }) => setAside),
    ...{ days, counts, isStopped: isLatestStopped },
  };
}

/** What is shown at the settings read most often, as many as are solved in time. */
function settingsSolved(
  { settings, settingsMost, shownAt }: MeteredLoop,
  readings: readonly Reading[],
): ReadonlyMap<number, Shown | null> {
  const counts = new Map<number, number>();
  for (const { setting } of readings) {
    const isOffered = setting >= settings.min && setting <= settings.max;
    if (isOffered) counts.set(setting, (counts.get(setting) ?? 0) + 1);
  }
  const often = [...counts].toSorted(([, a], [, b]) => b - a).slice(0, settingsMost);
  return new Map(often.map(([setting]) => [setting, shownAt(setting)]));
}

/** A pump that should not move water counts as stopped too. */
function sortOf(
  loop: MeteredLoop,
  reading: Reading,
  shown: Shown | null | undefined,
): keyof UsableReadings['counts'] {
  const { setting, power, head, suctionPressure, dischargePressure, outletFlows = {} } = reading;
  if (setting === 0 || shown === null) return 'stopped';
  if (shown === undefined) return 'rareSetting';
  const rise =
    ((dischargePressure ?? 0) - (suctionPressure ?? dischargePressure ?? 0)) / loop.pressurePerHead;
  const measured = { flow: flowOf(loop, reading), power, head: head ?? rise };
  const { standbyPower } = loop;
  if (isStopped({ setting, measured, predicted: shown, standbyPower })) return 'stopped';
  const isClosed = isWithoutFlow(measured.flow, shown.flow) || Object.values(outletFlows).includes(0);
  return isClosed ? 'closedValve' : 'used';
}

/** The total, else the sum of all outlets where each was read. */
function flowOf({ outlets }: MeteredLoop, { flow, outletFlows = {} }: Reading): number | undefined {
  const all = outlets.map(({ name }) => outletFlows[name]);
  return flow ?? (all.every((one) => one !== undefined) ? all.reduce((sum, one) => sum + one, 0) : undefined);
}

interface Held extends Pick<GaugeValue, 'time' | 'day'> {
  readonly reading: Reading;
  readonly shown: Shown;
  /** Whether every valve is. */
  readonly isOpen: boolean;
}

/** What each gauge showed, beside what is predicted. */
function valueCollector({ outlets, pressurePerHead }: MeteredLoop) {
  const gauges = new Map<string, { readonly gauge: Gauge; readonly values: GaugeValue[] }>();
  const push = (key: string, make: () => Gauge, value: GaugeValue) => {
    const known = gauges.get(key) ?? { gauge: make(), values: [] };
    if (known.values.length === 0) gauges.set(key, known);
    known.values.push(value);
  };
  // What shows nothing at all has no logarithm.
  const ratio = (
    key: string,
    make: () => Gauge,
    [measured, predicted]: readonly number[],
    { time, day, shown }: Held,
  ) => {
    if (measured === undefined || predicted === undefined || measured <= 0 || predicted <= 0) return;
    const headPressure = pressurePerHead * shown.head;
    push(key, make, { time, day, predicted, headPressure, residual: Math.log(measured / predicted) });
  };
  const addOpen = (held: Held) => {
    const { reading, shown, time, day } = held;
    for (const measure of ['flow', 'power', 'head'] as const) {
      const measured = reading[measure];
      if (measured !== undefined) ratio(measure, () => gaugeOf(measure), [measured, shown[measure]], held);
    }
    for (const measure of ['suctionPressure', 'dischargePressure'] as const) {
      const [measured, predicted] = [reading[measure], shown[measure]];
      if (measured === undefined || predicted === null) continue;
      const headPressure = pressurePerHead * shown.head;
      const residual = (measured - predicted) / headPressure;
      push(measure, () => gaugeOf(measure), { time, day, predicted, headPressure, residual });
    }
    if (reading.outletFlows === undefined) return;
    for (const [place, { name }] of outlets.entries()) {
      const [measured, predicted] = [reading.outletFlows[name], shown.outletFlows[place]];
      if (measured === undefined || predicted === undefined) continue;
      ratio(`outlet ${place}`, () => gaugeOf('outletFlow', name), [measured, predicted], held);
    }
  };
  return {
    gauges: (): readonly GaugeValues[] => [...gauges.values()],
    add(held: Held) {
      const { head, flow } = held.reading;
      if (held.isOpen) addOpen(held);
      // The shutoff head, where the whole loop was closed and its head read.
      else if (flow === 0 && head !== undefined) {
        const make = () => ({ ...gaugeOf('head'), valveClosed: true });
        ratio('shutoff', make, [head, held.shown.shutoffHead], held);
      }
    },
  };
}

/** Sets aside single values that differ from their neighbours by the factor of a unit. */
function withoutSlips(loop: MeteredLoop, { gauge, values }: GaugeValues) {
  const setAside: SetAside[] = [];
  const [least, most] = values.reduce(
    ([low, high], { residual }) => [Math.min(low, residual), Math.max(high, residual)],
    [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY],
  );
  if (most - least < LEAST_SLIP) return { gauge, kept: values, setAside };
  const perHead = loop.pressurePerHead * (loop.shownAt(loop.setting)?.head ?? Number.NaN);
  const ratioOf = ({ residual, predicted }: GaugeValue, level: number): number => {
    if (!isPressure(gauge.measure)) return Math.exp(residual - level);
    const share = predicted / perHead;
    return Math.abs(share) < LARGE_PRESSURE ? 1 : 1 + (residual - level) / share;
  };
  const kept = values.filter((value, i) => {
    const from = Math.max(0, Math.min(i - (NEAREST - 1) / 2, values.length - NEAREST));
    const level = median(values.slice(from, from + NEAREST).map(({ residual }) => residual));
    const found = slipOf(gauge.measure, ratioOf(value, level));
    if (found !== null) setAside.push({ ...found, gauge, time: value.time });
    return found === null;
  });
  return { gauge, kept, setAside };
}
