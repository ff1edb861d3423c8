/** Parallel pumps of which one stands still. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dutyPoint } from '../../../models/duty/duty-point.ts';
import { type OnePumpDown, onePumpDown } from '../../../models/duty/one-pump-down.ts';
import type { PipeworkLoop, SystemCurveLoop } from '../../../models/loop/loop.ts';
import { idlePumpResistance } from '../../../models/pump/idle-pump.ts';
import { pumpAtSetting } from '../../../models/pump/pump-at-setting.ts';
import { expectClose } from '../../expect-close.ts';
import {
  canister,
  LITRE_PER_HOUR,
  loopOf,
  modelOf,
  nested,
  outlet,
  pipe,
  pumpModelOf,
} from '../example-loops.ts';

const L = LITRE_PER_HOUR;
const pump = pumpModelOf(canister);
const installed = (checkValves?: boolean) => ({
  installed: {
    ...{ pump: 'some', count: 2, setting: 80 },
    ...(checkValves === undefined ? {} : { checkValves }),
  },
});

function down(loop: PipeworkLoop | SystemCurveLoop, at = { setting: 80, count: 2 }): OnePumpDown {
  const found = onePumpDown(modelOf(loop), pump, at);
  if (found === null) throw new Error('there is one pump only');
  return found;
}

const curveLoop = (staticHead: number, checkValves: boolean): SystemCurveLoop => ({
  ...{ name: 'curve', water: { temperature: 25, salinity: 35 }, pumpElevation: 0, frictionMultiplier: 1 },
  systemCurve: { staticHead, points: [{ flow: 10000 * L, head: staticHead + 8 }] },
  outlets: [
    { name: 'a', share: 0.6, requiredFlow: 3000 * L },
    { name: 'b', share: 0.4 },
  ],
  ...installed(checkValves),
});

describe('one pump down behind check valves', () => {
  it.each([2, 3, 5])('of %d is the duty of the others', (count) => {
    const loop = loopOf(nested(3, 'tee-90'), installed(true));
    const found = down(loop, { setting: 70, count });
    const duty = dutyPoint(modelOf(loop), pumpAtSetting(pump, { setting: 70, count: count - 1 }));
    expect(found).toMatchObject({ checkValves: true, backflow: 0, flow: duty.flow, power: duty.power });
    expect([...found.outletFlows]).toEqual([...duty.outletFlows]);
  });

  it('is what is told where the loop does not state check valves', () => {
    expect(down(loopOf(nested(2), installed())).checkValves).toBe(true);
    expect(down(loopOf(nested(2))).checkValves).toBe(true);
  });

  it('is nothing for a single pump, nor where no water passes', () => {
    expect(onePumpDown(modelOf(loopOf(nested(2))), pump, { setting: 80, count: 1 })).toBeNull();
    const shut = loopOf(outlet('jet', {}, [pipe(0.03, 1), { valve: 'ball', opening: 0 }]));
    expect(onePumpDown(modelOf(shut), pump, { setting: 80, count: 2 })).toBeNull();
  });
});

describe('the idle pump', () => {
  it('resists as its own curve at its most powerful point: k = 2 b of H = a - b Q^2', () => {
    // Q H is greatest at Q^2 = a/(3 b), where H = 2 a/3: an identity, met within half a step of the scan for that point.
    expectClose(idlePumpResistance(pump.fit), (2 * 4) / (12000 * L) ** 2, { relative: 0.015 });
  });
});

describe('one pump down without check valves', () => {
  it('on a quadratic system is where three parabolas meet', () => {
    // H = r^2 a - b (Q + q)^2 = c Q^2 = k q^2, q through the idle pump: Q = r sqrt(a/(c + b (1 + sqrt(c/k))^2)).
    const b = 4 / (12000 * L) ** 2;
    const c = 8 / (10000 * L) ** 2;
    const k = idlePumpResistance(pump.fit);
    const share = Math.sqrt(c / k);
    const expected = 0.8 * Math.sqrt(6 / (c + b * (1 + share) ** 2));
    const { flow, backflow, outletFlows } = down(curveLoop(0, false));
    expectClose(flow, expected, { relative: 1e-6 });
    expectClose(backflow, share * expected, { relative: 1e-6 });
    expectClose(outletFlows[0] ?? Number.NaN, 0.6 * flow, { relative: 1e-12 });
  });

  it('keeps heads: pump, loop and idle pump share theirs', () => {
    const settings = fc.integer({ min: 40, max: 100 });
    fc.assert(
      fc.property(settings, fc.integer({ min: 2, max: 4 }), fc.boolean(), (setting, count, tee) => {
        const loop = loopOf(nested(3, tee ? 'tee-90' : undefined), installed(false));
        const { flow, backflow, power } = down(loop, { setting, count });
        const running = pumpAtSetting(pump, { setting, count: count - 1 });
        const { head } = running.headAt(flow + backflow);
        expectClose(modelOf(loop).system.stateAt(flow).head, head, { relative: 1e-4 });
        expectClose(idlePumpResistance(pump.fit) * backflow ** 2, head, { relative: 1e-4 });
        expect(power).toBe(running.powerAt(flow + backflow));
      }),
      { seed: 1, numRuns: 30 },
    );
  });

  it('leaves every outlet less than behind check valves', () => {
    const withValves = down(loopOf(nested(3), installed(true)));
    const without = down(loopOf(nested(3), installed(false)));
    for (const [i, flow] of without.outletFlows.entries()) {
      expect(flow).toBeLessThan(withValves.outletFlows[i] ?? Number.NaN);
    }
  });

  it('sends everything back where the others do not lift the water past the idle pump', () => {
    // At 40 % the shutoff head is 0.96 m and the idle pump takes what one pump gives at well under 0.9 m.
    const lifted = down(curveLoop(0.9, false), { setting: 40, count: 2 });
    expect(lifted.flow).toBe(0);
    expect(lifted.backflow).toBeGreaterThan(0);
    expect(down(curveLoop(0.9, true), { setting: 40, count: 2 }).flow).toBeGreaterThan(0);
  });
});

describe('a stopped pump beside a branch with a check valve', () => {
  const loop = (checkValves: boolean): PipeworkLoop => ({
    ...loopOf({
      run: [pipe(0.05, 2)],
      branches: [
        outlet('low', {}, [pipe(0.04, 2)]),
        { run: [pipe(0.03, 2), { valve: 'check-swing' }], outlet: { name: 'high', staticHead: 1.5 } },
      ],
    }),
    ...installed(checkValves),
  });

  it.each([true, false])(
    'leaves the outlets what is not running back, none of it negative (%s)',
    (checkValves) => {
      for (let setting = 30; setting <= 100; setting += 5) {
        const { flow, backflow, outletFlows } = down(loop(checkValves), { setting, count: 2 });
        expect(Math.min(backflow, ...outletFlows)).toBeGreaterThanOrEqual(0);
        expectClose(
          outletFlows.reduce((sum, one) => sum + one, 0),
          flow,
          { relative: 1e-9 },
        );
      }
    },
  );
});
