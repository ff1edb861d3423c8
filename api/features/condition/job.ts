/** The job of a condition judges a loop by its readings. */
import type { Result } from '../../../curves/result.ts';
import { dayAt, MS_PER_DAY, type ZoneOffsets } from '../../../models/calendar/zone-offsets.ts';
import { type ConditionReport, conditionReport } from '../../../models/condition/condition-report.ts';
import { type ConditionQuestion, judgeCondition } from '../../../models/condition/judge-condition.ts';
import { stationOnMeters } from '../../../models/condition/station-on-meters.ts';
import type { CompiledLoop } from '../../../models/network/compiled-loop.ts';
import { solving, type Unsolved } from '../../../models/network/solve-failure.ts';
import type { PumpModel } from '../../../models/pump/pump-model.ts';
import { lacksGauges } from '../../../models/readings/gauges.ts';
import { isPressure } from '../../../models/readings/measure.ts';
import { loopJob } from '../../records/loop/loop-job.ts';

export interface ConditionWork extends Omit<ConditionQuestion, 'loop' | 'dayOf'> {
  readonly pump: PumpModel;
  readonly count: number;
  /** Installed [%]. */
  readonly setting: number;
  /** The clocks of the site. */
  readonly zone: ZoneOffsets;
}

export const conditionJob = loopJob<ConditionWork, Result<ConditionReport, Unsolved>>({
  name: 'condition',
  isLong: isLongCondition,
  compute: (loop, work) => solving(() => judged(loop, work)),
});

function judged(
  compiled: CompiledLoop,
  { pump, count, setting, zone, ...question }: ConditionWork,
): ConditionReport {
  const loop = stationOnMeters({ loop: compiled, pump, count }, setting);
  const condition = judgeCondition({ ...question, loop, dayOf: (time) => dayAt(zone, time) });
  const shown = loop.shownAt(setting);
  const hasPressures = condition.gauges.some(({ gauge }) => isPressure(gauge.measure));
  return conditionReport(condition, {
    setting,
    lacksGauges: shown !== null && hasPressures && lacksGauges(compiled, shown),
  });
}

/** Days of all gauges together, and network solves in branches solved, that are judged in about 50 ms. */
const LONG = { days: 500, branches: 30_000 } as const;
/** Network solves of a setting, and of one fault at all its magnitudes. */
const SOLVES = { setting: 28, fault: 16 * 28 } as const;
/** Faults that every loop can have. */
const FAULTS = 6;
const READINGS_LONG = 5_000;

function isLongCondition({ network, system }: CompiledLoop, { readings }: ConditionWork): boolean {
  const settings = new Set(readings.map(({ setting }) => setting)).size;
  const days = new Set(readings.map(({ time }) => Math.floor(time / MS_PER_DAY))).size;
  const outlets = readings.some(({ outletFlows }) => outletFlows !== undefined) ? system.outlets.length : 0;
  const branches = network?.branches.length ?? 1;
  const solves = SOLVES.setting * settings + SOLVES.fault * (FAULTS + branches);
  const isMuch = readings.length > READINGS_LONG || branches * solves > LONG.branches;
  return isMuch || days * (GAUGES + outlets) > LONG.days;
}

/** Those of a loop that are commonly read, outlets aside. */
const GAUGES = 3;
