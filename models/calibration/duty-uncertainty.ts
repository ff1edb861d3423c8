/** States what the uncertainty of a calibration leaves open of a duty. */
import { DEVIATE_95 } from '../../curves/theil-sen.ts';
import { type DutyPoint, dutyPoint } from '../duty/duty-point.ts';
import type { CompiledLoop } from '../network/compiled-loop.ts';
import { limitingOutlet, outletFigures } from '../network/margins.ts';
import { withMoreFriction } from '../network/more-friction.ts';
import { calibratedFit } from '../pump/calibrated-fit.ts';
import { type FactorName, type Factors, factorOf, type ParameterName } from '../pump/factors.ts';
import { pumpAtSetting } from '../pump/pump-at-setting.ts';
import type { PumpFit, PumpModel } from '../pump/pump-model.ts';
import { type AppliedCalibration, isAbout } from './applied.ts';

/** Of a calibration for one pump; plain data. */
export interface CalibrationUncertainty {
  readonly names: readonly ParameterName[];
  readonly factors: Factors;
  readonly covariance: readonly (readonly number[])[];
  /** Whether the pump is the one that was calibrated. */
  readonly isOwnPump: boolean;
}

/** Null without a calibration, or of one that was applied before its covariance was kept. */
export function calibrationUncertainty(
  calibration: AppliedCalibration | null | undefined,
  pump: { readonly id: string | null; readonly fit: PumpFit },
): CalibrationUncertainty | null {
  if (calibration?.covariance === undefined) return null;
  const { parameters, factors, covariance } = calibration;
  const names = parameters.map(({ name }) => name);
  return { names, factors, covariance, isOwnPump: isAbout(calibration, pump) };
}

interface Interval {
  readonly low: number;
  readonly high: number;
}

export interface DutyUncertainty {
  /** Total flow [m3/s]. */
  readonly flow: Interval;
  /** Of the limiting outlet [-]; null where none requires a flow. */
  readonly margin: Interval | null;
}

/** Relative step of a factor, small against its uncertainty and large against the last digits of a solution. */
const STEP = 0.01;

/**
 * Intervals of 95 % by the gradient g of each figure: value -/+ 1.96 sqrt(g'C g), slopes by central differences.
 *
 * @param loop with its calibrated friction; pump, with its calibrated curves; duty, of both.
 * Errors: throws `SolveFailure`.
 */
export function dutyUncertainty(
  { names, factors, covariance, isOwnPump }: CalibrationUncertainty,
  {
    loop,
    pump,
    duty,
  }: {
    readonly loop: CompiledLoop;
    readonly pump: PumpModel;
    readonly duty: Pick<DutyPoint, 'setting' | 'count' | 'flow' | 'outletFlows'>;
  },
): DutyUncertainty {
  const { outlets } = loop.system;
  const figures = outletFigures(outlets, duty.outletFlows);
  const place = figures.findIndex(({ name }) => name === limitingOutlet(figures));
  const required = figures[place]?.requiredFlow ?? null;
  const marginOf = ({ outletFlows }: Pick<DutyPoint, 'outletFlows'>): number =>
    required === null ? 0 : (outletFlows[place] ?? 0) / required - 1;
  const landed = (factor: FactorName, times: number): Pick<DutyPoint, 'flow' | 'outletFlows'> => {
    if (factor === 'friction') return dutyPoint(withMoreFriction(loop, times), pumpAtSetting(pump, duty));
    if (factor === 'power' || !isOwnPump) return duty;
    const fit = calibratedFit(pump.fit, { head: times, power: 1 });
    return dutyPoint(loop, pumpAtSetting({ ...pump, fit }, duty));
  };
  const slopes = names.map((name) => {
    const [more, less] = [landed(factorOf(name), 1 + STEP), landed(factorOf(name), 1 - STEP)];
    const width = 2 * STEP * factors[factorOf(name)];
    return { flow: (more.flow - less.flow) / width, margin: (marginOf(more) - marginOf(less)) / width };
  });
  const around = (value: number, gradient: readonly number[]): Interval => {
    const half = DEVIATE_95 * Math.sqrt(Math.max(0, quadratic(covariance, gradient)));
    return { low: value - half, high: value + half };
  };
  return {
    flow: around(
      duty.flow,
      slopes.map(({ flow }) => flow),
    ),
    margin:
      required === null
        ? null
        : around(
            marginOf(duty),
            slopes.map(({ margin }) => margin),
          ),
  };
}

const quadratic = (matrix: readonly (readonly number[])[], vector: readonly number[]): number =>
  matrix.reduce(
    (sum, line, i) => sum + line.reduce((own, one, j) => own + (vector[i] ?? 0) * one * (vector[j] ?? 0), 0),
    0,
  );
