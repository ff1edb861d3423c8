/** Finds the readings that would make the smallest margin surest. */
import { DEVIATE_95 } from '../../curves/theil-sen.ts';
import { type Factors, factorOf, type ParameterName } from '../pump/factors.ts';
import { gridSize, settingAt } from '../pump/settings-grid.ts';
import { scatterAssumed } from '../readings/measure.ts';
import { type Accuracies, type Covariance, errorsOf, type WeighedRow } from './covariance.ts';
import { attemptsFor, determinedBy } from './determined.ts';
import type { Installation, Prediction } from './prediction.ts';
import { slopesAt } from './robust-fit.ts';
import type { Gauge } from './row-collector.ts';
import { type SmallestMargin, type Uncertainty, uncertaintyOf } from './smallest-margin.ts';

export interface SettledParameter {
  readonly name: ParameterName;
  readonly value: number;
  readonly standardError: number;
  readonly interval: { readonly low: number; readonly high: number };
}

export interface HelpfulReading extends Gauge {
  /** What it would show, as far as is known [m3/s, m or W]. */
  readonly predicted: number;
  /** What it would leave uncertain of the margin; null where it says nothing about flows. */
  readonly margin: Uncertainty | null;
  /** What would be known with it, were it to show what is predicted. */
  readonly parameters: readonly SettledParameter[];
}

const LISTED_MOST = 8;
/** Other settings that are looked at, as shares of the grid. */
const SETTINGS = [0.4, 0.7, 1] as const;
/** Outlets tried closed: of many, the first few say what the others would. */
const CLOSED_MOST = 4;

/** Each parameter with its error and interval, at the values that `factors` gives them. */
export function settledParameters(factors: Factors, covariance: Covariance): readonly SettledParameter[] {
  const errors = errorsOf(covariance);
  return covariance.names.map((name, i) => {
    const [value, standardError] = [factors[factorOf(name)], errors[i] ?? Number.NaN];
    const half = DEVIATE_95 * standardError;
    return { name, value, standardError, interval: { low: value - half, high: value + half } };
  });
}

export interface Known {
  readonly rows: readonly WeighedRow[];
  readonly factors: Factors;
  readonly predict: Prediction;
  readonly accuracies: Accuracies;
  readonly withStaticHead: boolean;
  readonly margin: SmallestMargin;
}

/** Each as one more row that shows what is predicted, with the noise of its measure: that which leaves least uncertain first. */
export function helpfulReadings(installation: Installation, known: Known): readonly HelpfulReading[] {
  const { rows, factors, predict, withStaticHead } = known;
  const judged = gaugesFor(installation, known.margin).flatMap((gauge): readonly HelpfulReading[] => {
    const predicted = predict(gauge, factors);
    if (!(predicted > 0)) return [];
    const scale =
      rows.find(({ measure }) => measure === gauge.measure)?.scale ?? scatterAssumed(gauge.measure);
    const row = {
      ...gauge,
      meter: gauge.measure,
      weight: 1,
      squares: 1,
      scale,
      slopes: slopesAt(gauge, known),
    };
    const withIt = [...rows, row];
    const covariance = determinedBy(withIt, attemptsFor(withIt, withStaticHead), known);
    if (covariance === null) return [];
    const margin = uncertaintyOf(known.margin, covariance);
    return [{ ...gauge, predicted, margin, parameters: settledParameters(factors, covariance) }];
  });
  const errorOf = ({ margin }: HelpfulReading) => margin?.standardError ?? Number.MAX_VALUE;
  const ranked = judged.toSorted((a, b) => errorOf(a) - errorOf(b));
  // The same gauge at another setting: the better setting is enough.
  const kind = ({ measure, outlet, shut, zeroFlow }: Gauge) =>
    JSON.stringify([measure, outlet, shut, zeroFlow]);
  return ranked
    .filter((one, place) => ranked.findIndex((other) => kind(other) === kind(one)) === place)
    .slice(0, LISTED_MOST);
}

/** A flow and a head at several settings, the power, the head at a closed valve, and each outlet closed in turn. */
function gaugesFor({ loop, pump }: Installation, { setting, outlet }: SmallestMargin): readonly Gauge[] {
  const { settings } = pump.entered;
  const last = gridSize(settings) - 1;
  const tried = new Set([setting, ...SETTINGS.map((share) => settingAt(settings, Math.round(share * last)))]);
  const gauge = (measure: Gauge['measure'], facts: Partial<Gauge> = {}): Gauge => ({
    ...{ measure, setting, outlet: null, shut: [], zeroFlow: false },
    ...facts,
  });
  const names = loop.system.outlets.map(({ name }) => name);
  const canClose = loop.network !== null && names.length > 1;
  const closed = canClose ? names.filter((name) => name !== outlet).slice(0, CLOSED_MOST) : [];
  return [
    ...[...tried].flatMap((at) => [gauge('flow', { setting: at }), gauge('head', { setting: at })]),
    gauge('power'),
    ...(outlet === null ? [] : [gauge('outletFlow', { outlet })]),
    gauge('head', { zeroFlow: true }),
    ...closed.map((name) => gauge('flow', { shut: [name] })),
  ];
}
