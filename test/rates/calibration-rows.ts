/** Rates at which calibrations hold, and are refused. */
import { calibrateLoop, type LoopCalibration, stationFor } from '../../models/calibration/calibrate-loop.ts';
import { prediction } from '../../models/calibration/prediction.ts';
import { type Gauge, rowCollector } from '../../models/calibration/row-collector.ts';
import type { Factors } from '../../models/pump/factors.ts';
import { expectValue } from '../curves/expect-value.ts';
import { normals } from './random.ts';
import { atLeast, atMost, type RateRow, type Size, seeds, stated } from './row.ts';
import { BANK, LIFTED, type Site, stationAt } from './stations.ts';

/** One standard deviation of what is true of what was entered, and of the gain of a meter. */
const TRUE = { friction: 0.25, head: 0.03, power: 0.05, gain: 0.02 } as const;
const LIMITS = { intervals: 0.83, feasible: 0.9, slip: 0, refused: 0.75 } as const;

interface Trial {
  readonly site: Site;
  readonly measures: readonly ('flow' | 'power' | 'head')[];
  readonly settings: readonly number[];
  readonly each: number;
  readonly scatter: number;
  /** One flow is entered in US gallons. */
  readonly slip?: boolean;
}

const plain: Trial = {
  site: BANK,
  measures: ['flow', 'power'],
  settings: [60, 80, 100],
  each: 4,
  scatter: 0.02,
};
const separate: Trial = { ...plain, measures: ['flow', 'power', 'head'] };
const lifted: Trial = { ...separate, site: LIFTED, settings: [80, 90, 100] };

const gaugeAt = (measure: Gauge['measure'], setting: number, outlet: string | null = null): Gauge => ({
  ...{ measure, setting, outlet, shut: [], zeroFlow: false },
});

interface Tried {
  readonly truth: Factors;
  readonly found: LoopCalibration;
  /** The flow as it is, and as it is with factors [m3/s]. */
  readonly flowAt: (factors: Factors) => number;
  /** The smallest margin at a setting. */
  readonly marginAt: (setting: number, factors: Factors) => number;
}

function tried({ site, measures, settings, each, scatter, slip = false }: Trial, seed: number): Tried {
  const normal = normals(seed);
  const near = (deviation: number) => Math.exp(deviation * normal());
  const truth: Factors = { friction: near(TRUE.friction), head: near(TRUE.head), power: near(TRUE.power) };
  const gains = { flow: near(TRUE.gain), power: near(TRUE.gain), head: near(TRUE.gain) };
  const installation = stationAt(site);
  const predict = prediction(installation);
  const collector = rowCollector(stationFor(installation));
  for (const [place, setting] of settings
    .flatMap((one) => Array.from({ length: each }, () => one))
    .entries()) {
    const read = (measure: (typeof measures)[number]) =>
      measures.includes(measure)
        ? predict(gaugeAt(measure, setting), truth) *
          gains[measure] *
          near(measure === 'power' ? Math.min(0.01, scatter) : scatter)
        : undefined;
    const [flow, power, head] = [read('flow'), read('power'), read('head')];
    const gallons = slip && place === 1 ? 3.785 : 1;
    collector.add({
      time: place,
      setting,
      power,
      head,
      flow: flow === undefined ? undefined : flow / gallons,
    });
  }
  const { rows } = collector.rows();
  const found = expectValue(calibrateLoop({ installation, rows, meters: [], setting: site.setting }));
  const asked = installation.loop.system.outlets.filter(({ requiredFlow }) => (requiredFlow ?? 0) > 0);
  return {
    ...{ truth, found },
    flowAt: (factors) => predict(gaugeAt('flow', site.setting), factors),
    marginAt: (setting, factors) =>
      Math.min(
        ...asked.map(
          ({ name, requiredFlow }) =>
            predict(gaugeAt('outletFlow', setting, name), factors) / (requiredFlow ?? 1) - 1,
        ),
      ),
  };
}

/** What a parameter would be were the readings exact: of the ratio the friction that gives the true flow at the head as entered. */
function trueValue({ truth, flowAt }: Tried, name: LoopCalibration['parameters'][number]['name']): number {
  if (name !== 'frictionOverHead') return truth[name];
  const flow = flowAt(truth);
  let [low, high] = [0.02, 50];
  for (let i = 0; i < 50; i += 1) {
    const middle = Math.sqrt(low * high);
    if (flowAt({ ...truth, head: 1, friction: middle }) > flow) low = middle;
    else high = middle;
  }
  return low;
}

/** Whether the lowest setting that serves in the worst case serves the true loop; null where none serves. */
function isFeasible({ truth, found, marginAt }: Tried): boolean | null {
  const worst = { ...found.factors, ...found.worstCase };
  for (let setting = 30; setting <= 100; setting += 1) {
    if (marginAt(setting, worst) >= 0) return marginAt(setting, truth) >= -1e-9;
  }
  return null;
}

export function calibrationRows(size: Size): readonly RateRow[] {
  const all = [plain, separate, lifted].flatMap((trial) => seeds(size).map((seed) => tried(trial, seed)));
  const applied = all.filter(({ found }) => found.refusal === null);
  const slipped = seeds(size).map((seed) => tried({ ...plain, each: 2, slip: true }, seed));
  const scattered = seeds(size).map((seed) => tried({ ...plain, each: 2, scatter: 0.15 }, seed));
  return [
    atLeast(
      'meters 2 % off: intervals hold',
      applied.flatMap((one) =>
        one.found.parameters.map(({ name, interval }) => {
          const value = trueValue(one, name);
          return interval.low <= value && value <= interval.high;
        }),
      ),
      LIMITS.intervals,
    ),
    atLeast(
      'meters 2 % off: worst case feasible',
      applied.flatMap((one) => isFeasible(one) ?? []),
      LIMITS.feasible,
    ),
    stated('meters 2 % off: refused', `${all.length - applied.length} of ${all.length}`),
    atMost('one slip of six: moved the factors by over 15 %', slipped.map(isMoved), LIMITS.slip),
    atLeast(
      'scatter of 15 % refused',
      scattered.map(({ found }) => found.refusal !== null),
      LIMITS.refused,
    ),
  ];
}

/** Where it is applied, by far more than meters and scatter do: 3.785 in one of six flows moves friction by half. */
function isMoved(one: Tried): boolean {
  const [ratio] = one.found.parameters;
  if (one.found.refusal !== null || ratio === undefined) return false;
  const off = Math.log(one.flowAt(one.found.factors) / one.flowAt(one.truth));
  return Math.abs(off) > Math.log(1.15);
}
