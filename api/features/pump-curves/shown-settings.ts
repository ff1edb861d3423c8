/** Chooses the settings at which a chart shows a pump. */
import { scaleLinear } from 'd3-scale';
import type { Pump } from '../../../models/pump/pump.ts';
import { gridSize, settingAt } from '../../../models/pump/settings-grid.ts';

const SHOWN_MOST = 5;
const ROUND_STEPS = 4;
/** Of the range of settings: nearer lines have no room for their names. */
const APART = 1 / 6;

/** Highest first: the highest, those that points were entered at, and round ones between, on the controller's grid. */
export function shownSettings({ settings, headPoints, powerPoints }: Pump): readonly number[] {
  const { min, max } = settings;
  const isInside = (setting: number) => setting >= min && setting <= max;
  const entered = [...headPoints, ...powerPoints].map(({ setting }) => setting).filter(isInside);
  const round = scaleLinear().domain([min, max]).ticks(ROUND_STEPS);
  const chosen: number[] = [max];
  const apart = APART * (max - min);
  for (const setting of [...entered, ...round.map((tick) => onGrid(settings, tick))]) {
    const isNear = chosen.some((other) => Math.abs(other - setting) <= apart);
    if (!isNear && chosen.length < SHOWN_MOST) chosen.push(setting);
  }
  return chosen.toSorted((a, b) => b - a);
}

function onGrid(settings: Pump['settings'], setting: number): number {
  const index = Math.round((setting - settings.min) / settings.step);
  return settingAt(settings, Math.max(0, Math.min(gridSize(settings) - 1, index)));
}
