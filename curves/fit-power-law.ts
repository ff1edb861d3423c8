/** Fits a power law to the power points that a user entered. */
import { countDistinct } from './distinct.ts';
import { exponentLaw, type FittedLaw } from './exponent-law.ts';
import { fitQuality } from './fit-quality.ts';
import { CUBE, fixedLossLaw } from './fixed-loss-law.ts';
import { type PowerFrame, powerFrame } from './power-frame.ts';
import type { PowerLaw, SpeedLaw } from './power-law.ts';
import { type PowerLawFailure, type PowerPoint, powerPointsFailure } from './power-points.ts';
import { failed, type Result, success } from './result.ts';

export type { PowerLawFailure } from './power-points.ts';

/** Share of the power above standby that is taken as fixed where only one speed is entered. */
const ASSUMED_FIXED_SHARE = 0.08;
/** The shares that it may have as well: none, or a fifth. */
const OTHER_FIXED_SHARES = [0, 0.2] as const;
/** A point of more leverage is met by any data, so that leaving it out shows nothing. */
const FREE_LEVERAGE = 1e-9;
/** Errors below this mean square are rounding. */
const EXACT = 1e-18;

interface Fitting {
  readonly points: readonly PowerPoint[];
  readonly frame: PowerFrame;
  /** ln(P - standby). */
  readonly logPowers: readonly number[];
  readonly standbyPower: number;
}

interface Chosen extends FittedLaw {
  readonly name: PowerLaw['law'];
  readonly assumed: boolean;
  readonly alternatives: readonly SpeedLaw[];
}

/**
 * The power law P = standby + (F + c r^k) g(x) through the points. Two laws are fitted: one with F = 0 and k free
 * (`exponentLaw`), one with k = 3 and F free (`fixedLossLaw`).
 *
 * At one speed neither can be told: F is taken as 8 % of the power above standby at full speed, and may be 0 or 20 %. At
 * two speeds the fixed loss is taken where k is below 3, else the exponent. At three or more the law with the lesser
 * leave-one-out error of ln P is taken, the fixed loss where they are equal.
 *
 * `points`: speed ratio above 0, power [W] above `standbyPower` [W], flow [m3/s] where it was noted. Errors: those of
 * `powerPointsFailure`.
 */
export function fitPowerLaw(
  points: readonly PowerPoint[],
  { standbyPower }: { readonly standbyPower: number },
): Result<PowerLaw, PowerLawFailure> {
  const failure = powerPointsFailure(points, standbyPower);
  if (failure !== undefined) return failed(failure);

  const frame = powerFrame(points);
  const logPowers = points.map((point) => Math.log(point.power - standbyPower));
  const chosen = chooseLaw({ points, frame, logPowers, standbyPower });
  const framed = [chosen.law, ...chosen.alternatives].some(({ flowTerms }) => flowTerms.length > 0);
  const speeds = points.map(({ speedRatio }) => speedRatio);
  return success({
    ...chosen.law,
    law: chosen.name,
    exponentAssumed: chosen.assumed,
    alternatives: chosen.alternatives,
    speedRange: { min: Math.min(...speeds), max: Math.max(...speeds) },
    flowScale: framed ? frame.scale : null,
    flowCentre: framed ? frame.centre : null,
    flowRange: framed ? { min: frame.min, max: frame.max } : null,
    standbyPower,
    ...fitQuality({ values: logPowers, residuals: chosen.residuals, parameters: chosen.parameters }),
  });
}

function chooseLaw(fitting: Fitting): Chosen {
  const { points } = fitting;
  const speeds = countDistinct(points.map(({ speedRatio }) => speedRatio));
  const byExponent = speeds < 2 ? null : exponentLaw(points, fitting);
  if (byExponent === null) return assumedLaw(fitting);
  const byFixedLoss = fixedLossLaw(points, fitting);
  const isFixed =
    speeds === 2 ? byExponent.law.exponent < CUBE : predictsAsWell(fitting, { byFixedLoss, byExponent });
  return isFixed
    ? { ...byFixedLoss, name: 'fixed-loss', assumed: false, alternatives: [byExponent.law] }
    : { ...byExponent, name: 'exponent', assumed: false, alternatives: [byFixedLoss.law] };
}

/** The cube of speed through the points, with a share of it taken as fixed. */
function assumedLaw({ points, frame, logPowers }: Fitting): Chosen {
  const cube = fixedLossLaw(points, { frame, logPowers, share: 0 });
  const { law } = cube;
  const speed = Math.max(...points.map(({ speedRatio }) => speedRatio));
  const withFixed = (share: number): SpeedLaw => {
    const atSpeed = law.coefficient * speed ** CUBE;
    return { ...law, fixedPower: share * atSpeed, coefficient: (1 - share) * law.coefficient };
  };
  return {
    ...cube,
    law: withFixed(ASSUMED_FIXED_SHARE),
    name: 'fixed-loss',
    assumed: true,
    alternatives: OTHER_FIXED_SHARES.map(withFixed),
  };
}

/** Whether the fixed loss predicts powers that were left out of the fit as well as the exponent does, or better. */
function predictsAsWell(
  fitting: Fitting,
  { byFixedLoss, byExponent }: { readonly byFixedLoss: FittedLaw; readonly byExponent: FittedLaw },
): boolean {
  const laws = [byFixedLoss, byExponent];
  const kept = fitting.logPowers.flatMap((_, index) =>
    laws.some(({ leverages }) => 1 - (leverages[index] ?? 1) < FREE_LEVERAGE) ? [] : [index],
  );
  return leaveOneOutError(byFixedLoss, fitting, kept) <= leaveOneOutError(byExponent, fitting, kept);
}

/** Mean square of ln P less ln of the power predicted without the point, over the points kept. */
function leaveOneOutError(
  { residuals, leverages }: FittedLaw,
  { logPowers, standbyPower }: Fitting,
  kept: readonly number[],
): number {
  const logOf = (logAboveStandby: number) => Math.log(standbyPower + Math.exp(logAboveStandby));
  const squares = kept.map((index) => {
    const entered = logPowers[index] ?? 0;
    const missedBy = (residuals[index] ?? 0) / (1 - (leverages[index] ?? 0));
    return (logOf(entered) - logOf(entered - missedBy)) ** 2;
  });
  return Math.max(EXACT, squares.reduce((sum, square) => sum + square, 0) / Math.max(1, squares.length));
}
