/** What a calibration in use does to a loop and its pump, and when it no longer does. */
import { describe, expect, it } from 'vitest';
import { headAt } from '../../../curves/head-curve.ts';
import { powerAt } from '../../../curves/power-law.ts';
import {
  type AppliedCalibration,
  calibratedAssurance,
  calibratedLoop,
  fitOnLoop,
} from '../../../models/calibration/applied.ts';
import { hydraulicsOf } from '../../../models/loop/hydraulics.ts';
import type { Loop } from '../../../models/loop/loop.ts';
import { pumpWithHead } from '../../../models/pump/pump-with-head.ts';
import { expectClose } from '../../expect-close.ts';
import { canister, pumpModelOf } from '../example-loops.ts';
import { curveLoop, pipedLoop } from './synthetic.ts';

const pump = pumpModelOf(canister);
const weaker = pumpModelOf({ ...canister, powerPoints: [{ setting: 100, power: 200 }] });

const CALIBRATION: AppliedCalibration = {
  parameters: [],
  factors: { friction: 1.3, head: 0.9, power: 1.1 },
  badEnd: { friction: 1.43, head: 0.81 },
  pump: { id: 'p1', fit: pump.fit },
  ...{ from: 0, to: 1, readings: 9, modelVersion: '1' },
};

describe('a calibration in use', () => {
  it('multiplies the friction of its loop, and leaves a loop without one as it is', () => {
    const loop = { ...pipedLoop(), frictionMultiplier: 1.2 };
    expectClose(calibratedLoop(loop, CALIBRATION).frictionMultiplier, 1.56, { relative: 1e-12 });
    expect(calibratedLoop(loop, null)).toBe(loop);
    expect(calibratedLoop(loop, undefined)).toBe(loop);
  });

  it('gives the same loop for the same two, so that it is compiled once', () => {
    const loop = pipedLoop();
    expect(calibratedLoop(loop, CALIBRATION)).toBe(calibratedLoop(loop, CALIBRATION));
    expect(calibratedLoop(loop, { ...CALIBRATION })).not.toBe(calibratedLoop(loop, CALIBRATION));
  });

  it('multiplies head and power of its own pump at every flow and speed', () => {
    const fit = fitOnLoop({ id: 'p1', fit: pump.fit }, CALIBRATION);
    for (const flow of [0, 1e-3, 3e-3, 5e-3]) {
      expectClose(headAt(fit.headCurve, flow), 0.9 * headAt(pump.fit.headCurve, flow), { relative: 1e-12 });
      const place = { flow, speedRatio: 0.7 };
      expectClose(powerAt(fit.powerLaw, place), 1.1 * powerAt(pump.fit.powerLaw, place), { relative: 1e-12 });
    }
  });

  it('leaves other pumps, and its own once its points have changed, as they are', () => {
    expect(fitOnLoop({ id: 'p2', fit: pump.fit }, CALIBRATION)).toBe(pump.fit);
    expect(fitOnLoop({ id: null, fit: pump.fit }, CALIBRATION)).toBe(pump.fit);
    expect(fitOnLoop({ id: 'p1', fit: weaker.fit }, CALIBRATION)).toBe(weaker.fit);
    expect(fitOnLoop({ id: 'p1', fit: pump.fit }, null)).toBe(pump.fit);
  });

  it('is plain JSON: kept and read back it does the same', () => {
    const kept: AppliedCalibration = JSON.parse(JSON.stringify(CALIBRATION));
    expect(fitOnLoop({ id: 'p1', fit: pump.fit }, kept)).toEqual(
      fitOnLoop({ id: 'p1', fit: pump.fit }, CALIBRATION),
    );
  });
});

describe('the bad end of a calibration', () => {
  it('is told over the calibrated loop and pump', () => {
    const { calibration } = calibratedAssurance(CALIBRATION);
    expectClose(calibration.friction, 1.1, { relative: 1e-12 });
    expectClose(calibration.head, 0.9, { relative: 1e-12 });
  });

  it('weakens the calibrated pump alone', () => {
    const { calibration } = calibratedAssurance(CALIBRATION);
    const pumpAt = pumpWithHead(calibration);
    const place = { setting: 100, count: 1 };
    const own = { ...pump, fit: fitOnLoop({ id: 'p1', fit: pump.fit }, CALIBRATION) };
    expectClose(pumpAt(own, place).headAt(0).head, 0.81 * headAt(pump.fit.headCurve, 0), { relative: 1e-12 });
    const other = pumpAt(pump, place).headAt(0).head;
    expectClose(other, headAt(pump.fit.headCurve, 0), { relative: 1e-12 });
  });
});

describe('what a calibration is about', () => {
  const same = (a: Loop, b: Loop): boolean =>
    JSON.stringify(hydraulicsOf(a)) === JSON.stringify(hydraulicsOf(b));
  const loop = pipedLoop();
  const branches = 'discharge' in loop ? (loop.discharge.branches ?? []) : [];
  const withDischarge = (change: object): Loop =>
    'discharge' in loop ? { ...loop, discharge: { ...loop.discharge, ...change } } : loop;
  const outletChanged = (change: object): Loop =>
    withDischarge({
      branches: branches.map((branch) => ({ ...branch, outlet: { ...branch.outlet, ...change } })),
    });

  it.each([
    { what: 'a name', changed: { ...loop, name: 'other' } },
    { what: 'the temperature of a season', changed: { ...loop, water: { temperature: 20, salinity: 35 } } },
    { what: 'what an outlet requires', changed: outletChanged({ requiredFlow: 1e-3, maximumFlow: 2e-3 }) },
    { what: 'the installed setting', changed: { ...loop, installed: { pump: 'p1', count: 1, setting: 50 } } },
    { what: 'an exit that holds in any case', changed: outletChanged({ exit: 'submerged' }) },
    {
      what: 'a charge of steps that holds in any case',
      changed: { ...loop, boreChanges: 'abrupt' as const },
    },
    { what: 'the highest point of a run', changed: withDischarge({ highestElevation: 1 }) },
  ])('does not change with $what', ({ changed }) => {
    const before: Loop = { ...loop, installed: { pump: 'p1', count: 1, setting: 80 } };
    expect(same(before, { ...before, ...changed, installed: changed.installed ?? before.installed })).toBe(
      true,
    );
  });

  it.each([
    { what: 'the exit of an outlet', changed: outletChanged({ exit: 'free' }) },
    { what: 'the charge of steps of bore', changed: { ...loop, boreChanges: 'ignored' as const } },
    { what: 'a pipe', changed: withDischarge({ run: [] }) },
    { what: 'a nozzle', changed: outletChanged({ nozzleDiameter: 0.01 }) },
    { what: 'the stated split', changed: withDischarge({ split: 'tee-90' }) },
    { what: 'the entered multiplier', changed: { ...loop, frictionMultiplier: 2 } },
    { what: 'a lift', changed: { ...loop, staticHead: 1 } },
    { what: 'another pump', changed: { ...loop, installed: { pump: 'p2', count: 1, setting: 80 } } },
    { what: 'a second pump', changed: { ...loop, installed: { pump: 'p1', count: 2, setting: 80 } } },
  ])('changes with $what', ({ changed }) => {
    expect(same(loop, changed)).toBe(false);
  });

  it('changes with the points of a system curve and the shares of its outlets', () => {
    expect(same(curveLoop(), curveLoop())).toBe(true);
    expect(same(curveLoop(), curveLoop(1))).toBe(false);
  });
});
