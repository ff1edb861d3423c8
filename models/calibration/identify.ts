/** Which factors rows can tell, and why not the others. */

import type { FactorName, Factors, ParameterName } from '../pump/factors.ts';
import { type Assessment, assess, type LinearRow } from './assess.ts';
import { maySeparate, SEPARATE, tellsRatio } from './identifiability.ts';
import type { Gauge } from './measured-rows.ts';

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

/** The parameters to try, the more telling first, and what is out of reach whatever they show. */
export interface Attempts {
  readonly separate: readonly ParameterName[] | null;
  /** Empty where nothing can be told. */
  readonly plain: readonly ParameterName[];
  readonly outOfReach: readonly NotIdentifiable[];
}

export const bothOf = (reason: Reason): readonly NotIdentifiable[] => [
  { ...reason, name: 'friction' },
  { ...reason, name: 'head' },
];

export function attemptsFor(gauges: readonly Gauge[], withStaticHead: boolean): Attempts {
  const hasPower = gauges.some(({ measure }) => measure === 'power');
  const power: readonly FactorName[] = hasPower ? ['power'] : [];
  const noPower: readonly NotIdentifiable[] = hasPower
    ? []
    : [{ name: 'power', reason: 'no-power-readings' }];
  const separate = maySeparate(gauges, withStaticHead);
  if (!tellsRatio(gauges)) {
    return {
      separate: separate ? ['friction', 'head', ...power] : null,
      plain: power,
      outOfReach: [...(separate ? [] : bothOf({ reason: 'no-flow-readings' })), ...noPower],
    };
  }
  return {
    separate: separate ? ['friction', 'head', ...power] : null,
    plain: ['frictionOverHead', ...power],
    outOfReach: [...(separate ? [] : bothOf({ reason: 'ratio-alone' })), ...noPower],
  };
}

/** Why an assessment of separate factors does not let them stand apart; empty where it does. */
export function doubtsAbout(
  { names, conditionNumber, standardErrors }: Assessment,
  factors: Factors,
): readonly NotIdentifiable[] {
  if (!(conditionNumber < SEPARATE.conditionNumber)) {
    return bothOf({ reason: 'ill-conditioned', conditionNumber });
  }
  return names.flatMap((name, index): readonly NotIdentifiable[] => {
    const standardError = standardErrors[index] ?? Number.NaN;
    if (name !== 'friction' && name !== 'head') return [];
    // A factor that comes out low by chance has a small error with it: its share counts as well.
    const isApart = Math.max(standardError, standardError / factors[name]) < SEPARATE.standardError;
    return !isApart ? [{ name, reason: 'too-uncertain', standardError }] : [];
  });
}

/** The rows that parameters rest on: the ratio alone on flows, since heads would be held against a head as entered. */
export const rowsBehind = <Row extends Pick<Gauge, 'measure'>>(
  rows: readonly Row[],
  names: readonly ParameterName[],
): readonly Row[] =>
  names.includes('frictionOverHead') ? rows.filter(({ measure }) => measure !== 'head') : rows;

export interface Settled {
  readonly assessment: Assessment;
  readonly rows: readonly LinearRow[];
}

/** What rows would settle at a point, those of readings yet to be taken included; null: nothing. */
export function settledBy(
  rows: readonly LinearRow[],
  { separate, plain }: Attempts,
  factors: Factors,
): Settled | null {
  const apart = separate === null ? null : assess(rows, separate);
  if (apart?.ok === true && doubtsAbout(apart.value, factors).length === 0) {
    return { assessment: apart.value, rows };
  }
  const behind = rowsBehind(rows, plain);
  const together = plain.length === 0 ? null : assess(behind, plain);
  return together?.ok === true ? { assessment: together.value, rows: behind } : null;
}
