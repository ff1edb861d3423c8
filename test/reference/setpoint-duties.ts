/** Holds the duty at every setting of a grid against each limit, by formulas apart from those of the service. */
import { dutyPoint } from '../../models/duty/duty-point.ts';
import type { CompiledLoop } from '../../models/network/compiled-loop.ts';
import type { SystemState } from '../../models/network/system.ts';
import { pumpAtSetting } from '../../models/pump/pump-at-setting.ts';
import type { PumpModel } from '../../models/pump/pump-model.ts';
import { settingsGrid, speedRatio } from './independent/speed.ts';
import { available, required } from './independent-complementarity/npsh.ts';
import { openArea } from './independent-complementarity/screen.ts';
import type { Row } from './setpoint-scan.ts';

interface Scanning {
  readonly loop: CompiledLoop;
  readonly pump: PumpModel;
  readonly count: number;
  /** [m] */
  readonly elevation: number;
}

/** Equal flows: 1e-9, as the rule of a selection states. */
const EQUAL = 1e-9;
/** 0.5 ft/s (40 CFR 125.84), half of the screen clogged. */
const SCREEN = { velocity: 0.1524, clogged: 0.5 };
const EFFICIENCY = 0.85;
const REACH = 1.1;

/** All rows of the grid, by rising setting. */
export function rowsOf(scanning: Scanning): readonly Row[] {
  const { loop, pump, count } = scanning;
  let near: SystemState | undefined;
  return settingsGrid(pump.entered.settings).map((setting) => {
    const duty = dutyPoint(loop, pumpAtSetting(pump, { setting, count }), near);
    near = duty.state ?? near;
    const movesWater = duty.flow > 0;
    const { flow, outletFlows } = duty;
    return { setting, movesWater, flow, outletFlows, broken: brokenBy(scanning, duty) };
  });
}

type Point = ReturnType<typeof dutyPoint>;

function brokenBy({ loop, pump, count, elevation }: Scanning, duty: Point): ReadonlySet<string> {
  const { entered } = pump;
  const { outlets } = loop.system;
  const flowOf = (place: number) => duty.outletFlows[place] ?? Number.NaN;
  const short = outlets.some(
    ({ requiredFlow }, place) =>
      requiredFlow !== null &&
      (flowOf(place) < requiredFlow * (1 - EQUAL) || (requiredFlow > 0 && duty.flow === 0)),
  );
  const reduced = duty.flow / count / duty.speedRatio;
  const largest = Math.max(...entered.headPoints.map((point) => pointAtFullSpeed(pump, point)));
  const screen = loop.entered.intake?.screen;
  const { min = 0, max = Number.POSITIVE_INFINITY } = entered.flowLimits ?? {};
  const broken = new Map<string, boolean>([
    ['efficiency-impossible', duty.efficiency > EFFICIENCY],
    ['not-enough-head', short],
    ['outside-data', reduced > REACH * largest * (1 + EQUAL)],
    [
      'outlet-above-maximum',
      outlets.some(({ maximumFlow }, place) => flowOf(place) > (maximumFlow ?? Infinity) * (1 + EQUAL)),
    ],
    [
      'screen-velocity',
      screen !== undefined &&
        duty.flow > SCREEN.velocity * openArea(screen) * (1 - SCREEN.clogged) * (1 + EQUAL),
    ],
    ['pump-below-minimum', reduced < min * (1 - EQUAL)],
    ['pump-above-maximum', reduced > max * (1 + EQUAL)],
    ['npsh', lacksNpsh()],
  ]);
  return new Set([...broken].flatMap(([reason, is]) => (is ? [reason] : [])));

  function lacksNpsh(): boolean {
    const points = entered.npshPoints ?? [];
    if (points.length === 0) return false;
    const { density } = loop.water;
    const { pumpElevation, water } = loop.entered;
    const suction = { density, pumpElevation, loss: duty.suctionLoss, velocityHead: 0 };
    const there = available(suction, { temperature: water.temperature, elevation });
    return there < required(points, { ratio: duty.speedRatio, flow: duty.flow / count });
  }
}

/** Flow [m3/s] of an entered point, by the affinity laws at the speed of its setting. */
function pointAtFullSpeed(
  { entered }: PumpModel,
  { flow, setting }: { readonly flow: number; readonly setting: number },
): number {
  return flow / speedRatio(entered, setting);
}
