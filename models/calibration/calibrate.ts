/** What readings say about the friction of a loop and the head and power of its pump. */
import { type Result, success } from '../../curves/result.ts';
import { hasStaticHead } from '../network/has-static-head.ts';
import { solving, type Unsolved } from '../network/solve-failure.ts';
import { AS_ENTERED, type Factors, factorOf, type ParameterName } from '../pump/factors.ts';
import { lacksGauges } from '../readings/gauges.ts';
import { type Drift, driftOf } from './drift.ts';
import { type FittedFactors, fitFactors } from './fit-factors.ts';
import { type GaugeSpeeds, gaugeSpeeds } from './gauge-speeds.ts';
import { tellsRatio } from './identifiability.ts';
import {
  type Attempts,
  attemptsFor,
  bothOf,
  doubtsAbout,
  type NotIdentifiable,
  rowsBehind,
} from './identify.ts';
import { tellingRows } from './informative-rows.ts';
import { type Doubt, doubtOf, type LimitingMargin, limitingMargin } from './limiting-margin.ts';
import { linearRow } from './linear-rows.ts';
import type { Measured, MeasuredRows, Station } from './measured-rows.ts';
import { type Misfit, misfitsOf } from './misfit.ts';
import { type NextReading, nextReadings, type SettledParameter, settledParameters } from './next-readings.ts';
import { isScattered, repeatVariance } from './noise.ts';
import { type Installation, type Prediction, prediction } from './prediction.ts';
import { badEndOf } from './worst-case.ts';

export interface Calibration {
  /** Empty where the readings settle nothing. */
  readonly parameters: readonly SettledParameter[];
  readonly factors: Factors;
  /** Where the limiting margin is at the low end of its interval. */
  readonly badEnd: Pick<Factors, 'friction' | 'head'>;
  readonly notIdentifiable: readonly NotIdentifiable[];
  /** Rows that do not fit the factors, the farthest first. */
  readonly misfits: readonly Misfit[];
  /** At the setting asked about; null where no water passes. */
  readonly limiting: (LimitingMargin & { readonly doubt: Doubt | null }) | null;
  readonly nextReadings: readonly NextReading[];
  /** Of the pump, as its gauge shows them; null where gauge readings do not determine them. */
  readonly speeds: GaugeSpeeds | null;
  /** Readings that said something, and the rows they make. */
  readonly used: number;
  readonly rows: number;
  /** Whether heads came of pressures at gauges whose bores would matter and are not stated. */
  readonly lacksGauges: boolean;
  /** Whether rows were left out for their number. */
  readonly isThinned: boolean;
  /** Whether repeats of some row scatter beyond what meters do, as with a wild reading or one in another unit. */
  readonly isScattered: boolean;
  /** Null where the readings stay as they are in the course of time. */
  readonly drift: Drift | null;
}

/** What rows are collected by for an installation. */
export const stationFor = ({ loop, pump }: Installation): Station => ({
  density: loop.water.density,
  outlets: loop.system.outlets.map(({ name }) => name),
  knowsPipework: loop.network !== null,
  settings: pump.entered.settings,
  gauges: loop.entered.gauges,
});

/**
 * The factors by `fitFactors` under the rule of identifiability: friction and head apart only where `maySeparate`, the
 * condition number of the scaled Jacobian is under 1e3 and each standard error under 0.25; else their ratio. `setting` [%]
 * is where the limiting margin is told.
 */
export function calibrate(
  installation: Installation,
  { rows: all, used, usesGauges }: MeasuredRows,
  setting: number,
): Result<Calibration, Unsolved> {
  const rows = tellingRows(all, installation.loop.network?.branches.length ?? 1);
  const solved = solving(() => calibrated(installation, { rows, usesGauges }, setting));
  const isThinned = rows.length < all.length;
  const facts = { used, rows: rows.length, isThinned, drift: driftOf(rows), isScattered: isScattered(rows) };
  return solved.ok ? success({ ...solved.value, ...facts }) : solved;
}

function calibrated(
  installation: Installation,
  { rows: measured, usesGauges }: Pick<MeasuredRows, 'rows' | 'usesGauges'>,
  setting: number,
): Omit<Calibration, 'used' | 'rows' | 'isThinned' | 'drift' | 'isScattered'> {
  const { loop, pump } = installation;
  const predict = prediction(installation);
  const withStaticHead = hasStaticHead(loop);
  const attempts = attemptsFor(measured, withStaticHead);
  const told = tell(measured, attempts, predict);
  const { fitted, notIdentifiable } = told;
  const factors = fitted?.factors ?? AS_ENTERED;
  const rows = measured.map((row) => linearRow(row, factors, predict));
  const open = { setting, outlet: null, shut: [], zeroFlow: false };
  const now = (measure: 'flow' | 'head') => predict({ ...open, measure }, factors);
  const limiting = loop.system.passesWater
    ? limitingMargin(installation, { setting, factors, predict })
    : null;
  return {
    parameters: fitted === null ? [] : settledParameters(factors, fitted.assessment),
    factors,
    badEnd:
      fitted === null || limiting === null
        ? factors
        : badEndOf(factors, fitted.assessment, { rows: fitted.rows, slopes: limiting.slopes }),
    notIdentifiable,
    lacksGauges: usesGauges && lacksGauges(loop, { flow: now('flow'), head: now('head') }),
    misfits: fitted === null ? [] : misfitsOf(fitted.measured, factors, predict),
    limiting:
      limiting === null
        ? null
        : { ...limiting, doubt: fitted === null ? null : doubtOf(limiting, fitted.assessment, fitted.rows) },
    // Where readings were fitted and nothing fits, what more of them would leave is not known.
    nextReadings:
      limiting === null || (fitted === null && tellsRatio(measured))
        ? []
        : nextReadings(installation, { measured, rows, factors, predict, limiting, withStaticHead }),
    speeds: gaugeSpeeds(measured, {
      ...{ pump, withStaticHead, variance: repeatVariance(measured, 'head') },
      predictedWith: (other) => {
        if (other === pump) return (gauge) => predict(gauge, factors);
        // Other speeds are other factors.
        const predictOther = prediction({ ...installation, pump: other });
        const refitted = tell(measured, attempts, predictOther).fitted?.factors ?? factors;
        return (gauge) => predictOther(gauge, refitted);
      },
    }),
  };
}

interface Told {
  /** Null where nothing is settled. */
  readonly fitted: FittedFactors | null;
  readonly notIdentifiable: readonly NotIdentifiable[];
}

/** Friction and head apart where they stand apart, else what can be told without. */
function tell(measured: readonly Measured[], attempts: Attempts, predict: Prediction): Told {
  const { separate, plain, outOfReach } = attempts;
  const doubts: NotIdentifiable[] = [];
  if (separate !== null) {
    const apart = fitFactors(measured, separate, predict);
    if (apart.ok) doubts.push(...doubtsAbout(apart.value.assessment, apart.value.factors));
    else
      doubts.push(
        ...bothOf({ reason: apart.failure.code === 'implausible' ? 'implausible' : 'not-distinct' }),
      );
    if (apart.ok && doubts.length === 0) return { fitted: apart.value, notIdentifiable: outOfReach };
  }
  const notIdentifiable = [...doubts, ...outOfReach];
  if (plain.length === 0) return { fitted: null, notIdentifiable };
  const together = fitFactors(rowsBehind(measured, plain), plain, predict);
  if (together.ok) return { fitted: together.value, notIdentifiable };
  return { fitted: null, notIdentifiable: plain.map(implausible) };
}

const implausible = (name: ParameterName): NotIdentifiable => ({
  name: factorOf(name),
  reason: 'implausible',
});
