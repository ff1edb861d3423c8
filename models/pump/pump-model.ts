/** A pump made ready for computing: its points with the curves fitted to them. */
import { fitHeadCurve, type HeadCurveFailure } from '../../curves/fit-head-curve.ts';
import { fitPowerLaw, type PowerLawFailure } from '../../curves/fit-power-law.ts';
import type { HeadCurve } from '../../curves/head-curve.ts';
import type { PowerLaw } from '../../curves/power-law.ts';
import { failed, type Result, success } from '../../curves/result.ts';
import { buildSpeedMap, type SpeedMap, type SpeedMapFailure, speedRatioAt } from '../../curves/speed-map.ts';
import type { DocumentPath } from '../loop/document-path.ts';
import { type PowerFailure, powerBeyondRange } from './power-range.ts';
import type { Pump } from './pump.ts';

/** The curves of a pump as plain data: stored as fitted, reloaded bit for bit. */
export interface PumpFit {
  readonly speedMap: SpeedMap;
  readonly headCurve: HeadCurve;
  readonly powerLaw: PowerLaw;
}

export interface PumpModel {
  readonly pump: Pump;
  readonly fit: PumpFit;
}

export type PumpFailure = (SpeedMapFailure | HeadCurveFailure | PowerLawFailure | PowerFailure) & {
  readonly path: DocumentPath;
};

/** Fits head and power of a pump at true speed; fails with the place in its document that does not allow it. */
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
