/** Rates of reports on loops that have not changed. */

import { atMost, type RateRow, type Size, seeds, stated } from './row.ts';
import type { Actual } from './stations.ts';
import { BANK, FLUME, LIFTED, PAIR } from './stations.ts';
import { type Case, firstReport, type Noise } from './year.ts';

/** Shares of loops a year that may be reported: with independent errors, with lasting ones, with entries that are wrong. */
const LIMITS = { white: 0.05, lasting: 0.09, entries: 0.07 } as const;

const noise = (flow: number): Noise => ({ flow, power: 0.01 });
const flume = (facts: Partial<Case>): Case => ({ site: FLUME, noise: noise(0.03), ...facts });
const withPressures: Noise = { ...noise(0.03), pressures: 0.03 };

const WHITE: readonly (readonly [string, Case])[] = [
  ['healthy, flow 1 %, power', flume({ noise: noise(0.01) })],
  ['healthy, flow 3 %, power', flume({})],
  ['healthy, flow 5 %, power', flume({ noise: noise(0.05) })],
  ['healthy, flow 5 % weekly, power', flume({ noise: noise(0.05), everyDays: 7 })],
  ['healthy, flow 3 %, outliers 4 %', flume({ outliers: 0.04 })],
  ['healthy, flow 3 %, 40 % of days missing', flume({ missing: 0.4 })],
  ['healthy, power alone', flume({ noise: { power: 0.01 } })],
  ['healthy, flow 3 %, pressures', flume({ noise: withPressures })],
  ['healthy, static head, flow 3 %, pressures', { site: LIFTED, noise: withPressures }],
  ['healthy, four outlets, their flows 3 %', { site: BANK, noise: { power: 0.01, outlets: 0.03 } }],
  ['healthy, two pumps, flow 3 %', { site: PAIR, noise: noise(0.03) }],
];

const LASTING: readonly (readonly [string, Case])[] = [
  ['healthy, AR 0.8, flow 1 %', flume({ noise: noise(0.01), phi: 0.8 })],
  ['healthy, AR 0.8, flow 3 %', flume({ phi: 0.8 })],
  ['healthy, AR 0.8, flow 5 %', flume({ noise: noise(0.05), phi: 0.8 })],
  ['healthy, AR 0.9, flow 3 %', flume({ phi: 0.9 })],
  ['healthy, AR 0.95, flow 3 %', flume({ phi: 0.95 })],
];

/** Friction 20 %, head 4 % and power 5 % to either side. */
const wrong = (normal: () => number): Actual => {
  const off = (share: number) => 1 + (normal() > 0 ? share : -share);
  return { friction: off(0.2), head: off(0.04), power: off(0.05) };
};

const ENTRIES: readonly (readonly [string, Case])[] = [
  ['entries wrong, flow 3 %, power', flume({ actual: wrong })],
  ['entries wrong, flow 3 %, pressures', flume({ noise: withPressures, actual: wrong })],
];

/** A wave of the flow between 0 and so much less, in 60 days. */
const wave = (most: number): Partial<Case> => ({
  fault: { cause: 'clogged-discharge' },
  magnitude: (day) => (most * (1 - Math.cos((2 * Math.PI * day) / 60))) / 2,
});

/** In steps of a degree. */
const season = (day: number): Actual => ({
  temperature: 25 + Math.round(8 * Math.sin((2 * Math.PI * day) / 365)),
});

export function healthyRows(size: Size): readonly RateRow[] {
  const reported = (one: Case) => seeds(size).map((seed) => firstReport(one, seed) !== null);
  const limited = (rows: typeof WHITE, limit: number) =>
    rows.map(([name, one]) => atMost(name, reported(one), limit));
  const counted = ([name, one]: (typeof WHITE)[number]) => {
    const found = reported(one);
    return stated(name, `${found.filter(Boolean).length} of ${found.length}`);
  };
  return [
    ...limited(WHITE, LIMITS.white),
    ...limited(LASTING, LIMITS.lasting),
    ...limited(ENTRIES, LIMITS.entries),
    ...(
      [
        ['season of 8 K either way', flume({ season })],
        ['real waves of 3 % in 60 days', flume(wave(0.03))],
        ['real waves of 5 % in 60 days', flume(wave(0.05))],
      ] as const
    ).map(counted),
  ];
}
