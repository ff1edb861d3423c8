/** The readings that would shrink the doubt of the limiting margin most. */

import { type Factors, factorOf, type ParameterName } from '../pump/factors.ts';
import { gridSize, settingAt } from '../pump/settings-grid.ts';
import type { Assessment, LinearRow } from './assess.ts';
import { attemptsFor, settledBy } from './identify.ts';
import { type Doubt, doubtOf, type LimitingMargin } from './limiting-margin.ts';
import { slopesAt } from './linear-rows.ts';
import type { Gauge, Measured } from './measured-rows.ts';
import type { Installation, Prediction } from './prediction.ts';

export interface SettledParameter {
  readonly name: ParameterName;
  readonly value: number;
  readonly standardError: number;
  readonly interval: { readonly low: number; readonly high: number };
}

export interface NextReading extends Gauge {
  /** What it would show, as far as is known [m3/s, m or W]. */
  readonly predicted: number;
  /** The doubt that it would leave in the limiting margin; null where it says nothing about flows. */
  readonly margin: Doubt | null;
  /** What would be known with it, were it to show what is predicted. */
  readonly parameters: readonly SettledParameter[];
}

const NEXT_MOST = 8;
/** Other settings that are looked at, as shares of the grid. */
const SETTINGS = [0.4, 0.7, 1] as const;

/** Each parameter with its error and interval, at the values that `factors` gives them. */
export const settledParameters = (
  factors: Factors,
  { names, standardErrors, quantiles }: Assessment,
): readonly SettledParameter[] =>
  names.map((name, index) => {
    const value = factors[factorOf(name)];
    const standardError = standardErrors[index] ?? Number.NaN;
    const half = (quantiles[index] ?? Number.NaN) * standardError;
    return { name, value, standardError, interval: { low: value - half, high: value + half } };
  });

/**
 * Readings that could be taken next, the one that leaves the least standard error of the limiting margin first. Each is
 * judged as if it showed what is predicted, with the noise of its measure: as one more row at the same factors.
 */
export function nextReadings(
  installation: Installation,
  {
    measured,
    rows,
    factors,
    predict,
    limiting,
    withStaticHead,
  }: {
    readonly measured: readonly Measured[];
    /** The same rows at `factors`. */
    readonly rows: readonly LinearRow[];
    readonly factors: Factors;
    readonly predict: Prediction;
    readonly limiting: LimitingMargin;
    readonly withStaticHead: boolean;
  },
): readonly NextReading[] {
  const judged = gaugesFor(installation, limiting).flatMap((gauge): readonly NextReading[] => {
    const predicted = predict(gauge, factors);
    if (!(predicted > 0)) return [];
    const row = { measure: gauge.measure, count: 1, spread: 0, residual: 0 };
    const slopes = slopesAt(gauge, factors, predict);
    const withIt = [...rows, { ...row, slopes }];
    const settled = settledBy(withIt, attemptsFor([...measured, gauge], withStaticHead), factors);
    if (settled === null) return [];
    const margin = doubtOf(limiting, settled.assessment, settled.rows);
    return [{ ...gauge, predicted, margin, parameters: settledParameters(factors, settled.assessment) }];
  });
  const errorOf = ({ margin }: NextReading) => margin?.standardError ?? Number.POSITIVE_INFINITY;
  const ranked = judged.toSorted((a, b) => compare(errorOf(a), errorOf(b)));
  return ranked
    .filter((one, place) => ranked.findIndex((other) => isAlike(one, other)) === place)
    .slice(0, NEXT_MOST);
}

/** The same gauge at another setting: the better setting is enough. */
const isAlike = (a: Gauge, b: Gauge): boolean =>
  JSON.stringify([a.measure, a.outlet, a.shut, a.zeroFlow]) ===
  JSON.stringify([b.measure, b.outlet, b.shut, b.zeroFlow]);

const compare = (a: number, b: number): number => (a === b ? 0 : a - b);

/** A flow and a head at several settings, the power, the head at a shut valve, and each outlet shut in turn. */
function gaugesFor({ loop, pump }: Installation, { setting, outlet }: LimitingMargin): readonly Gauge[] {
  const { settings } = pump.entered;
  const last = gridSize(settings) - 1;
  const others = SETTINGS.map((share) => settingAt(settings, Math.round(share * last)));
  const open = { outlet: null, shut: [], zeroFlow: false };
  const overall = [...new Set([setting, ...others])].flatMap((at): readonly Gauge[] => [
    { ...open, measure: 'flow', setting: at },
    { ...open, measure: 'head', setting: at },
  ]);
  const names = loop.system.outlets.map(({ name }) => name);
  const isKnown = loop.network !== null && names.length > 1;
  const shut: readonly Gauge[] = isKnown
    ? names
        .filter((name) => name !== outlet)
        .slice(0, SHUT_MOST)
        .map((name) => ({ ...open, measure: 'flow', setting, shut: [name] }))
    : [];
  return [
    ...overall,
    { ...open, measure: 'power', setting },
    ...(outlet === null ? [] : [{ ...open, measure: 'outletFlow' as const, setting, outlet }]),
    { ...open, measure: 'head', setting, zeroFlow: true },
    ...shut,
  ];
}

/** Outlets tried shut: of many, the first few say what the others would. */
const SHUT_MOST = 4;
