/** An invented pump that passes a flow at a head at some speed below its full one. */
import type { HeadPoint, PowerPoint, Pump } from '../../models/pump/pump.ts';
import { speedRatio } from '../reference/independent/speed.ts';
import type { Draw } from './draw.ts';

interface Target {
  /** m3/s and m, reached at some setting inside the range. */
  readonly flow: number;
  readonly head: number;
}

interface Nature {
  readonly draw: Draw;
  readonly ratioAt: (setting: number) => number;
  /** Full-speed flow and head of the target, and shape of the curve around it. */
  readonly flow: number;
  readonly head: number;
  readonly shutoff: number;
  readonly straightness: number;
  readonly reach: number;
}

/** Falling quadratic through (0, shutoff) and (1, 1), in shares of the target. */
const headShare = ({ shutoff, straightness }: Nature, x: number): number =>
  shutoff - (shutoff - 1) * (straightness * x + (1 - straightness) * x ** 2);

function headPoints(nature: Nature): readonly HeadPoint[] {
  const { draw, flow, head, ratioAt, reach } = nature;
  const row = (setting: number, count: number, most: number): HeadPoint[] =>
    Array.from({ length: count }, (_, index) => {
      const x = (most * index) / (count - 1);
      const ratio = ratioAt(setting);
      const noise = 1 + draw.between(-0.006, 0.006);
      return { flow: x * flow * ratio, head: headShare(nature, x) * head * ratio ** 2 * noise, setting };
    });
  const full = row(100, draw.whole(4, 9), reach);
  return draw.chance(0.4) ? [...full, ...row(draw.pick([60, 75]), draw.whole(3, 5), 0.9 * reach)] : full;
}

function powerPoints(nature: Nature, standby: number): readonly PowerPoint[] {
  const { draw, flow, head, ratioAt, reach } = nature;
  const best = draw.chance(0.07) ? draw.between(0.9, 1.3) : draw.between(0.3, 0.7);
  const full = (1010 * 9.8 * flow * head) / best;
  const exponent = draw.between(2.7, 3.2);
  const point = (setting: number, x: number | undefined): PowerPoint => {
    const ratio = ratioAt(setting);
    const shape = 0.6 + 0.4 * (x ?? 1);
    const power = standby + full * shape * ratio ** exponent * (1 + draw.between(-0.01, 0.01));
    return x === undefined ? { setting, power } : { setting, power, flow: x * flow * ratio };
  };
  const spread = (count: number): number[] =>
    Array.from({ length: count }, (_, index) => (0.1 + index / count) * Math.min(1, reach));
  switch (draw.whole(0, 3)) {
    case 0:
      return [point(100, draw.chance(0.5) ? 1 : undefined)];
    case 1:
      return [point(100, undefined), point(70, undefined), point(45, undefined)];
    case 2:
      return [...spread(draw.whole(3, 4)).map((x) => point(100, x)), point(60, undefined)];
    default:
      return [...spread(draw.whole(5, 7)).map((x) => point(100, x)), ...spread(3).map((x) => point(55, x))];
  }
}

/** Settings from 30 or so to 100; full speed is always setting 100. */
export function randomPump(draw: Draw, target: Target): Pump {
  const settings = { min: draw.pick([20, 30, 32]), max: 100, step: draw.pick([1, 1, 2.5, 5, 7]) };
  const speedMap = draw.chance(0.3)
    ? [
        { setting: settings.min, speed: settings.min + draw.between(2, 12) },
        { setting: 55, speed: draw.between(50, 62) },
        { setting: 100, speed: 100 },
      ]
    : undefined;
  const standbyPower = draw.chance(0.7) ? draw.between(0.5, 4) : 0;
  const bare = {
    name: 'Inline 60',
    headPoints: [],
    powerPoints: [],
    settings,
    standbyPower,
    ...(speedMap ? { speedMap } : {}),
  };
  const reached = draw.between(0.5, 0.95);
  const flow = target.flow / reached;
  const nature: Nature = {
    draw,
    ratioAt: (setting) => speedRatio(bare, setting),
    flow,
    head: target.head / reached ** 2,
    shutoff: draw.between(1.15, 1.8),
    straightness: draw.between(0, 0.5),
    reach: draw.between(0.9, 1.35),
  };
  const limits = draw.chance(0.3)
    ? { flowLimits: { min: flow * draw.between(0.1, 0.6), max: flow * draw.between(0.8, 1.4) } }
    : {};
  return {
    ...bare,
    headPoints: headPoints(nature),
    powerPoints: powerPoints(nature, standbyPower),
    ...limits,
  };
}
