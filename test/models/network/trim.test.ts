/** Throttling that brings a loop level at exactly the required flows. */
import { describe, expect, it } from 'vitest';
import { dutyPoint } from '../../../models/duty/duty-point.ts';
import { sampleLoop } from '../../../models/duty/sampled-loop.ts';
import { DEFAULT_LIMITS } from '../../../models/loop/limits.ts';
import type { PipeworkLoop } from '../../../models/loop/loop.ts';
import { trimNetwork } from '../../../models/network/trim.ts';
import { GRAVITY } from '../../../models/physics/gravity.ts';
import { pumpAtSetting } from '../../../models/pump/pump-at-setting.ts';
import { select } from '../../../models/selection/select.ts';
import { expectClose } from '../../expect-close.ts';
import { featuredCase } from '../../random-featured-loop.ts';
import { randomCase } from '../../random-loop.ts';
import { kelpFlume } from '../../reference/independent/kelp-flume.ts';
import {
  canister,
  LITRE_PER_HOUR,
  loopOf,
  modelOf,
  networkOf,
  outlet,
  pipe,
  pumpModelOf,
  solved,
  trimmedModelOf,
} from '../example-loops.ts';

const L = LITRE_PER_HOUR;
/** Loops with check valves, outlets in air, steps of bore and reducing tees. */
const featured = (seed: number): PipeworkLoop => featuredCase({ seed, everyOutlet: true }).loop;
const loops: readonly (readonly [string, PipeworkLoop])[] = [
  ['the flume', kelpFlume],
  ...[1, 2, 3, 4, 5, 6, 7, 8].map(
    (seed) => [`seed ${seed}`, randomCase({ seed, everyOutlet: true }).loop] as const,
  ),
  ...[1, 2, 3, 4, 5, 6, 7, 8].map((seed) => [`every feature, seed ${seed}`, featured(seed)] as const),
];

describe.each(loops)('a trimmed loop (%s)', (_, loop) => {
  const { network, trims } = trimNetwork(networkOf(loop));
  const required = network.outlets.map((b) => network.branches[b]?.outlet?.requiredFlow ?? 0);
  const total = required.reduce((sum, flow) => sum + flow, 0);

  it('is level at exactly the required flows', () => {
    const { flows } = solved(network, total);
    for (const [i, b] of network.outlets.entries()) {
      expectClose(flows[b] ?? Number.NaN, required[i] ?? Number.NaN, {
        relative: 1e-9,
        absolute: 1e-9 * total,
      });
    }
  });

  it('tells K, Kv and head of one and the same loss', () => {
    for (const { head, flow, lossCoefficient, diameter, kv, closed } of trims) {
      if (closed || head === null || lossCoefficient === null || diameter === null || kv === null) {
        expect(closed).toBe(true);
        continue;
      }
      const velocity = flow / ((Math.PI / 4) * diameter ** 2);
      expectClose((lossCoefficient * velocity ** 2) / (2 * GRAVITY), head, { relative: 1e-12 });
      // Kv: m3/h of water of 1000 kg/m3 at 1 bar (IEC 60534-2-1).
      expectClose(((flow * 3600) / kv) ** 2 * (1e5 / (1000 * GRAVITY)), head, { relative: 1e-12 });
    }
  });
});

describe('an outlet that requires nothing', () => {
  const loop = loopOf({
    run: [pipe(0.04, 2)],
    branches: [
      outlet('on', { requiredFlow: 2000 * L }),
      { run: [], branches: [outlet('off', { requiredFlow: 0 }), outlet('off too', { requiredFlow: 0 })] },
    ],
  });
  const { network, trims } = trimNetwork(networkOf(loop));

  it('is shut with its whole branch, told once', () => {
    expect(trims).toMatchObject([
      { outlets: ['off', 'off too'], closed: true, flow: 0, head: null, lossCoefficient: null, kv: null },
    ]);
    expect([...solved(network, 1e-3).flows]).toEqual([1e-3, 1e-3, 0, 0, 0]);
  });

  it('leaves a loop of such outlets without a way for the water', () => {
    const closed = trimNetwork(networkOf(loopOf(outlet('off', { requiredFlow: 0 }))));
    expect(closed.network.branches[0]?.shut).toBe(true);
  });
});

describe('the neediest child', () => {
  it('is left as it is, the nearer ones throttled', () => {
    const loop = loopOf({
      run: [pipe(0.04, 2)],
      branches: [
        outlet('far', { requiredFlow: 2000 * L }, [pipe(0.02, 10)]),
        outlet('near', { requiredFlow: 2000 * L }, [pipe(0.02, 1)]),
      ],
    });
    expect(trimNetwork(networkOf(loop)).trims.map(({ outlets }) => outlets)).toEqual([['near']]);
  });

  it('needs no trim beside its equal', () => {
    const equal = (name: string) => outlet(name, { requiredFlow: 2000 * L });
    const loop = loopOf({ run: [pipe(0.04, 2)], branches: [equal('a'), equal('b')] });
    expect(trimNetwork(networkOf(loop)).trims).toEqual([]);
  });
});

describe('a pump on a trimmed loop', () => {
  it('needs no higher setting than as built', () => {
    for (const seed of [1, 2, 3, 4, 5, 6]) {
      const { loop } = randomCase({ seed, everyOutlet: true });
      const pump = pumpModelOf({ ...canister, settings: { min: 5, max: 100, step: 1 } });
      const [built, trimmed] = [modelOf(loop), trimmedModelOf(loop)].map(
        (model) =>
          select({
            sampled: sampleLoop(model),
            candidates: [{ pump, count: 1 }],
            limits: {
              ...DEFAULT_LIMITS,
              throughSlotVelocity: null,
              maximumEfficiency: 1,
              allowExtrapolation: true,
            },
            running: { price: null, hoursPerDay: 24, elevation: 0 },
          }).ranking[0],
      );
      if (built === undefined || built.duty.outletFlows.some((flow) => flow <= 0)) continue;
      expect(trimmed?.duty.setting ?? Number.POSITIVE_INFINITY).toBeLessThanOrEqual(built.duty.setting);
    }
  });

  it('gives every outlet its share of what the setting leaves over', () => {
    const model = trimmedModelOf(kelpFlume);
    const duty = dutyPoint(model, pumpAtSetting(pumpModelOf(canister), { setting: 70, count: 1 }));
    const [far = 0, left = 0] = duty.outletFlows;
    expectClose(far / left, 1.5, { relative: 0.02 });
  });
});
