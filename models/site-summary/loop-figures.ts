/** What a loop with its pump uses, lacks and could save in a year. */

import type { OutletFigures } from '../network/margins.ts';
import type { PumpModel } from '../pump/pump-model.ts';
import { EQUAL } from '../selection/criteria.ts';

export interface YearUse {
  /** kWh */
  readonly annualEnergy: number;
  /** Money; null where nothing is priced. */
  readonly annualCost: number | null;
}

export interface InstalledStation {
  readonly pump: PumpModel;
  readonly count: number;
  readonly setting: number;
}

/** The outlet that lacks most of its flow; in which phase, null where the loop runs alike all day. */
export interface ShortOutlet {
  readonly outlet: string;
  readonly flow: number;
  readonly requiredFlow: number;
  readonly margin: number;
  readonly phase: string | null;
}

/** Less used by the same requirement; `costSaved` null where nothing is priced. */
export interface Saved {
  readonly setting: number;
  readonly energySaved: number;
  readonly costSaved: number | null;
}

/** `candidate`: place of the pump among those looked at; null: the pump that is there, at a lower setting. */
export interface Saving extends Saved {
  readonly candidate: number | null;
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

export const savedBy = (now: YearUse, then: YearUse): Omit<Saved, 'setting'> => ({
  energySaved: now.annualEnergy - then.annualEnergy,
  costSaved: now.annualCost === null || then.annualCost === null ? null : now.annualCost - then.annualCost,
});

/** Money, or energy where nothing is priced. */
export const worthOfSaved = ({ costSaved, energySaved }: Omit<Saved, 'setting'>): number =>
  costSaved ?? energySaved;
