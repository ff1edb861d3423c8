/** Cautions about how a pump runs, starts and shares its work. */
import { describe, expect, it } from 'vitest';
import type { CautionCode } from '../../../models/cautions/catalogue.ts';
import { dutyCautions } from '../../../models/cautions/duty-cautions.ts';
import { dutyPoint } from '../../../models/duty/duty-point.ts';
import { DEFAULT_LIMITS } from '../../../models/loop/limits.ts';
import type { PipeworkLoop } from '../../../models/loop/loop.ts';
import type { Pump } from '../../../models/pump/pump.ts';
import { pumpAtSetting } from '../../../models/pump/pump-at-setting.ts';
import { canister, LITRE_PER_HOUR, loopOf, modelOf, outlet, pipe, pumpModelOf } from '../example-loops.ts';

const L = LITRE_PER_HOUR;

const headPoints = (points: readonly (readonly [number, number])[]): Pump['headPoints'] =>
  points.map(([flow, head]) => ({ flow: flow * L, head, setting: 100 }));

/** Best at 8485 L/h: draws the same at every flow, H = 6 - 4 (Q/12000)^2. */
const even: Pump = {
  ...canister,
  powerPoints: [2000, 6000, 10000].map((flow) => ({ setting: 100, power: 250, flow: flow * L })),
};
const drooping: Pump = {
  ...canister,
  headPoints: headPoints([
    [0, 4],
    [3000, 4.55],
    [6000, 4.6],
    [9000, 4.1],
    [12000, 3],
  ]),
};
/** Falls first, rises to a second summit, then falls for good. */
const valleyed: Pump = {
  ...canister,
  headPoints: headPoints([
    [0, 4],
    [1500, 3.69],
    [3000, 3.71],
    [4500, 3.93],
    [6000, 4.18],
    [7500, 4.31],
    [9000, 4.15],
    [10500, 3.52],
    [12000, 2.3],
  ]),
};

interface Case {
  readonly pump?: Pump;
  readonly staticHead?: number;
  readonly nozzleDiameter?: number;
  readonly count?: number;
  readonly checkValves?: boolean | undefined;
  readonly discharge?: PipeworkLoop['discharge'];
}

function codesOf(facts: Case): readonly CautionCode[] {
  const { pump: document = canister, count = 1, nozzleDiameter = 0.025, checkValves, staticHead = 0 } = facts;
  const installed = {
    pump: 'some',
    count,
    setting: 100,
    ...(checkValves === undefined ? {} : { checkValves }),
  };
  const discharge = facts.discharge ?? outlet('jet', { nozzleDiameter }, [pipe(0.05, 1)]);
  const loop = modelOf(loopOf(discharge, { staticHead, installed }));
  const pump = pumpModelOf(document);
  const duty = dutyPoint(loop, pumpAtSetting(pump, { setting: 100, count }));
  const context = { loop, pump, limits: DEFAULT_LIMITS, elevation: 0 };
  return dutyCautions(context, duty).map(({ code }) => code);
}

const split = (fitting: string): PipeworkLoop['discharge'] => ({
  run: [pipe(0.05, 1)],
  branches: [outlet('a', {}, [pipe(0.05, 1)]), outlet('b', { nozzleDiameter: 0.008 }, [{ fitting }])],
});

describe('the cautions of a pump', () => {
  it.each<[CautionCode, string, Case]>([
    ['off-preferred-region', 'throttled far back', { pump: even, nozzleDiameter: 0.01 }],
    ['off-preferred-region', 'run out', { pump: even, nozzleDiameter: 0.04 }],
    ['does-not-start', 'drooping under a lift', { pump: drooping, staticHead: 4.3 }],
    ['dead-head', 'drooping under a lift', { pump: drooping, staticHead: 4.3 }],
    [
      'several-duties',
      'with a valley in its curve',
      { pump: valleyed, staticHead: 3.8, nozzleDiameter: 0.06 },
    ],
    ['check-valves-assumed', 'beside another, valves not stated', { count: 2 }],
    ['idle-pump-backflow', 'beside another without valves', { count: 2, checkValves: false }],
    ['tee-understated', 'on a tee by Reynolds number', { discharge: split('tee-branch-two-k') }],
  ])('give %s to one %s', (code, _, facts) => {
    expect(codesOf(facts)).toContain(code);
  });

  it.each<[CautionCode, string, Case]>([
    ['off-preferred-region', 'near its best point', { pump: even, nozzleDiameter: 0.021 }],
    ['off-preferred-region', 'whose best point is not known', { nozzleDiameter: 0.01 }],
    ['off-preferred-region', 'that moves nothing', { pump: even, staticHead: 7 }],
    ['does-not-start', 'drooping without a lift', { pump: drooping }],
    ['does-not-start', 'that never lifts so high', { pump: drooping, staticHead: 5 }],
    ['several-duties', 'drooping without a lift', { pump: drooping }],
    ['several-duties', 'with a falling curve', {}],
    ['check-valves-assumed', 'alone', {}],
    ['check-valves-assumed', 'beside another, valves stated', { count: 2, checkValves: true }],
    ['idle-pump-backflow', 'alone without a valve', { checkValves: false }],
    ['idle-pump-backflow', 'beside another with valves', { count: 2, checkValves: true }],
    ['split-loss-missing', 'on a tee by Reynolds number', { discharge: split('tee-run-three-k') }],
  ])('do not give %s to one %s', (code, _, facts) => {
    expect(codesOf(facts)).not.toContain(code);
  });
});
