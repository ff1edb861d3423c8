/** Invented loops and pumps with prices, screens, basins and whatever else users state of them. */
import { type Draw, drawsFrom, mulberry32 } from '../../random/draw.ts';
import { type RandomCase, randomCase } from '../../random-loop.ts';

export type Loop = RandomCase['loop'];
export type Pump = RandomCase['pump'];
export type Branch = Loop['discharge'];
export type RunElement = Branch['run'][number];
export type Outlet = NonNullable<Branch['outlet']>;
type Intake = NonNullable<Loop['intake']>;
type Screen = NonNullable<Intake['screen']>;

export interface Invented extends RandomCase {
  /** For what else the question needs. */
  readonly draw: Draw;
}

const LOOP_NAMES = ['Kelp flume', 'Nursery raceways', 'Touch pool', 'Seahorse bank'];
const PUMP_NAMES = ['Inline', 'Canister'];
/** Keeps these draws apart from those of the pipework. */
const FURNISHING = 0x5a3e0000;

function furnishedScreen(draw: Draw, screen: Screen): Screen {
  const { openFraction, count } = screen;
  if (draw.chance(0.2)) {
    return { shape: 'box', width: 0.2, height: 0.15, length: screen.length, openFraction, count };
  }
  if (draw.chance(0.3)) return { ...screen, slot: 0.002, pitch: 0.002 / openFraction };
  if (!draw.chance(0.3)) return screen;
  const { slot: _slot, ...face } = screen;
  const hole = draw.between(0.003, 0.006);
  const pitch = hole * Math.sqrt(Math.PI / (4 * openFraction));
  return { ...face, hole, pitch, pattern: 'square' };
}

const furnishedIntake = (draw: Draw, intake: Intake): Intake => ({
  ...intake,
  ...(intake.screen === undefined ? {} : { screen: furnishedScreen(draw, intake.screen) }),
  ...(draw.chance(0.3) ? { smallestAnimal: draw.between(0.001, 0.01) } : {}),
  ...(draw.chance(0.4) ? { reachable: draw.chance(0.5) } : {}),
});

const ofReturn = (draw: Draw): Partial<Loop> => ({
  basin: { area: draw.between(0.3, 3), freeboard: draw.between(0.05, 0.4) },
  ...(draw.chance(0.7) ? { siphonBreakDepth: draw.between(0.01, 0.2) } : {}),
  ...(draw.chance(0.5) ? { overflowCapacity: draw.between(1, 6) * 1e-3 } : {}),
});

function furnishedLoop(draw: Draw, loop: Loop, name: string): Loop {
  const depth = draw.between(0.4, 1.2);
  const { volume = 0 } = loop.tank ?? {};
  const tank = { volume, depth, area: volume / depth, width: draw.between(0.4, 1.5) };
  const { intake } = loop;
  return {
    ...loop,
    name,
    ...(intake === undefined ? {} : { intake: furnishedIntake(draw, intake) }),
    ...(volume > 0 && draw.chance(0.5) ? { tank } : {}),
    ...(loop.staticHead > 0 && draw.chance(0.7) ? ofReturn(draw) : {}),
    ...(draw.chance(0.15)
      ? {
          gauges: { suctionDiameter: draw.between(0.03, 0.06), dischargeDiameter: draw.between(0.025, 0.05) },
        }
      : {}),
  };
}

function furnishedPump(draw: Draw, pump: Pump, name: string): Pump {
  const largest = Math.max(...pump.headPoints.map(({ flow }) => flow));
  const npsh = draw.between(0.5, 4);
  return {
    ...pump,
    name,
    ...(draw.chance(0.3) ? { ratedSpeed: draw.pick([1450, 2900, 3000]) } : {}),
    ...(draw.chance(0.4)
      ? {
          npshPoints: [
            { flow: 0.4 * largest, head: npsh },
            { flow: 0.9 * largest, head: 1.8 * npsh },
          ],
        }
      : {}),
    ...(draw.chance(0.4) ? { grade: draw.pick(['1B', '1E', '1U', '2B', '2U', '3B'] as const) } : {}),
    ...(draw.chance(0.6) ? { mounting: draw.pick(['dry', 'submerged'] as const) } : {}),
    ...(draw.chance(0.4) ? { motorEfficiency: draw.between(0.5, 0.9) } : {}),
    ...(draw.chance(0.8) ? { price: draw.whole(90, 1500) } : {}),
    ...(draw.chance(0.7) ? { expectedLifeYears: draw.whole(3, 12) } : {}),
    ...(draw.chance(0.6)
      ? { failures: { count: draw.whole(0, 4), devices: draw.whole(5, 12), years: draw.whole(1, 4) } }
      : {}),
    ...(draw.chance(0.6)
      ? { service: { everyMonths: draw.whole(2, 18), minutes: draw.whole(10, 90), parts: draw.whole(0, 40) } }
      : {}),
  };
}

const cases = new Map<number, RandomCase>();

/** Kept, since to invent a case takes longer than to answer it. */
function caseOf(seed: number): RandomCase {
  const found = cases.get(seed) ?? randomCase({ seed, everyOutlet: seed % 2 === 0 });
  cases.set(seed, found);
  return found;
}

/** The same loop and pump for the same seed; each outlet has a requirement where the seed is even. */
export function invented(seed: number): Invented {
  const draw = drawsFrom(mulberry32(FURNISHING + seed));
  const { loop, pump, count } = caseOf(seed);
  return {
    draw,
    loop: furnishedLoop(draw, loop, `${draw.pick(LOOP_NAMES)} ${seed}`),
    pump: furnishedPump(draw, pump, `${draw.pick(PUMP_NAMES)} ${draw.whole(40, 900)}`),
    count,
  };
}

interface Scale {
  readonly name: string;
  readonly flow: number;
  readonly head: number;
}

/** A pump of another size with curves of the same shape, its power by flow times head. */
export function scaledPump(pump: Pump, { name, flow: times, head: higher }: Scale): Pump {
  const { flowLimits, npshPoints, standbyPower } = pump;
  const ofPower = (power: number) => standbyPower + (power - standbyPower) * times * higher;
  const ofLimit = (limit: number | undefined) => (limit === undefined ? undefined : limit * times);
  return {
    ...pump,
    name,
    headPoints: pump.headPoints.map((one) => ({ ...one, flow: one.flow * times, head: one.head * higher })),
    powerPoints: pump.powerPoints.map(({ flow, power, ...one }) => ({
      ...one,
      power: ofPower(power),
      ...(flow === undefined ? {} : { flow: flow * times }),
    })),
    flowLimits: flowLimits && { min: ofLimit(flowLimits.min), max: ofLimit(flowLimits.max) },
    npshPoints: npshPoints?.map(({ flow, head }) => ({ flow: flow * times, head })),
  };
}

export const outletsOf = (branch: Branch): readonly Outlet[] =>
  branch.outlet === undefined ? (branch.branches ?? []).flatMap(outletsOf) : [branch.outlet];

/** Trimming needs a requirement on every outlet. */
export const isTrimmable = ({ discharge }: Loop): boolean =>
  outletsOf(discharge).every(({ requiredFlow }) => requiredFlow !== undefined);

/** A setting of the pump's grid, at or below a share of the highest. */
export function settingNear({ settings: { min, max, step } }: Pump, share: number): number {
  return min + step * Math.max(0, Math.floor((share * max - min) / step));
}
