/** Decides which factors rows determine, and why not the others. */
import { failed, type Result, success } from '../../curves/result.ts';
import { DEVIATE_95 } from '../../curves/theil-sen.ts';
import { type FactorName, type Factors, factorOf, type ParameterName } from '../pump/factors.ts';
import {
  type Accuracies,
  type Covariance,
  covarianceOf,
  errorsOf,
  type WeighedRow,
  weighedRows,
} from './covariance.ts';
import type { Prediction } from './prediction.ts';
import { type RobustFit, robustFit } from './robust-fit.ts';
import type { Gauge, Row } from './row-collector.ts';

/** Largest condition number of the scaled Jacobian, largest standard error, and largest half-width over the factor, of separate factors. */
export const SEPARATE = { conditionNumber: 1e3, standardError: 0.25, halfWidth: 0.3 } as const;

export type Reason =
  | {
      readonly reason:
        | 'no-power-readings'
        | 'no-flow-readings'
        | 'ratio-alone'
        | 'not-distinct'
        | 'implausible';
    }
  | { readonly reason: 'ill-conditioned'; readonly conditionNumber: number }
  | { readonly reason: 'too-uncertain'; readonly standardError: number };

export type NotIdentifiable = Reason & { readonly name: FactorName };

/** Sets of parameters to try, those of more first, and what no reading bears on. */
export interface Attempts {
  readonly sets: readonly (readonly ParameterName[])[];
  readonly outOfReach: readonly NotIdentifiable[];
}

const isFlow = ({ measure }: Gauge): boolean => measure === 'flow' || measure === 'outletFlow';

/**
 * Without static head flows fix friction over head alone, whatever the settings: separate factors take a head across the pump, a head
 * at no flow, or outlets shut at some readings and not at others; with static head flows at two settings.
 */
export function attemptsFor(gauges: readonly Gauge[], withStaticHead: boolean): Attempts {
  const power: readonly FactorName[] = gauges.some(({ measure }) => measure === 'power') ? ['power'] : [];
  const flows = gauges.filter(isFlow);
  const heads = gauges.filter(({ measure }) => measure === 'head');
  const atBoth = heads.some(({ zeroFlow }) => zeroFlow) && heads.some(({ zeroFlow }) => !zeroFlow);
  const differ = (of: (gauge: Gauge) => unknown) =>
    new Set(flows.map((one) => JSON.stringify(of(one)))).size > 1;
  const areApart =
    flows.length === 0
      ? atBoth
      : heads.length > 0 ||
        differ(({ shut }) => shut) ||
        (withStaticHead && differ(({ setting }) => setting));
  const ratio: readonly ParameterName[] = flows.length === 0 ? [] : ['frictionOverHead'];
  const sets: readonly (readonly ParameterName[])[] = [
    ...(areApart ? [['friction', 'head', ...power] as const] : []),
    [...ratio, ...power],
  ];
  return {
    sets: sets.filter((names) => names.length > 0),
    outOfReach: [
      ...(areApart ? [] : bothOf({ reason: flows.length === 0 ? 'no-flow-readings' : 'ratio-alone' })),
      ...(power.length > 0 ? [] : [{ name: 'power', reason: 'no-power-readings' } as const]),
    ],
  };
}

const bothOf = (reason: Reason): readonly NotIdentifiable[] => [
  { ...reason, name: 'friction' },
  { ...reason, name: 'head' },
];

/** The rows that parameters rest on: the ratio on flows, since heads would be held against a head as entered. */
export const rowsBehind = <R extends Pick<Gauge, 'measure'>>(
  rows: readonly R[],
  names: readonly ParameterName[],
): readonly R[] =>
  names.includes('frictionOverHead') ? rows.filter(({ measure }) => measure !== 'head') : rows;

/** Why separate factors are not taken to be apart; empty where they are, or where there are none. */
function doubtsAbout(covariance: Covariance, factors: Factors): readonly NotIdentifiable[] {
  const { names, conditionNumber } = covariance;
  if (!names.includes('head')) return [];
  if (!(conditionNumber < SEPARATE.conditionNumber))
    return bothOf({ reason: 'ill-conditioned', conditionNumber });
  const errors = errorsOf(covariance);
  return names.flatMap((name, i): readonly NotIdentifiable[] => {
    const standardError = errors[i] ?? Number.NaN;
    const isSure =
      standardError < SEPARATE.standardError &&
      DEVIATE_95 * standardError < SEPARATE.halfWidth * factors[factorOf(name)];
    return (name !== 'friction' && name !== 'head') || isSure
      ? []
      : [{ name, reason: 'too-uncertain', standardError }];
  });
}

/** What rows would determine at some factors, those of readings not yet taken included; null: nothing. */
export function determinedBy(
  rows: readonly WeighedRow[],
  { sets }: Attempts,
  { factors, accuracies }: { readonly factors: Factors; readonly accuracies: Accuracies },
): Covariance | null {
  for (const names of sets) {
    const found = covarianceOf(rowsBehind(rows, names), { names, factors, accuracies });
    if (found.ok && doubtsAbout(found.value, factors).length === 0) return found.value;
  }
  return null;
}

export interface Determined {
  readonly fit: RobustFit;
  readonly covariance: Covariance;
}

/** Friction and head apart where they are, else what can be had without; the failure lists why nothing can. */
export function determined(
  rows: readonly Row[],
  attempts: Attempts,
  { predict, accuracies }: { readonly predict: Prediction; readonly accuracies: Accuracies },
): Result<Determined & { readonly doubts: readonly NotIdentifiable[] }, readonly NotIdentifiable[]> {
  let doubts: readonly NotIdentifiable[] = [];
  for (const names of attempts.sets) {
    const fit = robustFit(rowsBehind(rows, names), names, predict);
    if (!fit.ok) {
      doubts = [...new Set(names.map(factorOf))].map((name) => ({ name, reason: fit.failure.code }));
      continue;
    }
    const covariance = covarianceOf(weighedRows(fit.value), { ...fit.value, accuracies });
    if (!covariance.ok) continue;
    const own = doubtsAbout(covariance.value, fit.value.factors);
    if (own.length === 0) return success({ fit: fit.value, covariance: covariance.value, doubts });
    doubts = own;
  }
  return failed(doubts);
}
