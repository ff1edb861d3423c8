/** Names what the chart of a loop shows, in SI. */
import type { Intersection } from '../../../curves/intersections.ts';
import type { RequiredDuty } from '../../../models/network/required-duty.ts';
import type { PumpModel } from '../../../models/pump/pump-model.ts';
import type { WithoutUnits } from '../../http/answer-form.ts';
import type { UnitSystem } from '../../units/unit-system.ts';
import type { DutyAnswer } from '../duty-point/duty-answer.ts';

/** Why a chart shows a pump at this setting. */
export type SettingOrigin = 'asked' | 'installed' | 'recommended' | 'highest';

export interface ShownPump {
  readonly model: PumpModel;
  readonly origin: SettingOrigin;
  readonly duty: WithoutUnits<DutyAnswer>;
  readonly crossings: readonly Intersection[];
}

/** What was measured, at a glance. */
export interface MeasuredPoint {
  readonly flow: number;
  /** Across the pump; null where it was not measured. */
  readonly head: number | null;
  /** Whether it was measured at the setting that is shown. */
  readonly isAtSetting: boolean;
}

export interface LoopFigures {
  readonly loopName: string;
  readonly system: UnitSystem;
  /** The head that the loop needs; empty where no water passes. */
  readonly needed: readonly { readonly flow: number; readonly head: number }[];
  readonly required: RequiredDuty | null;
  /** Null where no pump is installed or serves. */
  readonly shown: ShownPump | null;
  /** Empty where nothing was measured. */
  readonly measured: readonly MeasuredPoint[];
}
