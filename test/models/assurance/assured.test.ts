/** Settings chosen for the worst case of a calibration serve the loop as it truly is. */
import { describe, expect, it } from 'vitest';
import type { Assurance } from '../../../models/assurance/assure-loop.ts';
import { choose } from '../../../models/assurance/choose-assured.ts';
import {
  type AppliedCalibration,
  calibratedAssurance,
  calibratedLoop,
  fitOnLoop,
} from '../../../models/calibration/applied.ts';
import { DEFAULT_LIMITS } from '../../../models/loop/limits.ts';
import type { Loop } from '../../../models/loop/loop.ts';
import { expectValue } from '../../curves/expect-value.ts';
import {
  calibrated,
  curveLoop,
  fitted,
  modelled,
  type Noise,
  normals,
  pipedLoop,
  readings,
  type Truth,
  trueDuty,
} from '../calibration/synthetic.ts';
import { canister } from '../example-loops.ts';

const NOISE: Noise = { flow: 0.03, head: 0.02, power: 0.01 };
const RUNS = 100;

const settingFor = (
  loop: Loop,
  pump: ReturnType<typeof fitted>,
  assurance: Assurance | null,
): number | undefined => {
  const running = { price: 0.2, hoursPerDay: 24, elevation: 0 };
  const question = {
    candidates: [{ pump, count: 1 }],
    balancing: 'as-built',
    limits: DEFAULT_LIMITS,
  } as const;
  const choice = expectValue(choose(modelled(loop), { ...question, running, assurance }));
  return choice.selection.ranking[0]?.duty.setting;
};

const serves = (loop: Loop, truth: Truth, setting: number): boolean => {
  const { outlets } = modelled(loop).system;
  const { outletFlows } = trueDuty(loop, truth, setting);
  return outlets.every(({ requiredFlow }, place) => (outletFlows[place] ?? 0) >= (requiredFlow ?? 0));
};

function applied(
  loop: Loop,
  truth: Truth,
  { seed, kinds }: { seed: number; kinds: readonly (keyof Noise)[] },
) {
  const measured = readings(
    { loop, truth, settings: [60, 70, 80, 90], times: 4 },
    { noise: NOISE, normal: normals(seed), kinds },
  );
  const { parameters, factors, badEnd, used } = calibrated({ loop }, measured);
  const calibration: AppliedCalibration = {
    ...{ parameters, factors, badEnd, readings: used, from: 0, to: 1, modelVersion: '1' },
    pump: { id: 'p1', fit: fitted(canister).fit },
  };
  return calibration;
}

interface Served {
  readonly assured: number;
  readonly asEntered: number;
}

/** Shares of seeded runs in which the true loop is served. */
function served(loop: Loop, kinds: readonly (keyof Noise)[]): Served {
  const plain = settingFor(loop, fitted(canister), null);
  if (plain === undefined) throw new Error('no setting serves the loop as entered');
  let [assured, asEntered] = [0, 0];
  for (let seed = 1; seed <= RUNS; seed += 1) {
    const normal = normals(1000 + seed);
    const truth = { friction: 1.25 + 0.08 * normal(), head: 0.95 + 0.015 * normal(), power: 1 };
    const calibration = applied(loop, truth, { seed, kinds });
    const pump = fitted(canister);
    const setting = settingFor(
      calibratedLoop(loop, calibration),
      { ...pump, fit: fitOnLoop({ id: 'p1', fit: pump.fit }, calibration) },
      calibratedAssurance(calibration),
    );
    if (setting !== undefined && serves(loop, truth, setting)) assured += 1;
    if (serves(loop, truth, plain)) asEntered += 1;
  }
  return { assured: assured / RUNS, asEntered: asEntered / RUNS };
}

describe('the setting chosen with the assurance of a calibration', () => {
  it.each([
    { what: 'flows alone, a system curve', loop: curveLoop(), kinds: ['flow'] as const },
    { what: 'heads besides, a system curve', loop: curveLoop(), kinds: ['flow', 'head'] as const },
    { what: 'a static head', loop: curveLoop(0.5), kinds: ['flow', 'head'] as const },
    { what: 'flows alone, pipework', loop: pipedLoop(), kinds: ['flow'] as const },
    { what: 'heads besides, pipework', loop: pipedLoop(), kinds: ['flow', 'head'] as const },
  ])(
    'serves the true loop in at least 95 % of seeded runs, where that as entered serves it in none: $what',
    { timeout: 180_000 },
    ({ loop, kinds }) => {
      const shares = served(loop, kinds);
      expect(shares.assured).toBeGreaterThanOrEqual(0.95);
      expect(shares.asEntered).toBeLessThanOrEqual(0.02);
    },
  );

  it('is never below that without', () => {
    const loop = curveLoop();
    const truth = { friction: 1.3, head: 0.95, power: 1 };
    for (let seed = 1; seed <= 10; seed += 1) {
      const calibration = applied(loop, truth, { seed, kinds: ['flow', 'head'] });
      const pump = fitted(canister);
      const own = { ...pump, fit: fitOnLoop({ id: 'p1', fit: pump.fit }, calibration) };
      const entered = calibratedLoop(loop, calibration);
      const without = settingFor(entered, own, null) ?? Number.NaN;
      const assured = settingFor(entered, own, calibratedAssurance(calibration)) ?? Number.NaN;
      expect(assured).toBeGreaterThanOrEqual(without);
    }
  });
});
