/** Gives the cautions about a pump whose entries look like a slip of unit or of scale. */
import { enteredEfficiencies } from '../pump/entered-efficiency.ts';
import type { PumpModel } from '../pump/pump-model.ts';
import { EFFICIENCY, highestEfficiency } from './efficiency.ts';
import { type CautionOf, COMMON_PRACTICE, topic } from './topic.ts';

export const PUMP_ENTRY = topic({
  'settings-range': {
    severity: 'warning',
    sentence:
      'The settings end at 1 % or below: they look like fractions. Enter them in percent, as 100 for full speed.',
    source: COMMON_PRACTICE,
  },
});

type PumpEntryCaution = CautionOf<typeof PUMP_ENTRY | typeof EFFICIENCY>;

/** Highest setting [%] that looks like a fraction. */
const FRACTION_MOST = 1;
/** Efficiencies [-] that no pump has by its points: below the first, above the second whatever its power. */
const PLAUSIBLE = { least: 0.01, most: 0.85 } as const;

/** Judges the settings and the power points of a pump. */
export function pumpEntryCautions(model: PumpModel): readonly PumpEntryCaution[] {
  const { max: value } = model.entered.settings;
  const range = { pointer: '/settings/max', value, limit: FRACTION_MOST, quantity: 'setting' } as const;
  return [...PUMP_ENTRY.when(value <= FRACTION_MOST, 'settings-range', [], range), ...efficiencies(model)];
}

function efficiencies(model: PumpModel): readonly PumpEntryCaution[] {
  const { powerPoints } = model.entered;
  const places = enteredEfficiencies(model).flatMap((value, index) => {
    if (value === null) return [];
    const most = highestEfficiency(powerPoints[index]?.power ?? 0) ?? PLAUSIBLE.most;
    const isLow = value < PLAUSIBLE.least;
    if (!isLow && value <= most) return [];
    const limit = isLow ? PLAUSIBLE.least : most;
    const pointer = `/powerPoints/${index}`;
    return [
      {
        subject: pointer,
        pointer,
        value,
        limit,
        excess: Math.abs(Math.log(Math.max(value, Number.MIN_VALUE) / limit)),
      },
    ];
  });
  return EFFICIENCY.worst('efficiency-implausible', places);
}
