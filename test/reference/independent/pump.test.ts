/** The reference pump against laws, constructed points and published curves. */
import { describe, expect, it } from 'vitest';
import type { Pump } from '../../../models/pump/pump.ts';
import { expectClose } from '../../expect-close.ts';
import { workedNetworks } from '../worked-networks.ts';
import { dutyOf, fitPump, intersections, pumpHead } from './duty.ts';
import { systemOf } from './flows.ts';
import { chooseHeadCurve, headAtFullSpeed } from './head-curve.ts';
import { canister250, kelpFlume } from './kelp-flume.ts';
import { circuitOf } from './legs.ts';
import { select } from './selection.ts';
import { settingsGrid, speedRatio } from './speed.ts';

type Curve = (flow: number) => number;

const pumpOf = (head: Curve, flows: readonly number[]): Pump => ({
  ...canister250,
  headPoints: flows.map((flow) => ({ flow, head: head(flow), setting: 100 })),
});

function fittedOf(pump: Pump): NonNullable<ReturnType<typeof fitPump>> {
  const fitted = fitPump(pump);
  if (fitted === undefined) throw new Error('no curve');
  return fitted;
}

const FLOWS = [0, 0.5e-3, 1e-3, 1.5e-3, 2e-3, 2.5e-3, 3e-3];

/** A system of one nozzle at a static head. */
const nozzleSystem = (nozzleDiameter: number, staticHead: number): ReturnType<typeof systemOf> =>
  systemOf(
    circuitOf({
      staticHead,
      suction: [],
      frictionMultiplier: 1,
      viscosity: 1e-6,
      discharge: { run: [], outlet: { name: 'only', nozzleDiameter } },
    }),
  );

describe('the head curve', () => {
  it.each([
    ['a parabola', [2], (q: number) => 5 - 0.4e6 * q ** 2],
    ['a straight line', [1], (q: number) => 5 - 1e3 * q],
    ['two powers', [1, 4], (q: number) => 5 - 300 * q - 1e10 * q ** 4],
    ['a cubic', [1, 2, 3], (q: number) => 5 - 300 * q + 1e5 * q ** 2 - 6e7 * q ** 3],
  ] as const)('finds %s that its points lie on', (_, powers, head) => {
    const curve = chooseHeadCurve(pumpOf(head, FLOWS));
    expect(curve?.powers).toEqual(powers);
    if (curve !== undefined) expectClose(headAtFullSpeed(curve, 1.2e-3), head(1.2e-3), { relative: 1e-9 });
  });

  it('goes on as a tangent beyond its points', () => {
    const curve = chooseHeadCurve(pumpOf((q) => 5 - 0.4e6 * q ** 2, FLOWS));
    const tangent = 5 - 0.4e6 * 3e-3 ** 2 - 2 * 0.4e6 * 3e-3 * 0.5e-3;
    if (curve !== undefined) expectClose(headAtFullSpeed(curve, 3.5e-3), tangent, { relative: 1e-9 });
  });

  it('rises only where its points droop', () => {
    const drooping = chooseHeadCurve(pumpOf((q) => 5 + 800 * q - 0.6e6 * q ** 2, FLOWS));
    expect(drooping?.powers).toEqual([1, 2]);
    const noisy = chooseHeadCurve(pumpOf((q) => (q === 0 ? 5.02 : 5 + 40 * q - 0.6e6 * q ** 2), FLOWS));
    if (noisy === undefined) throw new Error('no curve');
    expect(headAtFullSpeed(noisy, 0.2e-3)).toBeLessThanOrEqual(headAtFullSpeed(noisy, 0));
  });

  it('is missing with too few distinct flows', () => {
    expect(chooseHeadCurve(pumpOf((q) => 5 - q, [0, 0, 1e-3]))).toBeUndefined();
  });

  // Brasch and Whyman, Problems in Fluid Flow, Example 6.3 (p. 120): a published table.
  it('meets the rows of a published table within half a percent of its shutoff head', () => {
    const rows =
      workedNetworks.flatMap(({ drive }) => ('headPoints' in drive ? [drive.headPoints] : []))[0] ?? [];
    const curve = chooseHeadCurve({ ...canister250, headPoints: rows });
    for (const { flow, head } of rows)
      expectClose(curve ? headAtFullSpeed(curve, flow) : Number.NaN, head, { absolute: 0.005 * 20.63 });
  });
});

describe('speed', () => {
  // Crane TP-410 (2009), Example 7-33: 3500 to 1700 rpm takes 400 gpm at 126 ft to 194.29 gpm at 29.726 ft.
  it('moves a point of the curve by the affinity laws', () => {
    const head: Curve = (flow) => 126 * 1.3 - 126 * 0.3 * (flow / 400) ** 2;
    const setting = (100 * 1700) / 3500;
    const running = { fitted: fittedOf(pumpOf(head, [0, 100, 200, 300, 400, 500])), count: 1, setting };
    expectClose(pumpHead(running, 194.2857), 29.72571, { relative: 1e-4 });
  });

  it('reads straight lines of the speed map', () => {
    const mapped = {
      ...canister250,
      speedMap: [
        { setting: 30, speed: 41 },
        { setting: 100, speed: 100 },
      ],
    };
    expectClose(speedRatio(mapped, 65), 0.705, { relative: 1e-12 });
    expectClose(speedRatio(canister250, 65), 0.65, { relative: 1e-12 });
  });

  it('ends the grid at the greatest setting', () => {
    expect(settingsGrid({ min: 30, max: 100, step: 20 })).toEqual([30, 50, 70, 90, 100]);
    expect(settingsGrid({ min: 20, max: 100, step: 40 })).toEqual([20, 60, 100]);
  });
});

describe('the duty', () => {
  it('is the closed-form crossing of a parabola with a nozzle', () => {
    const fitted = fittedOf(pumpOf((q) => 5 - 0.4e6 * q ** 2, FLOWS));
    const duty = dutyOf(nozzleSystem(0.02, 1), { fitted, count: 1, setting: 80 }, 1000);
    const nozzle = 1 / (2 * 9.80665 * ((Math.PI / 4) * 0.02 ** 2) ** 2);
    expectClose(duty.flow, Math.sqrt((0.64 * 5 - 1) / (0.4e6 + nozzle)), { relative: 1e-9 });
  });

  it('divides the flow over pumps side by side', () => {
    const fitted = fittedOf(pumpOf((q) => 5 - 0.4e6 * q ** 2, FLOWS));
    const duty = dutyOf(nozzleSystem(0.03, 1), { fitted, count: 2, setting: 100 }, 1000);
    const nozzle = 1 / (2 * 9.80665 * ((Math.PI / 4) * 0.03 ** 2) ** 2);
    expectClose(duty.flow, Math.sqrt((5 - 1) / (0.1e6 + nozzle)), { relative: 1e-9 });
  });

  it('stands still where the shutoff head does not exceed the static head', () => {
    const fitted = fittedOf(pumpOf((q) => 5 - 0.4e6 * q ** 2, FLOWS));
    const duty = dutyOf(nozzleSystem(0.02, 3.3), { fitted, count: 1, setting: 80 }, 1000);
    expect(duty).toMatchObject({ deadHead: true, flow: 0, efficiency: 0 });
  });

  it('knows both crossings of a drooping curve and which one is stable', () => {
    const fitted = fittedOf(pumpOf((q) => 5 + 800 * q - 0.6e6 * q ** 2, FLOWS));
    const found = intersections(nozzleSystem(0.1, 5.1), { fitted, count: 1, setting: 100 });
    expect(found.map(({ stable }) => stable)).toEqual([false, true]);
  });
});

describe('selection', () => {
  const base = { pump: canister250, count: 1, balancing: 'as-built', price: 0.2, hoursPerDay: 12 } as const;

  it('counts standby for the hours that the pump rests', () => {
    const answer = select({ ...base, loop: kelpFlume });
    if (!answer.feasible) throw new Error('infeasible');
    const energy = (365 * 12 * (answer.choice.duty.power + 3)) / 1000;
    expectClose(answer.choice.annualEnergy, energy, { relative: 1e-12 });
  });

  it('lists a reason that holds at every setting', () => {
    const answer = select({ ...base, loop: { ...kelpFlume, staticHead: 6 } });
    expect(answer).toEqual({
      feasible: false,
      reasons: ['dead-head', 'not-enough-head', 'pump-below-minimum'],
    });
  });

  it('judges the flow limits at full speed', () => {
    const pump = { ...canister250, flowLimits: { max: 0.002 } };
    const answer = select({ ...base, pump, loop: kelpFlume });
    expect(answer).toEqual({ feasible: false, reasons: ['pump-above-maximum'] });
  });

  it('says no-setting where each condition can be met but never all', () => {
    const screen = kelpFlume.intake?.screen;
    const intake = { lossCoefficient: 0.5, screen: screen && { ...screen, length: 0.35 } };
    expect(select({ ...base, loop: { ...kelpFlume, intake } })).toEqual({
      feasible: false,
      reasons: ['no-setting'],
    });
  });
});
