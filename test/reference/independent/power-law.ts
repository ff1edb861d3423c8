/** A pump's electrical power by one fit of ln(P - standby) against speed and flow. */
import type { Pump } from '../../../models/pump/pump.ts';
import { distinct } from './distinct.ts';
import { conditionNumber, leastSquares } from './least-squares.ts';
import { speedRatio } from './speed.ts';

export interface PowerLaw {
  readonly exponent: number;
  readonly exponentAssumed: boolean;
  readonly logCoefficient: number;
  /** Coefficients of x and x^2, as many as entered the fit. */
  readonly flowTerms: readonly number[];
  readonly largestFlow: number;
  readonly meanFlow: number;
  readonly range: { readonly low: number; readonly high: number };
}

interface Row {
  readonly logSpeed: number;
  readonly logPower: number;
  readonly x: number;
}

const LIMIT = 1e8;

export function fitPower(pump: Pump): PowerLaw {
  const reduced = pump.powerPoints.flatMap(({ flow, setting }) =>
    flow === undefined ? [] : [flow / speedRatio(pump, setting)],
  );
  const largestFlow = Math.max(0, ...reduced);
  const shares = reduced.map((flow) => flow / largestFlow);
  const meanFlow = shares.reduce((sum, share) => sum + share, 0) / Math.max(1, shares.length);
  const rows: readonly Row[] = pump.powerPoints.map(({ setting, power, flow }) => {
    const ratio = speedRatio(pump, setting);
    const x = flow === undefined ? 0 : flow / ratio / largestFlow - meanFlow;
    return { logSpeed: Math.log(ratio), logPower: Math.log(power - pump.standbyPower), x };
  });
  const speeds = distinct(pump.powerPoints.map(({ setting }) => speedRatio(pump, setting)));
  const kinds = distinct(shares);
  const terms = kinds >= 5 ? 2 : kinds >= 3 ? 1 : 0;
  const fit = fitTerms(rows, speeds >= 2, terms);
  return { ...fit, largestFlow, meanFlow, range: { low: Math.min(...shares), high: Math.max(...shares) } };
}

type FitPart = Pick<PowerLaw, 'exponent' | 'exponentAssumed' | 'logCoefficient' | 'flowTerms'>;

/** Drops the highest flow term for as long as the columns are too nearly dependent. */
function fitTerms(rows: readonly Row[], withSpeed: boolean, terms: number): FitPart {
  const columns = [
    rows.map(() => 1),
    ...(withSpeed ? [rows.map((row) => row.logSpeed)] : []),
    ...[1, 2].slice(0, terms).map((power) => rows.map((row) => row.x ** power)),
  ];
  if (terms > 0 && conditionNumber(columns) > LIMIT) return fitTerms(rows, withSpeed, terms - 1);
  const y = rows.map((row) => row.logPower - (withSpeed ? 0 : 3 * row.logSpeed));
  const { coefficients } = leastSquares(columns, y);
  return {
    exponent: withSpeed ? (coefficients[1] ?? 3) : 3,
    exponentAssumed: !withSpeed,
    logCoefficient: coefficients[0] ?? 0,
    flowTerms: coefficients.slice(withSpeed ? 2 : 1),
  };
}

/** Power [W] of one pump, standby included, at a speed ratio and its own flow [m3/s]. */
export function powerAt(law: PowerLaw, standby: number, at: { ratio: number; flow: number }): number {
  const share = at.flow / at.ratio / law.largestFlow;
  const x = Math.min(law.range.high, Math.max(law.range.low, share)) - law.meanFlow;
  const shape = law.flowTerms.reduce((sum, term, index) => sum + term * x ** (index + 1), 0);
  return standby + Math.exp(law.logCoefficient + shape) * at.ratio ** law.exponent;
}
