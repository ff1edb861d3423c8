/** Fits the curves of a pump to its points. */
import { fitHeadCurve, type HeadCurveFailure } from '../../curves/fit-head-curve.ts';
import { fitPowerLaw, type PowerLawFailure } from '../../curves/fit-power-law.ts';
import type { HeadCurve } from '../../curves/head-curve.ts';
import { type PowerLaw, powerAt } from '../../curves/power-law.ts';
import { failed, type Result, success } from '../../curves/result.ts';
import { buildSpeedMap, type SpeedMap, type SpeedMapFailure, speedRatioAt } from '../../curves/speed-map.ts';
import type { DocumentPath } from '../loop/document-path.ts';
import type { Pump, Settings } from './pump.ts';

/** The curves of a pump as plain data: stored as fitted, reloaded bit for bit. */
export interface PumpFit {
  readonly speedMap: SpeedMap;
  readonly headCurve: HeadCurve;
  readonly powerLaw: PowerLaw;
}

/** A pump made ready for computing. */
export interface PumpModel {
  /** As its user entered it. */
  readonly entered: Pump;
  readonly fit: PumpFit;
}

interface PowerFailure {
  readonly code: 'power-beyond-range';
  /** [%], where the power is beyond. */
  readonly setting: number;
}

export type PumpFailure = (SpeedMapFailure | HeadCurveFailure | PowerLawFailure | PowerFailure) & {
  readonly path: DocumentPath;
};

/**
 * Fits head and power of a pump at true speed.
 *
 * Errors: those of `buildSpeedMap`, `fitHeadCurve`, `fitPowerLaw`; `power-beyond-range` where the fitted law leaves
 *   1e-9..1e12 W at the lowest or the highest setting. Each names the place in the document of the pump.
 */
export function fitPump(pump: Pump): Result<PumpFit, PumpFailure> {
  const speedMap = buildSpeedMap(pump.speedMap, pump.settings);
  if (!speedMap.ok) return failed({ ...speedMap.failure, path: at('speedMap', speedMap.failure) });
  const speedRatio = (setting: number) => speedRatioAt(speedMap.value, setting);
  const headCurve = fitHeadCurve(
    pump.headPoints.map((point) => ({ ...point, speedRatio: speedRatio(point.setting) })),
  );
  if (!headCurve.ok) return failed({ ...headCurve.failure, path: at('headPoints', headCurve.failure) });
  const powerPoints = pump.powerPoints.map((point) => ({ ...point, speedRatio: speedRatio(point.setting) }));
  const powerLaw = fitPowerLaw(powerPoints, { standbyPower: pump.standbyPower });
  if (!powerLaw.ok) return failed({ ...powerLaw.failure, path: at('powerPoints', powerLaw.failure) });
  const beyond = powerBeyondRange(powerLaw.value, { speedMap: speedMap.value, settings: pump.settings });
  if (beyond !== null) return failed({ ...beyond, path: ['powerPoints'] });
  return success({ speedMap: speedMap.value, headCurve: headCurve.value, powerLaw: powerLaw.value });
}

function at(list: string, failure: object): DocumentPath {
  return 'index' in failure && typeof failure.index === 'number' ? [list, failure.index] : [list];
}

/** [W]: far outside anything that pumps water, and far inside what numbers hold. */
const RANGE = { least: 1e-9, most: 1e12 } as const;

/**
 * The setting at which a law P = standby + (F + c r^k) g, the chosen one or one that the points allow as well, leaves
 * 1e-9..1e12 W, of the lowest and the highest of the controller, between which it runs one way, at the flows where g is
 * least and greatest; null where none does.
 */
function powerBeyondRange(
  law: PowerLaw,
  { speedMap, settings }: { readonly speedMap: SpeedMap; readonly settings: Settings },
): PowerFailure | null {
  for (const setting of [settings.min, settings.max]) {
    const speedRatio = speedRatioAt(speedMap, setting);
    const powers = [law, ...law.alternatives].flatMap((one) => extremePowers({ ...law, ...one }, speedRatio));
    const areInside = powers.every((power) => power >= RANGE.least && power <= RANGE.most);
    if (!areInside && speedRatio > 0) return { code: 'power-beyond-range', setting };
  }
  return null;
}

const extremePowers = (law: PowerLaw, speedRatio: number): readonly number[] =>
  extremeFlows(law).map((flow) => powerAt(law, { flow: flow * speedRatio, speedRatio }));

/** At full speed [m3/s]: the ends of the data, and between them where b1 x + b2 x^2 turns. */
function extremeFlows({ flowScale, flowCentre, flowRange, flowTerms }: PowerLaw): readonly number[] {
  if (flowScale === null || flowCentre === null || flowRange === null) return [0];
  const [linear = 0, quadratic = 0] = flowTerms;
  const turn = quadratic === 0 ? flowRange.min : flowCentre - linear / (2 * quadratic);
  const within = Math.min(flowRange.max, Math.max(flowRange.min, turn));
  return [flowRange.min, within, flowRange.max].map((q) => q * flowScale);
}
