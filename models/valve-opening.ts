/** Resistance of a valve at an opening. */
import { failed, type Result, success } from '../curves/result.ts';
import { fittingResistance, type NamedLossSite, turbulentLossCoefficient } from './named-loss.ts';
import { kLoss, type Resistance } from './resistance.ts';
import type { ValveRow } from './valves.ts';

/** What a valve does at an opening: resist, or let nothing through. */
export type ValveState = Resistance | 'shut';

/** No published relation says what this valve loses at this opening [%]. */
export interface OpeningNotKnown {
  readonly code: 'opening-not-known';
  readonly opening: number;
}

/**
 * Resistance of a valve of the table at an opening.
 *
 * K = n fT + added K of the table; between its rows 1/sqrt K, which is proportional to the valve's flow coefficient,
 * runs on straight lines of the opening, from the narrowest row to 0 at opening 0. So K rises without bound as it shuts.
 * @param site opening [%] 0..100; bore [m]; kinematic viscosity [m2/s].
 * @returns 'shut' at opening 0.
 * Accuracy: the table's own at 100 and at its rows; between and below them nobody published the interpolation.
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

/** K by linear interpolation of 1/sqrt K over the opening. */
function partOpenLossCoefficient(
  row: ValveRow,
  { opening, diameter }: { readonly opening: number; readonly diameter: number },
): number {
  const openLoss = turbulentLossCoefficient(row, diameter);
  let upper = { opening: 100, conductance: 1 / Math.sqrt(openLoss) };
  let lower = { opening: 0, conductance: 0 };
  for (const part of row.partOpenings) {
    const knot = { opening: part.opening, conductance: 1 / Math.sqrt(openLoss + part.addedLossCoefficient) };
    if (knot.opening <= opening) {
      lower = knot;
      break;
    }
    upper = knot;
  }
  const share = (opening - lower.opening) / (upper.opening - lower.opening);
  const conductance = lower.conductance + share * (upper.conductance - lower.conductance);
  return 1 / (conductance * conductance);
}
