/** Calibrates a loop: what readings say about its friction, and about the head and power of its pump. */

import type { Result } from '../../curves/result.ts';
import type { Meter } from '../loop/meter.ts';
import type { CompiledLoop } from '../network/compiled-loop.ts';
import { hasStaticHead } from '../network/has-static-head.ts';
import { solving, type Unsolved } from '../network/solve-failure.ts';
import { AS_ENTERED, type Factors } from '../pump/factors.ts';
import type { PumpModel } from '../pump/pump-model.ts';
import { lacksGauges } from '../readings/gauges.ts';
import { accuracyOf, scatterAssumed } from '../readings/measure.ts';
import { chosenRows } from './chosen-rows.ts';
import { type Accuracies, weighedRows } from './covariance.ts';
import { attemptsFor, determined, type NotIdentifiable } from './determined.ts';
import { type Drift, driftOf } from './drift.ts';
import {
  type HelpfulReading,
  helpfulReadings,
  type SettledParameter,
  settledParameters,
} from './helpful-readings.ts';
import { type MeasuredSpeeds, measuredSpeeds } from './measured-speeds.ts';
import { type Misfit, misfitsOf, type Refusal, refusalOf } from './misfits.ts';
import { type Installation, type Prediction, prediction } from './prediction.ts';
import { scaleOf } from './robust-fit.ts';
import type { Gauge, Row, Station } from './row-collector.ts';
import {
  type SmallestMargin,
  smallestMargin,
  type Uncertainty,
  uncertaintyOf,
  worstCaseOf,
} from './smallest-margin.ts';

export interface CalibrationQuestion {
  readonly installation: Installation;
  readonly rows: readonly Row[];
  readonly meters: readonly Meter[];
  /** At which the smallest margin is stated [%]. */
  readonly setting: number;
}

export interface LoopCalibration {
  /** Empty where the readings determine nothing. */
  readonly parameters: readonly SettledParameter[];
  readonly factors: Factors;
  /** Their covariance, in the order of the parameters. */
  readonly covariance: readonly (readonly number[])[];
  /** Where the smallest margin is at the low end of its interval. */
  readonly worstCase: Pick<Factors, 'friction' | 'head'>;
  readonly notIdentifiable: readonly NotIdentifiable[];
  readonly misfits: readonly Misfit[];
  /** Why the factors may not be applied; null where they may. */
  readonly refusal: Refusal | null;
  /** Null where no water passes. */
  readonly smallestMargin: (SmallestMargin & { readonly uncertainty: Uncertainty | null }) | null;
  readonly nextReadings: readonly HelpfulReading[];
  /** Null where the readings do not change in their course. */
  readonly drift: Drift | null;
  /** Of the pump, as its gauge shows them; null where gauge readings do not say. */
  readonly speeds: MeasuredSpeeds | null;
  readonly distinct: number;
  /** Whether heads came of pressures at gauges whose bores would matter and are not stated. */
  readonly lacksGauges: boolean;
  /** Whether rows were left out for their number. */
  readonly isThinned: boolean;
}

/** What rows are collected by for an installation. */
export const stationFor = ({ loop, pump }: Installation): Station => ({
  density: loop.water.density,
  outlets: loop.system.outlets.map(({ name }) => name),
  knowsPipework: loop.network !== null,
  settings: pump.entered.settings,
  gauges: loop.entered.gauges,
});

const accuraciesOf = (meters: readonly Meter[]): Accuracies => ({
  flow: accuracyOf(meters, 'flow'),
  outletFlow: accuracyOf(meters, 'outletFlow'),
  head: accuracyOf(meters, 'head'),
  power: accuracyOf(meters, 'power'),
  pressures: Math.hypot(accuracyOf(meters, 'suctionPressure'), accuracyOf(meters, 'dischargePressure')),
});

export const calibrateLoop = (question: CalibrationQuestion): Result<LoopCalibration, Unsolved> =>
  solving(() => calibrated(question));

function calibrated({ installation, rows: all, meters, setting }: CalibrationQuestion): LoopCalibration {
  const { loop, pump } = installation;
  const rows = chosenRows(all, loop.network?.branches.length ?? 1);
  const predict = prediction(installation);
  const accuracies = accuraciesOf(meters);
  const withStaticHead = hasStaticHead(loop);
  const attempts = attemptsFor(rows, withStaticHead);
  const found = determined(rows, attempts, { predict, accuracies });
  const fit = found.ok ? found.value.fit : null;
  const factors = fit?.factors ?? AS_ENTERED;
  const margin = loop.system.passesWater ? smallestMargin(installation, { setting, factors, predict }) : null;
  const weighed = fit === null ? [] : weighedRows(fit);
  const known = { rows: weighed, factors, predict, accuracies, withStaticHead };
  const predictedWith = (other: PumpModel) => {
    if (other === pump) return (gauge: Gauge) => predict(gauge, factors);
    // Other speeds are other factors.
    const predictOther = prediction({ ...installation, pump: other });
    const refitted = determined(rows, attempts, { predict: predictOther, accuracies });
    const at = refitted.ok ? refitted.value.fit.factors : factors;
    return (gauge: Gauge) => predictOther(gauge, at);
  };
  const scale = fit === null ? scatterAssumed('head') : scaleOf(fit.scales, { measure: 'head' });
  return {
    ...resultOf(found, margin),
    notIdentifiable: [...(found.ok ? found.value.doubts : found.failure), ...attempts.outOfReach],
    nextReadings: margin === null ? [] : helpfulReadings(installation, { ...known, margin }),
    speeds: measuredSpeeds(rows, { pump, withStaticHead, scale, predictedWith }),
    distinct: rows.length,
    drift: driftOf(rows),
    lacksGauges:
      rows.some(({ meter }) => meter === 'pressures') && lacksGaugesNow(loop, { setting, factors, predict }),
    isThinned: rows.length < all.length,
  };
}

function lacksGaugesNow(
  loop: CompiledLoop,
  {
    setting,
    factors,
    predict,
  }: { readonly setting: number; readonly factors: Factors; readonly predict: Prediction },
): boolean {
  const now = (measure: 'flow' | 'head') =>
    predict({ measure, setting, outlet: null, shut: [], zeroFlow: false }, factors);
  return lacksGauges(loop, { flow: now('flow'), head: now('head') });
}

/** What follows from the factors, where some were determined. */
function resultOf(found: ReturnType<typeof determined>, margin: SmallestMargin | null) {
  if (!found.ok) {
    return {
      ...{ parameters: [], factors: AS_ENTERED, covariance: [], worstCase: AS_ENTERED, misfits: [] },
      refusal: { code: 'nothing-determined' } as const,
      smallestMargin: margin === null ? null : { ...margin, uncertainty: null },
    };
  }
  const { fit, covariance } = found.value;
  const { factors } = fit;
  return {
    ...{ factors, covariance: covariance.matrix, parameters: settledParameters(factors, covariance) },
    worstCase: margin === null ? factors : worstCaseOf(factors, covariance, margin),
    ...{ misfits: misfitsOf(found.value), refusal: refusalOf(found.value) },
    smallestMargin: margin === null ? null : { ...margin, uncertainty: uncertaintyOf(margin, covariance) },
  };
}
