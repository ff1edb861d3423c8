/** Where a pump lands on a loop. */
import { describe, expect, it } from 'vitest';
import { dutyPoint } from '../../../models/duty/duty-point.ts';
import { pumpAtSetting } from '../../../models/pump/pump-at-setting.ts';
import { expectClose } from '../../expect-close.ts';
import {
  canister,
  LITRE_PER_HOUR,
  loopOf,
  modelOf,
  outlet,
  pipe,
  pumpByLaw,
  pumpModelOf,
} from '../example-loops.ts';

const pump = pumpModelOf(canister);
const at = (setting: number, count = 1) => pumpAtSetting(pump, { setting, count });
const curveLoop = (staticHead: number, head: number) =>
  modelOf({
    name: 'by a curve',
    water: { temperature: 25, salinity: 35 },
    pumpElevation: 0,
    frictionMultiplier: 1,
    systemCurve: { staticHead, points: [{ flow: 6000 * LITRE_PER_HOUR, head: staticHead + head }] },
    outlets: [{ name: 'all', share: 1 }],
  });

describe('a duty point', () => {
  it('is where two parabolas meet', () => {
    // 6 - 4 x^2 = 4 c x^2 with x = Q/12000, the head at half of that 1 m: c = 1, so x = sqrt(6/8), an identity.
    const { flow, head } = dutyPoint(curveLoop(0, 1), at(100));
    expectClose(flow / LITRE_PER_HOUR, 12000 * Math.sqrt(6 / 8), { relative: 1e-9 });
    expectClose(head, 3, { relative: 1e-9 });
  });

  it('moves by the affinity laws on a loop without static head', () => {
    const [full, slow] = [100, 50].map((setting) => dutyPoint(curveLoop(0, 1), at(setting)));
    expectClose((slow?.flow ?? 0) / (full?.flow ?? 0), 0.5, { relative: 1e-9 });
    expectClose((slow?.head ?? 0) / (full?.head ?? 0), 0.25, { relative: 1e-9 });
    // Power less standby of points of one speed: 8 % of it fixed, the rest by the cube.
    expectClose((slow?.power ?? 0) - 3, ((full?.power ?? 0) - 3) * (0.08 + 0.92 / 8), { relative: 1e-9 });
  });

  it('has the efficiency rho g Q H / P', () => {
    const model = curveLoop(0, 1);
    const { efficiency, flow, head, power } = dutyPoint(model, at(100));
    expectClose(efficiency, (model.water.density * 9.80665 * flow * head) / power, { relative: 1e-12 });
  });

  it('gives n pumps a common head and an nth of the flow each', () => {
    const model = curveLoop(0, 1);
    const three = dutyPoint(model, at(80, 3));
    expectClose(three.head, at(80).headAt(three.flow / 3).head, { relative: 1e-9 });
    expectClose(three.power, 3 * at(80).powerAt(three.flow / 3), { relative: 1e-9 });
  });

  it('runs at the true speed of a speed map', () => {
    const speedMap = [
      { setting: 30, speed: 60 },
      { setting: 100, speed: 100 },
    ];
    const mapped = pumpModelOf({ ...canister, speedMap });
    const { speedRatio, flow } = dutyPoint(curveLoop(0, 1), pumpAtSetting(mapped, { setting: 65, count: 1 }));
    expectClose(speedRatio, 0.8, { relative: 1e-12 });
    expectClose(flow, dutyPoint(curveLoop(0, 1), at(80)).flow, { relative: 1e-9 });
  });

  it('does not depend on the state it starts near', () => {
    const model = modelOf(loopOf(outlet('jet', {}, [pipe(0.04, 3)])));
    const near = model.system.stateAt(1e-2);
    expectClose(dutyPoint(model, at(60), near).flow, dutyPoint(model, at(60)).flow, { relative: 1e-9 });
  });
});

describe('a pump that cannot lift the water', () => {
  it.each([6, 6.5])('stands at its shutoff head below %d m', (staticHead) => {
    const duty = dutyPoint(curveLoop(staticHead, 1), at(100));
    expect(duty).toMatchObject({ flow: 0, deadHead: true, efficiency: 0 });
    expectClose(duty.head, 6, { relative: 1e-9 });
  });

  it('has no state where nothing passes', () => {
    const shut = modelOf(loopOf(outlet('jet', {}, [{ valve: 'gate', opening: 0 }])));
    const duty = dutyPoint(shut, at(100));
    expect(duty).toMatchObject({ flow: 0, deadHead: true, state: null, crossings: [] });
    expect([...duty.outletFlows]).toEqual([0]);
  });

  it('still moves water where the outlets lie below', () => {
    const model = modelOf(loopOf(outlet('low', {}, [pipe(0.04, 3)]), { staticHead: -1 }));
    expect(dutyPoint(model, at(30)).flow).toBeGreaterThan(0);
  });
});

describe('a drooping curve', () => {
  /** 4 + 4 x - 6 x^2 with x = Q/1e-3, at its greatest at x = 1/3. */
  const drooping = pumpByLaw(
    (flow) => ({ head: 4 + 4 * (flow / 1e-3) - 6 * (flow / 1e-3) ** 2, slope: 4e3 - 12e6 * flow }),
    { turningFlows: [1e-3 / 3] },
  );
  const loop = (staticHead: number) => {
    const curve = { staticHead, points: [{ flow: 1e-3, head: staticHead + 0.06 }] };
    return modelOf({
      name: 'nearly static',
      water: { temperature: 25, salinity: 35 },
      pumpElevation: 0,
      frictionMultiplier: 1,
      systemCurve: curve,
      outlets: [{ name: 'all', share: 1 }],
    });
  };

  it('crosses twice above its shutoff head, and from rest arrives at neither', () => {
    const duty = dutyPoint(loop(4.2), drooping);
    expect(duty.crossings.map(({ stable }) => stable)).toEqual([false, true]);
    expect(duty).toMatchObject({ flow: 0, deadHead: true });
  });

  it('is left at the stable crossing below it', () => {
    const duty = dutyPoint(loop(3.9), drooping);
    // 0.1 + 4 x - 6.06 x^2 = 0
    const x = (4 + Math.sqrt(16 + 4 * 6.06 * 0.1)) / (2 * 6.06);
    expectClose(duty.flow, x * 1e-3, { relative: 1e-9 });
    expect(duty.crossings).toHaveLength(1);
  });

  it('takes the stable crossing of least flow where there are two', () => {
    // A wave on a falling line: crossings at x = 0.5 (falling), a rise, and a last fall.
    const head = (x: number) => 5 - 20 * (x - 0.2) * (x - 0.5) * (x - 0.8);
    const slope = (x: number) =>
      -20 * ((x - 0.5) * (x - 0.8) + (x - 0.2) * (x - 0.8) + (x - 0.2) * (x - 0.5));
    const turns = [0.5 - Math.sqrt(0.03), 0.5 + Math.sqrt(0.03)].map((x) => x * 1e-3);
    const wavy = pumpByLaw((flow) => ({ head: head(flow * 1e3), slope: slope(flow * 1e3) * 1e3 }), {
      turningFlows: turns,
    });
    const curve = { staticHead: 5, points: [{ flow: 1, head: 5 + 1e-3 }] };
    const model = modelOf({
      name: 'level',
      water: { temperature: 25, salinity: 35 },
      pumpElevation: 0,
      frictionMultiplier: 1,
      systemCurve: curve,
      outlets: [{ name: 'all', share: 1 }],
    });
    const duty = dutyPoint(model, wavy);
    expect(duty.crossings.map(({ stable }) => stable)).toEqual([true, false, true]);
    expectClose(duty.flow, 0.2e-3, { relative: 1e-6 });
  });
});
