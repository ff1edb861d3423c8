/** Finds the resistance of a valve at an opening. */
import { failed, type Result, success } from '../../curves/result.ts';
import { fittingResistance, type NamedLossSite, turbulentLossCoefficient } from './named-loss.ts';
import { kLoss, type Resistance } from './resistance.ts';
import type { ValveRow } from './valves.ts';

/** What a valve does at an opening: resist, or let nothing through. */
export type ValveState = Resistance | 'shut';

/** No published relation gives what this valve loses at this opening. */
export interface OpeningNotKnown {
  readonly code: 'opening-not-known';
  /** [%] */
  readonly opening: number;
}

/**
 * Resistance of a valve of the table at an opening.
 *
 * K = n fT + added K of the table; between its rows 1/sqrt K, which is proportional to the valve's flow coefficient,
 * runs on straight lines of the opening, from the narrowest row to 0 at opening 0. So K rises without bound as it shuts.
 * @param site opening [%] 0..100; bore [m]; kinematic viscosity [m2/s].
 * @returns 'shut' at opening 0.
 * Accuracy: the table's own at 100 and at its rows; between and below them the interpolation is unpublished.
 * Errors: `opening-not-known` outside 0..100, and between for a valve without a table.
 * Source: each row of VALVES.
 */
export function valveResistance(
  row: ValveRow,
  site: NamedLossSite & { readonly opening: number },
): Result<ValveState, OpeningNotKnown> {
  const { opening, diameter } = site;
  if (opening === 0) return success('shut');
  if (opening === 100) return success(fittingResistance(row, site));
  if (row.partOpenings.length === 0 || !(opening > 0 && opening < 100)) {
    return failed({ code: 'opening-not-known', opening });
  }
  return success(kLoss({ lossCoefficient: partOpenLossCoefficient(row, { opening, diameter }), diameter }));
}

interface Knot {
  readonly opening: number;
  /** 1/sqrt K */
  readonly conductance: number;
}

/** The table from fully open down to shut. */
function knotsOf(row: ValveRow, diameter: number): readonly Knot[] {
  const openLoss = turbulentLossCoefficient(row, diameter);
  const knot = (opening: number, lossCoefficient: number): Knot => ({
    opening,
    conductance: 1 / Math.sqrt(lossCoefficient),
  });
  return [
    knot(100, openLoss),
    ...row.partOpenings.map((part) => knot(part.opening, openLoss + part.addedLossCoefficient)),
    { opening: 0, conductance: 0 },
  ];
}

/** The neighbouring knots around the first one that is low enough. */
function around(knots: readonly Knot[], isLow: (knot: Knot) => boolean): { upper: Knot; lower: Knot } {
  const place = Math.max(1, knots.findIndex(isLow));
  const [upper, lower] = [knots[place - 1], knots[place]];
  if (upper === undefined || lower === undefined) throw new Error('a valve has knots at 100 and at 0');
  return { upper, lower };
}

/** K by linear interpolation of 1/sqrt K over the opening. */
function partOpenLossCoefficient(
  row: ValveRow,
  { opening, diameter }: { readonly opening: number; readonly diameter: number },
): number {
  const { upper, lower } = around(knotsOf(row, diameter), (knot) => knot.opening <= opening);
  const share = (opening - lower.opening) / (upper.opening - lower.opening);
  const conductance = lower.conductance + share * (upper.conductance - lower.conductance);
  return 1 / (conductance * conductance);
}

/**
 * Opening [%] at which a valve of the table has a loss coefficient: the inverse of `valveResistance`.
 *
 * @param loss lossCoefficient K [-] above 0, on a bore diameter [m] above 0.
 * @returns null for a valve without a table of part openings, or where K is below that of the valve fully open.
 */
export function openingForLoss(
  row: ValveRow,
  { lossCoefficient, diameter }: { readonly lossCoefficient: number; readonly diameter: number },
): number | null {
  const knots = knotsOf(row, diameter);
  const conductance = 1 / Math.sqrt(lossCoefficient);
  if (row.partOpenings.length === 0 || !(conductance <= (knots[0]?.conductance ?? 0))) return null;
  const { upper, lower } = around(knots, (knot) => knot.conductance <= conductance);
  const share = (conductance - lower.conductance) / (upper.conductance - lower.conductance);
  return lower.opening + share * (upper.opening - lower.opening);
}
