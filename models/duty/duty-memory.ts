/** Remembers duties by their setting, so that each is worked out once. */
import type { ExactDuty } from './duty-point.ts';

/** Gives the duty at a setting [% of full]. */
export interface RememberedDuty {
  (setting: number): ExactDuty;
  /** Those worked out so far. */
  known(): readonly ExactDuty[];
}

/**
 * Duties by setting [% of full], each computed once; `before` are those of the same loop and pump that are known
 * already.
 */
export function rememberedDuty(
  compute: (setting: number) => ExactDuty,
  before: readonly ExactDuty[] = [],
): RememberedDuty {
  const bySetting = new Map(before.map((duty) => [duty.setting, duty]));
  const dutyAt = (setting: number): ExactDuty => {
    const duty = bySetting.get(setting) ?? compute(setting);
    bySetting.set(setting, duty);
    return duty;
  };
  return Object.assign(dutyAt, { known: () => [...bySetting.values()] });
}
