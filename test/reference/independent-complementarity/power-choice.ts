/** Which of the two laws of power holds for a pump, and the laws between which its power lies at other speeds. */
import type { Pump } from '../../../models/pump/pump.ts';
import { exponentLaw, type Fitted, fixedLossLaw, type Law } from './power-laws.ts';
import { type PowerRows, powerRows } from './power-rows.ts';

export interface PowerChoice {
  readonly data: PowerRows;
  readonly name: 'exponent' | 'fixed-loss';
  readonly chosen: Law;
  /** Every law that counts outside of the measured speeds, the chosen one among them. */
  readonly all: readonly Law[];
  /** Exponent of law A, whichever was chosen. */
  readonly exponent: number;
  /** Mean squares of the leave-one-out errors of both laws, with three speeds or more. */
  readonly errors?: { readonly exponent: number; readonly fixedLoss: number } | undefined;
}

const SURE = 1 - 1e-9;
const LEAST_ERROR = 1e-18;
/** Part of the power at the measured speed that does not go with speed: as taken, least and greatest. */
const ASSUMED = { taken: 0.08, least: 0, greatest: 0.2 };

/** Mean square of ln P less the logarithm that the other points would give it. */
function leaveOneOut({ rows, standby }: PowerRows, law: Fitted, counted: readonly boolean[]): number {
  const squares = rows.flatMap(({ y, power }, row) => {
    if (counted[row] !== true) return [];
    const [residual, leverage] = [law.residuals[row] ?? Number.NaN, law.leverages[row] ?? Number.NaN];
    return [(Math.log(power) - Math.log(standby + Math.exp(y - residual / (1 - leverage)))) ** 2];
  });
  const mean = squares.reduce((sum, square) => sum + square, 0) / Math.max(1, squares.length);
  return Math.max(LEAST_ERROR, mean);
}

/** Law B with a stated share of the power at the one measured speed. */
function withFixedShare(single: Fitted, speed: number, share: number): Law {
  const power = single.coefficient * speed ** 3;
  return {
    fixed: share * power,
    coefficient: (1 - share) * single.coefficient,
    exponent: 3,
    flowTerms: single.flowTerms,
  };
}

export function choosePower(pump: Pump): PowerChoice {
  const data = powerRows(pump);
  const a = exponentLaw(data);
  if (data.speeds === 1) {
    const [chosen, least, greatest] = [ASSUMED.taken, ASSUMED.least, ASSUMED.greatest].map((share) =>
      withFixedShare(a, data.fastest, share),
    );
    if (!chosen || !least || !greatest) throw new Error('no share');
    return { data, name: 'fixed-loss', chosen, all: [least, chosen, greatest], exponent: 3 };
  }
  const b = fixedLossLaw(data);
  const common = { data, all: [a, b], exponent: a.exponent };
  if (data.speeds === 2) {
    return a.exponent < 3
      ? { ...common, name: 'fixed-loss', chosen: b }
      : { ...common, name: 'exponent', chosen: a };
  }
  const counted = data.rows.map((_, row) => [a, b].every(({ leverages }) => (leverages[row] ?? 1) <= SURE));
  const errors = { exponent: leaveOneOut(data, a, counted), fixedLoss: leaveOneOut(data, b, counted) };
  return errors.exponent < errors.fixedLoss
    ? { ...common, errors, name: 'exponent', chosen: a }
    : { ...common, errors, name: 'fixed-loss', chosen: b };
}
