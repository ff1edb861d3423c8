/** Finds what runs back into the basin of a return system when the power fails. */
import type { Loop } from '../loop/loop.ts';
import { pipeVolume } from '../loop/pipe-volume.ts';

export interface DrainBack {
  /** Water that runs back: the tank's down to the siphon break, and the discharge pipes' [m3]. */
  readonly volume: number;
  /** What the basin still holds above its running level [m3]; null where no basin is entered. */
  readonly room: number | null;
  /** Whether the volume is more than the room; null where no basin is entered. */
  readonly floods: boolean | null;
  /** The deepest siphon break [m] whose drain-back the basin holds, 0 where even the pipes are too much; null without a basin. */
  readonly deepestSiphonBreak: number | null;
}

/**
 * Drain-back volume = tank.area x siphonBreakDepth + volume of the discharge pipes, against basin.area x basin.freeboard.
 *
 * Null where the siphon break or the tank's surface is not entered. On the safe side check valves are not relied upon, and
 * all of the discharge counts, also what lies below the basin's surface; a loop known by its system curve has no pipes.
 */
export function drainBack(loop: Loop): DrainBack | null {
  const { siphonBreakDepth, basin } = loop;
  const surface = loop.tank?.area;
  if (siphonBreakDepth === undefined || surface === undefined) return null;
  const pipes = 'discharge' in loop ? pipeVolume(loop.discharge) : 0;
  const volume = surface * siphonBreakDepth + pipes;
  if (basin === undefined) return { volume, room: null, floods: null, deepestSiphonBreak: null };
  const room = basin.area * basin.freeboard;
  const deepestSiphonBreak = Math.max(0, (room - pipes) / surface);
  return { volume, room, floods: volume > room, deepestSiphonBreak };
}
