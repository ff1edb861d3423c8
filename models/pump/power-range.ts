/** Whether the power that is computed for a pump stays within what any pump draws. */
import { type PowerLaw, powerAt } from '../../curves/power-law.ts';
import { type SpeedMap, speedRatioAt } from '../../curves/speed-map.ts';
import type { Settings } from './pump.ts';

export interface PowerFailure {
  readonly code: 'power-beyond-range';
  /** [%], where the power is beyond. */
  readonly setting: number;
}

/** [W]: far outside anything that pumps water, and far inside what numbers hold. */
const RANGE = { least: 1e-9, most: 1e12 } as const;

/**
 * The setting at which the law P = standby + c r^k g leaves 1e-9..1e12 W, of the lowest and the highest of the controller,
 * between which it runs one way, at the flows where g is least and greatest; null where none does.
 */
export function powerBeyondRange(
  law: PowerLaw,
  { speedMap, settings }: { readonly speedMap: SpeedMap; readonly settings: Settings },
): PowerFailure | null {
  const flows = extremeFlows(law);
  for (const setting of [settings.min, settings.max]) {
    const speedRatio = speedRatioAt(speedMap, setting);
    for (const flow of flows) {
      const power = powerAt(law, { flow: flow * speedRatio, speedRatio });
      const isInside = power >= RANGE.least && power <= RANGE.most;
      if (!isInside && speedRatio > 0) return { code: 'power-beyond-range', setting };
    }
  }
  return null;
}

/** At full speed [m3/s]: the ends of the data, and between them where b1 x + b2 x^2 turns. */
function extremeFlows({ flowScale, flowCentre, flowRange, flowTerms }: PowerLaw): readonly number[] {
  if (flowScale === null || flowCentre === null || flowRange === null) return [0];
  const [linear = 0, quadratic = 0] = flowTerms;
  const turn = quadratic === 0 ? flowRange.min : flowCentre - linear / (2 * quadratic);
  const within = Math.min(flowRange.max, Math.max(flowRange.min, turn));
  return [flowRange.min, within, flowRange.max].map((q) => q * flowScale);
}
