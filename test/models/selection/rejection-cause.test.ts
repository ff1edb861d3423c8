/** What stands behind a rejection: a lift too high, a droop, a shut valve, a loop that runs by itself. */
import { describe, expect, it } from 'vitest';
import { sampleLoop } from '../../../models/duty/sampled-loop.ts';
import { DEFAULT_LIMITS } from '../../../models/loop/limits.ts';
import type { PipeworkLoop } from '../../../models/loop/loop.ts';
import { shutValves } from '../../../models/loop/shut-valves.ts';
import type { Pump } from '../../../models/pump/pump.ts';
import { type RejectionCause, rejectionCause } from '../../../models/selection/rejection-cause.ts';
import { select } from '../../../models/selection/select.ts';
import { expectClose } from '../../expect-close.ts';
import { canister, LITRE_PER_HOUR, loopOf, modelOf, outlet, pipe, pumpModelOf } from '../example-loops.ts';

const L = LITRE_PER_HOUR;
const RUNNING = { price: null, hoursPerDay: 24, elevation: 0 };
const discharge = {
  run: [pipe(0.05, 1)],
  branches: [
    outlet('left', { requiredFlow: 2000 * L }, [pipe(0.04, 1)]),
    outlet('right', { requiredFlow: 2000 * L }, [pipe(0.04, 1), { valve: 'ball', opening: 0 } as const]),
  ],
};
const plain = outlet('jet', { requiredFlow: 2000 * L }, [pipe(0.04, 1)]);

/** Summit of 4.6 m over a shutoff head of 4 m. */
const drooping: Pump = {
  ...canister,
  headPoints: [
    [0, 4],
    [3000, 4.55],
    [6000, 4.6],
    [9000, 4.1],
    [12000, 3],
  ].map(([flow = 0, head = 0]) => ({ flow: flow * L, head, setting: 100 })),
};

function causeOf(loop: PipeworkLoop, pump = canister, limits = {}): RejectionCause | null {
  const sampled = sampleLoop(modelOf(loop));
  const candidate = { pump: pumpModelOf(pump), count: 1 };
  const asked = {
    sampled,
    candidates: [candidate],
    limits: { ...DEFAULT_LIMITS, ...limits },
    running: RUNNING,
  };
  const [rejected] = select(asked).rejected;
  if (rejected === undefined) throw new Error('a setting serves');
  return rejectionCause(sampled, candidate, rejected.outcome.failing);
}

describe('the cause of a rejection', () => {
  it('is a lift above the shutoff head, both told', () => {
    const cause = causeOf(loopOf(plain, { staticHead: 100 }));
    if (cause?.code !== 'lift-above-shutoff') throw new Error(String(cause?.code));
    expect(cause.setting).toBe(100);
    expectClose(cause.lift, 100, { relative: 1e-12 });
    expectClose(cause.shutoff, 6, { relative: 1e-6 });
  });

  it('is a drooping curve that does not start a flow it could keep', () => {
    const cause = causeOf(loopOf(plain, { staticHead: 4.3 }), drooping);
    if (cause?.code !== 'does-not-start') throw new Error(String(cause?.code));
    expect(cause.shutoff).toBeLessThan(4.3);
    expect(cause.summit).toBeGreaterThan(4.3);
    expect(causeOf(loopOf(plain, { staticHead: 5 }), drooping)?.code).toBe('lift-above-shutoff');
  });

  it('is a shut valve before the outlet that falls short, on its branch or on the suction', () => {
    const path = ['discharge', 'branches', 1, 'run', 1];
    expect(causeOf(loopOf(discharge))).toEqual({ code: 'shut-valve', path, outlet: 'right' });
    const suction = [pipe(0.05, 1), { valve: { kv: 20 }, opening: 0 }];
    const atSuction = causeOf(loopOf(plain, { suction }));
    expect(atSuction).toEqual({ code: 'shut-valve', path: ['suction', 1], outlet: 'jet' });
  });

  it('is a loop that runs by itself, where too much flows', () => {
    const most = outlet('jet', { requiredFlow: 2000 * L, maximumFlow: 2100 * L }, [pipe(0.04, 1)]);
    const cause = causeOf(loopOf(most, { staticHead: -3 }));
    if (cause?.code !== 'runs-by-itself') throw new Error(String(cause?.code));
    expectClose(cause.fall, 3, { relative: 1e-9 });
  });

  it('is none where flow alone is short', () => {
    expect(causeOf(loopOf(outlet('jet', { requiredFlow: 20_000 * L })))).toBeNull();
    const most = outlet('jet', { requiredFlow: 2000 * L, maximumFlow: 1500 * L });
    expect(causeOf(loopOf(most))).toBeNull();
  });
});

describe('the shut valves of a loop', () => {
  it('are told with the outlets beyond, the first of a run, none beyond another', () => {
    const shut = { valve: 'gate', opening: 0 } as const;
    const nested = { run: [shut, shut], branches: [outlet('a', {}, [shut]), outlet('b')] };
    const loop = loopOf({ run: [pipe(0.05, 1)], branches: [nested, outlet('c', {}, [pipe(0.04, 1), shut])] });
    expect(shutValves(loop)).toEqual([
      { path: ['discharge', 'branches', 0, 'run', 0], outlets: ['a', 'b'] },
      { path: ['discharge', 'branches', 1, 'run', 1], outlets: ['c'] },
    ]);
  });

  it('are none where all are open, or the pipework is not known', () => {
    expect(shutValves(loopOf(outlet('a', {}, [{ valve: 'gate' }])))).toEqual([]);
    const { staticHead: _, suction: __, discharge: ___, ...common } = loopOf(plain);
    const curve = { ...common, systemCurve: { points: [{ flow: 1e-3, head: 1 }] }, outlets: [] };
    expect(shutValves(curve)).toEqual([]);
  });
});
