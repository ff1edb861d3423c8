/** Finds what is wrong with readings of a loop beyond their schema: their times, their outlets, their settings. */

import type { Reading } from '../../../models/readings/reading.ts';
import { FAULTS_MAX } from '../../fields/limits.ts';
import type { PathPart } from '../../http/json-pointer.ts';

export interface ReadingRules {
  /** Names of the outlets of the loop. */
  readonly outlets: readonly string[];
  /** Settings of the installed pump [%]; null without one. */
  readonly settings: { readonly min: number; readonly max: number } | null;
  /** [ms] */
  readonly now: number;
  /** Whether outlets may be named that the loop had once. */
  readonly mayBeFormer?: boolean;
}

interface ReadingFault {
  readonly path: readonly PathPart[];
  readonly detail: string;
}

/** What clocks of controllers may be ahead [ms]. */
const AHEAD_MOST = 60_000;

const utc = (time: number): string => new Date(time).toISOString();

function faultsOf(one: Reading, rules: ReadingRules, outlets: ReadonlySet<string>): readonly ReadingFault[] {
  const { time, setting, flow, head, suctionPressure, dischargePressure, outletFlows = {} } = one;
  const { settings, now } = rules;
  const faults: ReadingFault[] = [];
  if (time > now + AHEAD_MOST) {
    faults.push({ path: ['time'], detail: `must not be in the future: it is ${utc(now)} here` });
  }
  if (settings !== null && setting !== 0 && (setting < settings.min || setting > settings.max)) {
    const range = `${settings.min}..${settings.max} %, the settings of the installed pump`;
    faults.push({ path: ['setting'], detail: `must be 0 (stopped) or within ${range}, not ${setting}` });
  }
  const allShut = outlets.size > 0 && [...outlets].every((name) => outletFlows[name] === 0);
  const isStill = flow === 0 || allShut;
  if (allShut && flow !== undefined && flow > 0) {
    faults.push({ path: ['flow'], detail: 'must be 0 where every outlet is' });
  }
  const tellsHead = head !== undefined || (suctionPressure !== undefined && dischargePressure !== undefined);
  if (isStill && setting > 0 && !tellsHead) {
    const detail =
      'must not be 0 while the pump runs; against a closed valve state the head too, or both pressures';
    faults.push({ path: [flow === 0 ? 'flow' : 'outletFlows'], detail });
  }
  for (const name of rules.mayBeFormer === true ? [] : Object.keys(outletFlows)) {
    if (!outlets.has(name)) {
      faults.push({ path: ['outletFlows', name], detail: 'is no outlet of this loop' });
    }
  }
  return faults;
}

/** Paths begin with the place of the reading. At most ten faults, whatever the readings. */
export function readingFaults(readings: readonly Reading[], rules: ReadingRules): readonly ReadingFault[] {
  const outlets = new Set(rules.outlets);
  const faults: ReadingFault[] = [];
  let before = Number.NEGATIVE_INFINITY;
  for (const [place, one] of readings.entries()) {
    const own = [...faultsOf(one, rules, outlets)];
    if (one.time < before) {
      own.push({
        path: ['time'],
        detail: `must not be before the time of the reading before, ${utc(before)}`,
      });
    }
    before = one.time;
    faults.push(...own.map(({ path, detail }) => ({ path: [place, ...path], detail })));
    if (faults.length >= FAULTS_MAX) break;
  }
  return faults.slice(0, FAULTS_MAX);
}
