/** Brings a pump to one end of what its grade and its fitted points leave open. */

import { type PumpAtSetting, type PumpMaker, pumpAtSetting } from './pump-at-setting.ts';
import type { GradeTolerance } from './tolerance-grades.ts';
import { type ToleranceEnd, uncertainHead } from './uncertain-head.ts';

/** A pump at both ends of what its curves leave open. */
export interface PumpEnds {
  readonly low: PumpMaker;
  readonly high: PumpMaker;
}

/**
 * Low: the low head curve with (1 + tP) times the power; high: the high head curve with the power as entered, since a
 * grade sets no lower bound for it. The affinity laws carry both to a setting.
 */
export function pumpEnds(tolerance: GradeTolerance): PumpEnds {
  return { low: pumpAtEnd(tolerance, 'low'), high: pumpAtEnd(tolerance, 'high') };
}

function pumpAtEnd(tolerance: GradeTolerance, end: ToleranceEnd): PumpMaker {
  const powerFactor = end === 'low' ? 1 + tolerance.power : 1;
  return (model, { setting, count }): PumpAtSetting => {
    const plain = pumpAtSetting(model, { setting, count });
    const { speedRatio } = plain;
    const atFullSpeed = uncertainHead(model.fit.headCurve, tolerance, end);
    return {
      ...plain,
      headAt: (flow) => {
        const { head, slope } = atFullSpeed.headAt(flow / (speedRatio * count));
        return { head: speedRatio ** 2 * head, slope: (speedRatio * slope) / count };
      },
      powerAt: (flow) => powerFactor * plain.powerAt(flow),
      turningFlows: atFullSpeed.turningFlows.map((flow) => flow * speedRatio * count),
    };
  };
}
