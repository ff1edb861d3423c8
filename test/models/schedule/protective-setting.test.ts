/** The setpoint where no setting is feasible, and the fallback, against tables of every setting. */
import { describe, expect, it } from 'vitest';
import { DEFAULT_LIMITS } from '../../../models/loop/limits.ts';
import { fallbackOf } from '../../../models/schedule/fallback.ts';
import type { PhaseDuty, Station } from '../../../models/schedule/phase-duty.ts';
import { type PhasePlan, planSchedule } from '../../../models/schedule/phase-plan.ts';
import type { Phase } from '../../../models/schedule/schedule.ts';
import type { Draw } from '../../random/draw.ts';
import { type InfeasibleCase, tightCase } from '../../random-infeasible.ts';
import { rowsOf } from '../../reference/setpoint-duties.ts';
import {
  type Row,
  type Scanned,
  type ScannedPhase,
  scanned,
  scannedFallback,
} from '../../reference/setpoint-scan.ts';
import { modelOf, pumpModelOf } from '../example-loops.ts';

const ELEVATION = 200;

const stationOf = ({ pump, count }: InfeasibleCase): Station => ({
  ...{ pump: pumpModelOf(pump), count, limits: DEFAULT_LIMITS, elevation: ELEVATION },
});

const scannedRows = (station: Station, loop: PhasePlan['loop']): readonly Row[] =>
  rowsOf({ loop, pump: station.pump, count: station.count, elevation: station.elevation });

/** Rules for water that runs backwards are tested by themselves. */
const runsBackwards = (rows: readonly Row[]): boolean =>
  rows.some(({ outletFlows }) => outletFlows.some((flow) => flow < 0));

function shown(duty: PhaseDuty): Scanned {
  const { setting } = duty;
  if (duty.feasible) return { feasible: true, setting };
  const { reason, step, limitedBy } = duty;
  return { feasible: false, setting, reason, step, limitedBy };
}

function planOf(found: InfeasibleCase, phases: readonly Phase[]) {
  const station = stationOf(found);
  return { station, plan: planSchedule({ phases }, modelOf(found.loop), station) };
}

describe('the setpoint of 200 invented loops without a feasible setting', () => {
  const LOOPS = 200;
  const compared: { seed: number; actual: Scanned; expected: Scanned }[] = [];
  for (let seed = 1; compared.length < LOOPS; seed++) {
    const found = tightCase(seed);
    const { station, plan } = planOf(found, [{ name: 'all', from: '00:00', factor: found.factor }]);
    const [one] = plan.phases;
    if (one === undefined) throw new Error('no phase');
    const rows = scannedRows(station, one.loop);
    const expected = scanned(rows);
    if (runsBackwards(rows) || expected.feasible) continue;
    compared.push({ seed, actual: shown(one.own), expected });
  }

  it('is that of a scan of the grid, with its reason, its step and its limits', () => {
    const unlike = compared.filter(
      ({ actual, expected }) => JSON.stringify(actual) !== JSON.stringify({ ...expected }),
    );
    expect(unlike).toEqual([]);
  });

  it('takes every step of the rule', () => {
    const steps = compared.map(({ expected }) => (expected.feasible ? 0 : expected.step));
    for (const step of [1, 2, 3, 4]) expect(steps.filter((one) => one === step).length).toBeGreaterThan(2);
  });
});

/** Three phases, of which one may pulse and one may close an outlet. */
function phasesOf({ loop, factor }: InfeasibleCase, draw: Draw): readonly Phase[] {
  const { outlets } = modelOf(loop).system;
  const requires = (name: string) => outlets.some((one) => one.name !== name && (one.requiredFlow ?? 0) > 0);
  // A schedule in which nothing is required is refused.
  const names = outlets.flatMap(({ name }) => (requires(name) ? [name] : []));
  const closes = names.length > 0 && draw.chance(0.5);
  return [
    { name: 'day', from: '07:00', factor },
    {
      ...{ name: 'noon', from: '12:00', factor: factor * draw.between(0.3, 1) },
      ...(draw.chance(0.5)
        ? { pulse: { otherFactor: draw.between(0.2, 1.5), periodMinutes: 15, share: 0.5 } }
        : {}),
    },
    {
      ...{ name: 'night', from: '22:00', factor: factor * draw.between(0.2, 0.8) },
      ...(closes ? { openings: { [draw.pick(names)]: 0 } } : {}),
    },
  ];
}

const metBy =
  (tables: readonly (readonly Row[])[]): ScannedPhase['isMet'] =>
  (setting) =>
    tables.every((rows) => rows.some((row) => row.setting === setting && !row.broken.has('not-enough-head')));

function scannedPhase(station: Station, { phase, loop, otherLoop }: PhasePlan): ScannedPhase {
  const rows = scannedRows(station, loop);
  const tables = [rows, ...(otherLoop === null ? [] : [scannedRows(station, otherLoop)])];
  const own = tables.map((table) => scanned(table).setting);
  return { name: phase.name, rows, own, isMet: metBy(tables) };
}

describe('the fallback of 60 invented schedules', () => {
  const SCHEDULES = 60;
  const compared: {
    seed: number;
    actual: unknown;
    expected: ReturnType<typeof scannedFallback>;
    highest: number;
  }[] = [];
  for (let seed = 5001; compared.length < SCHEDULES; seed++) {
    const found = tightCase(seed);
    const { station, plan } = planOf(found, phasesOf(found, found.draw));
    const phases = plan.phases.map((one) => scannedPhase(station, one));
    if (phases.some(({ rows }) => runsBackwards(rows))) continue;
    const highest = Math.max(...phases.flatMap(({ own }) => own));
    compared.push({ seed, actual: fallbackOf(plan), expected: scannedFallback(phases), highest });
  }

  it('is that of a scan over all phases', () => {
    const unlike = compared.filter(
      ({ actual, expected }) => JSON.stringify(actual) !== JSON.stringify(expected),
    );
    expect(unlike).toEqual([]);
  });

  it('is at times the highest of the phases, at times a lower one, and at times not enough', () => {
    expect(compared.filter(({ expected, highest }) => expected.setting === highest).length).toBeGreaterThan(
      9,
    );
    expect(compared.filter(({ expected, highest }) => expected.setting < highest).length).toBeGreaterThan(9);
    expect(compared.filter(({ expected }) => expected.requiredFlowsMet).length).toBeGreaterThan(9);
  });
});
