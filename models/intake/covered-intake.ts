/** Finds the pull of a single intake that something covers wholly. */

import { npshAvailable } from '../duty/npsh.ts';
import type { IntakeScreen } from '../loop/loop.ts';
import type { CompiledLoop } from '../network/compiled-loop.ts';
import { GRAVITY } from '../physics/gravity.ts';
import type { PumpAtSetting } from '../pump/pump-at-setting.ts';

/** How a covered intake pulls. */
export interface CoveredIntake {
  /** Head below that of the water around [m]. */
  readonly suctionHead: number;
  /** Force that holds what covers the intake [N]. */
  readonly force: number;
}

/**
 * Suction head and force on what covers a loop's one intake: no water moves, so that the pump pulls with its shutoff
 * head, but not below the vapour pressure; force = rho g H x the area covered.
 *
 * The area is the bore of the first suction pipe where the intake is bare, else the largest side that one body can
 * cover: width x length of a flat screen, diameter x length of a cylinder, the largest side of a box. The static head
 * that the tank above may hold against the pump is left out, on the safe side.
 * @param site elevation [m] above sea level.
 * @returns suction head [m], force [N]; null where several screens share the flow, so that one covered leaves the
 *   others open, and where no area is known.
 */
export function coveredIntake(
  model: CompiledLoop,
  pump: PumpAtSetting,
  { elevation }: { readonly elevation: number },
): CoveredIntake | null {
  const area = coverableArea(model);
  if (area === null) return null;
  const { entered: loop, water } = model;
  const { density } = water;
  const depth = loop.intake?.depth ?? 0;
  // What water can be pulled by at the intake, which lies below the surface by its depth, before it boils.
  const untilBoiling = npshAvailable({
    elevation,
    temperature: loop.water.temperature,
    density,
    pumpElevation: -depth,
    suctionLoss: 0,
  });
  const suctionHead = Math.max(0, Math.min(pump.headAt(0).head, untilBoiling));
  return { suctionHead, force: density * GRAVITY * suctionHead * area };
}

function coverableArea({ entered: loop, network }: CompiledLoop): number | null {
  const screen = loop.intake?.screen;
  if (screen !== undefined) return screen.count > 1 ? null : largestSide(screen);
  const bore = network?.intakeBore ?? null;
  return bore === null ? null : (Math.PI / 4) * bore ** 2;
}

function largestSide(screen: IntakeScreen): number {
  switch (screen.shape) {
    case 'cylinder':
      return screen.diameter * screen.length;
    case 'flat':
      return screen.width * screen.length;
    case 'box':
      return Math.max(
        screen.width * screen.length,
        screen.width * screen.height,
        screen.length * screen.height,
      );
  }
}
