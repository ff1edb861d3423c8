/** Lists the settings that a pump's controller offers: min, min + step, min + 2 step, .. below max, and max itself. */
import type { Settings } from './pump.ts';

/** Spacing below which two settings are one [% of full]. */
const SAME_SETTING = 1e-9;

/** How many settings the grid has [-], 1 or more. */
export function gridSize({ min, max, step }: Settings): number {
  return Math.max(0, Math.ceil((max - min) / step - SAME_SETTING)) + 1;
}

/** The setting [% of full] at a place of the grid [-], 0 being the lowest. */
export function settingAt(settings: Settings, index: number): number {
  const { min, max, step } = settings;
  if (index >= gridSize(settings) - 1) return max;
  const setting = min + index * step;
  // Decimal steps such as 0.1 leave rounding noise that no controller offers.
  return Number.isInteger(setting) ? setting : Number(setting.toPrecision(12));
}

/** Whether the controller offers a setting [% of full]. */
export function isOnGrid({ min, max, step }: Settings, setting: number): boolean {
  const steps = (setting - min) / step;
  return Math.abs(setting - max) < SAME_SETTING || Math.abs(steps - Math.round(steps)) * step < SAME_SETTING;
}
