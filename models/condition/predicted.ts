/** What a loop and its pump should show at a setting, by their data. */
import { dutyPoint } from '../duty/duty-point.ts';
import type { CompiledLoop } from '../network/compiled-loop.ts';
import { GRAVITY } from '../physics/gravity.ts';
import { pumpAtSetting } from '../pump/pump-at-setting.ts';
import type { PumpModel } from '../pump/pump-model.ts';
import { velocityHeads } from '../readings/gauges.ts';

/** A loop with the pumps installed on it. */
export interface Station {
  readonly loop: CompiledLoop;
  readonly pump: PumpModel;
  readonly count: number;
}

/** Totals over the pumps, SI; pressures [Pa] above that of the air, null where the suction side is not told apart. */
export interface Predicted {
  readonly flow: number;
  readonly head: number;
  readonly power: number;
  readonly suctionPressure: number | null;
  readonly dischargePressure: number | null;
  /** In the order of the outlets of the system. */
  readonly outletFlows: readonly number[];
}

/** What one metre of the loop's water weighs [Pa/m]. */
export const pressurePerHead = ({ water }: CompiledLoop): number => water.density * GRAVITY;

/**
 * The duty of the installed pumps at a setting [%], with the pressures just before and behind them at their level:
 * p_s = rho g (-pumpElevation - suction loss - v_s^2/2g), p_d = rho g (-pumpElevation - suction loss + H - v_d^2/2g), the velocities
 * those at the gauges, 0 where their bores are not stated.
 * Null where no water moves. Throws `SolveFailure`.
 */
export function predictedAt({ loop, pump, count }: Station, setting: number): Predicted | null {
  const duty = dutyPoint(loop, pumpAtSetting(pump, { setting, count }));
  if (duty.flow <= 0) return null;
  const perHead = pressurePerHead(loop);
  const before = -loop.entered.pumpElevation - duty.suctionLoss;
  const velocity = velocityHeads(loop.entered.gauges, duty.flow);
  const isKnown = loop.network !== null;
  return {
    flow: duty.flow,
    head: duty.head,
    power: duty.power,
    suctionPressure: isKnown ? perHead * (before - velocity.suction) : null,
    dischargePressure: isKnown ? perHead * (before + duty.head - velocity.discharge) : null,
    outletFlows: duty.outletFlows,
  };
}

/** Settings solved for: more than most grids have; fewer on loops that take long to solve. */
const SETTINGS_SOLVED = { most: 200, least: 5, branches: 20_000 } as const;

/** Settings that are solved for in about a second. */
export function settingsMost({ loop: { network } }: Station): number {
  const fitting = Math.floor(SETTINGS_SOLVED.branches / (network?.branches.length ?? 1));
  return Math.max(SETTINGS_SOLVED.least, Math.min(SETTINGS_SOLVED.most, fitting));
}

/** Predictions of the most frequent settings, as many as are solved in time; the others have none. */
export function predictions(
  station: Station,
  settings: readonly number[],
): ReadonlyMap<number, Predicted | null> {
  const counts = new Map<number, number>();
  for (const setting of settings) counts.set(setting, (counts.get(setting) ?? 0) + 1);
  const chosen = [...counts].toSorted(([, a], [, b]) => b - a).slice(0, settingsMost(station));
  return new Map(chosen.map(([setting]) => [setting, predictedAt(station, setting)]));
}
