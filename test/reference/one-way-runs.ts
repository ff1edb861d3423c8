/** Loops with check valves and with outlets in air, and the duties of pumps on them. */
import type { Branch, Outlet, PipeworkLoop, RunElement } from '../../models/loop/loop.ts';
import type { Pump } from '../../models/pump/pump.ts';

const LITRE_PER_HOUR = 1 / 3.6e6;

const pipe = (millimetres: number, length: number): RunElement => ({
  pipe: { insideDiameter: millimetres / 1000 },
  length,
});

const FRESH = { temperature: 20, salinity: 0 };
const SEA = { temperature: 25, salinity: 35 };

/** A pump of shutoff head [m] x (1 - (Q/zero)^2), flows in L/h. */
const parabola = (shutoff: number, zero: number, flows: readonly number[]): Pump => ({
  name: 'Inline 60',
  headPoints: flows.map((flow) => ({
    flow: flow * LITRE_PER_HOUR,
    head: shutoff * (1 - (flow / zero) ** 2),
    setting: 100,
  })),
  powerPoints: [{ setting: 100, power: 300 }],
  settings: { min: 30, max: 100, step: 1 },
  standbyPower: 0,
});

const PUMP_E = parabola(6, 10_000, [0, 2000, 4000, 6000, 8000, 9000]);
const PUMP_W = parabola(7, 14_000, [0, 2800, 5600, 8400, 11_200, 12_600]);

interface Duty {
  readonly title: string;
  readonly loop: PipeworkLoop;
  readonly pump: Pump;
  readonly setting: number;
  /** By outlet [L/h]. */
  readonly outlets: readonly number[];
  /** [m]; undefined: not worked out. */
  readonly head?: number;
  readonly tolerance: number;
  readonly source: string;
}

const SEPARATE =
  'calculated apart for pipes of 0.0015 mm roughness, friction by Colebrook and White, K = n fT of the check valves';

const loopOf = (
  water: PipeworkLoop['water'],
  parts: Pick<PipeworkLoop, 'staticHead' | 'suction' | 'discharge'>,
): PipeworkLoop => ({
  name: 'Kelp flume',
  water,
  pumpElevation: 0,
  frictionMultiplier: 1,
  intake: { lossCoefficient: 0.5 },
  ...parts,
});

const CHECK: RunElement = { valve: 'check-swing' };

const twoBranches = (
  staticHead: number,
  valves: readonly RunElement[],
  c: Partial<Outlet> = {},
): PipeworkLoop =>
  loopOf(FRESH, {
    staticHead,
    suction: [pipe(40, 1)],
    discharge: {
      run: [pipe(40, 2)],
      branches: [
        { run: [pipe(25, 4)], outlet: { name: 'a', staticHead: -1 } },
        { run: [pipe(20, 3), ...valves], outlet: { name: 'c', ...c } },
      ],
    },
  });

const CLEAR: RunElement = { valve: 'check-swing-clear' };

/** A low outlet at 0.4 m, and a high one; `highestElevation` is that of the root. */
export const lowAndHigh = (high: Branch, highestElevation?: number): PipeworkLoop =>
  loopOf(SEA, {
    staticHead: 1.6,
    suction: [pipe(45, 1.5)],
    discharge: {
      run: [pipe(45, 2.5)],
      branches: [{ run: [pipe(28, 5)], outlet: { name: 'low', staticHead: -1.2 } }, high],
      highestElevation,
    },
  });

const checked: Branch = { run: [pipe(22, 2), CLEAR], outlet: { name: 'high' } };
const open: Branch = { run: [pipe(22, 2)], outlet: { name: 'high' } };
/** Into air at 2.4 m. */
export const raised: Branch = { run: [pipe(22, 2)], outlet: { name: 'high', staticHead: 0.8 } };

const ofE = (
  title: string,
  loop: PipeworkLoop,
  [setting, ...outlets]: readonly [number, ...number[]],
): Duty => ({ title, loop, pump: PUMP_E, setting, outlets, tolerance: 1e-4, source: SEPARATE });

const ofW = (
  title: string,
  loop: PipeworkLoop,
  [setting, ...outlets]: readonly [number, ...number[]],
  head?: number,
): Duty => ({
  ...{ title, loop, pump: PUMP_W, setting, outlets, tolerance: 1e-4, source: SEPARATE },
  ...(head === undefined ? {} : { head }),
});

/** Tolerances relative; a flow of 0 is exact. */
export const ONE_WAY_DUTIES: readonly Duty[] = [
  ofE('a check valve that closes', twoBranches(2, [CHECK]), [55, 2391.4, 0]),
  ofE('no check valve', twoBranches(2, []), [55, 2961.62, -1368.87]),
  ofE('a check valve that opens', twoBranches(2, [CHECK]), [100, 5233.9, 1739.04]),
  ofE('no check valve', twoBranches(2, []), [100, 5060.22, 2034.9]),
  ofE('a check valve as a fitting', twoBranches(2, [{ fitting: 'check-swing' }]), [55, 2391.4, 0]),
  ofE('two check valves', twoBranches(2, [CHECK, { valve: 'foot-hinged' }]), [55, 2391.4, 0]),
  ofE('an outlet in air', twoBranches(1.4, [], { staticHead: 0.6 }), [55, 3197.08, 0]),
  ofE(
    'an outlet under water',
    twoBranches(1.4, [], { staticHead: 0.6, exit: 'submerged' }),
    [55, 3925.98, -1685.93],
  ),
  ofE('an outlet in air', twoBranches(1.4, [], { staticHead: 0.6 }), [100, 5643.77, 1681.33]),
  ofE(
    'an outlet under water',
    twoBranches(1.4, [], { staticHead: 0.6, exit: 'submerged' }),
    [100, 5643.77, 1681.33],
  ),
  ofW('a high branch behind a check valve', lowAndHigh(checked), [42, 3027.18, 0], 0.907521),
  ofW('a high branch behind a check valve', lowAndHigh(checked), [80, 5974.61, 1924.56], 2.25154),
  ofW('a high branch', lowAndHigh(open), [42, 3887.11, -2366.26]),
  ofW('a high branch', lowAndHigh(open), [80, 5862.84, 2126.6]),
  ofW('a high branch into air', lowAndHigh(raised), [42, 3027.18, 0], 0.907521),
  ofW('a high branch into air', lowAndHigh(raised), [80, 6719.61, 508.931]),
];

/** The loop at which the head needed at no flow depends on the exit of the high outlet: at 0.4 and 2.0 m. */
export const atRest = (exit: Outlet['exit']): PipeworkLoop => twoBranches(1.4, [], { staticHead: 0.6, exit });

/** Pump W at 42 % on `lowAndHigh(raised)`: head [m] at the node before the outlet at 2.4 m. */
export const DRY = {
  setting: 42,
  head: 0.86934,
  level: 2.4,
  pump: PUMP_W,
  tolerance: 1e-4,
  source: SEPARATE,
};
