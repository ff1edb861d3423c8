/** States what a loop with its pump uses, lacks and could save in a year. */

import type { OutletFigures } from '../network/margins.ts';
import type { PumpModel } from '../pump/pump-model.ts';
import { EQUAL } from '../selection/criterion.ts';

export interface YearUse {
  /** [kWh/year] */
  readonly annualEnergy: number;
  /** [money/year]; null where nothing is priced. */
  readonly annualCost: number | null;
}

export interface InstalledStation {
  readonly pump: PumpModel;
  /** Equal pumps in parallel [-]. */
  readonly count: number;
  /** [% of full] */
  readonly setting: number;
}

/**
 * The outlet with the smallest margin, below its required flow; in which phase, null where the loop runs alike all
 * day.
 */
export interface ShortOutlet {
  readonly outlet: string;
  /** [m3/s] */
  readonly flow: number;
  /** [m3/s] */
  readonly requiredFlow: number;
  /** flow/requiredFlow - 1 [-], below 0. */
  readonly margin: number;
  readonly phase: string | null;
}

/** Less used by the same requirement. */
export interface Saved {
  /** [% of full] */
  readonly setting: number;
  /** [kWh/year] */
  readonly energySaved: number;
  /** [money/year]; null where nothing is priced. */
  readonly costSaved: number | null;
}

/** What a pump saves. */
export interface Saving extends Saved {
  /** Place of the pump among those looked at [-]; null: the pump that is there, at a lower setting. */
  readonly candidate: number | null;
  /** Equal pumps in parallel [-]. */
  readonly count: number;
}

export interface LoopFigures extends YearUse {
  /** Mean over the year [W]. */
  readonly power: number;
  readonly hasRequirement: boolean;
  readonly short: ShortOutlet | null;
  /** What the pump that is there saves at the lowest setting that serves; null where it has none below its own. */
  readonly aboveNeed: Saved | null;
  /** The most that another pump saves, null where none does. */
  readonly otherPump: Saving | null;
}

/** The outlet with the smallest margin of those below their required flow [m3/s]; null where none is. */
export function shortOutlet(outlets: readonly OutletFigures[], phase: string | null): ShortOutlet | null {
  let worst: ShortOutlet | null = null;
  for (const { name, flow, requiredFlow, margin } of outlets) {
    if (margin === null || requiredFlow === null || margin >= -EQUAL) continue;
    if (worst === null || margin < worst.margin) {
      worst = { outlet: name, flow, requiredFlow, margin, phase };
    }
  }
  return worst;
}

/** What one use [kWh/year, money/year] is above another. */
export const savedBy = (now: YearUse, then: YearUse): Omit<Saved, 'setting'> => ({
  energySaved: now.annualEnergy - then.annualEnergy,
  costSaved: now.annualCost === null || then.annualCost === null ? null : now.annualCost - then.annualCost,
});

/** What is saved [money/year], or [kWh/year] where nothing is priced. */
export const worthOfSaved = ({ costSaved, energySaved }: Omit<Saved, 'setting'>): number =>
  costSaved ?? energySaved;
