/** Loops whose true friction, head and power are known, read with noise. */

import { type DutyPoint, dutyPoint } from '../../../models/duty/duty-point.ts';
import type { Loop } from '../../../models/loop/loop.ts';
import { type CompiledLoop, compileLoop } from '../../../models/network/compiled-loop.ts';
import { withMoreFriction } from '../../../models/network/more-friction.ts';
import type { Pump } from '../../../models/pump/pump.ts';
import { pumpAtSetting } from '../../../models/pump/pump-at-setting.ts';
import { fitPump, type PumpModel } from '../../../models/pump/pump-model.ts';
import type { Reading } from '../../../models/readings/reading.ts';
import { expectValue } from '../../curves/expect-value.ts';
import { canister, LITRE_PER_HOUR, loopOf, outlet, pipe } from '../example-loops.ts';

export interface Truth {
  readonly friction: number;
  readonly head: number;
  readonly power: number;
}

/** The same pump worn and its motor tired: points entered as they now are. */
export const wornPump = ({ head, power }: Pick<Truth, 'head' | 'power'>): Pump => ({
  ...canister,
  headPoints: canister.headPoints.map((point) => ({ ...point, head: head * point.head })),
  powerPoints: canister.powerPoints.map((point) => ({ ...point, power: power * point.power })),
  standbyPower: power * canister.standbyPower,
});

const BEYOND = { temperature: 25, salinity: 35 };

/** A loop known by its system curve; without static head in the first place. */
export const curveLoop = (staticHead = 0): Loop => ({
  name: 'sump return',
  water: BEYOND,
  pumpElevation: -0.5,
  frictionMultiplier: 1,
  systemCurve: { staticHead, points: [{ flow: 8000 * LITRE_PER_HOUR, head: staticHead + 2.1 }] },
  outlets: [
    { name: 'near', share: 0.6, requiredFlow: 3000 * LITRE_PER_HOUR },
    { name: 'far', share: 0.4, requiredFlow: 2800 * LITRE_PER_HOUR },
  ],
});

/** Two outlets on unlike pipes. */
export const pipedLoop = (): Loop =>
  loopOf({
    run: [pipe(0.0375, 2.5)],
    branches: [
      outlet('far', { requiredFlow: 2800 * LITRE_PER_HOUR, nozzleDiameter: 0.02 }, [pipe(0.03, 6)]),
      outlet('near', { requiredFlow: 2800 * LITRE_PER_HOUR, nozzleDiameter: 0.02 }, [pipe(0.03, 2)]),
    ],
  });

export const modelled = (loop: Loop): CompiledLoop => expectValue(compileLoop(loop));

export const fitted = (pump: Pump): PumpModel => ({ entered: pump, fit: expectValue(fitPump(pump)) });

/** Where the true loop with its true pump lands. */
export const trueDuty = (loop: Loop, truth: Truth, setting: number): DutyPoint =>
  dutyPoint(
    withMoreFriction(modelled(loop), truth.friction),
    pumpAtSetting(fitted(wornPump(truth)), { setting, count: 1 }),
  );

/** A repeatable row of normal deviates by Box and Muller (1958) on Marsaglia's (2003) xorshift. */
export function normals(seed: number): () => number {
  let state = (seed * 2654435761) >>> 0 || 1;
  const uniform = () => {
    state ^= state << 13;
    state >>>= 0;
    state ^= state >>> 17;
    state ^= state << 5;
    state >>>= 0;
    return (state + 0.5) / 2 ** 32;
  };
  for (let skipped = 0; skipped < 20; skipped += 1) uniform();
  return () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
}

export interface Noise {
  readonly flow: number;
  readonly head: number;
  readonly power: number;
}

/** `times` readings at each of `settings`, with relative noise. */
export function readings(
  { loop, truth, settings, times }: { loop: Loop; truth: Truth; settings: readonly number[]; times: number },
  { noise, normal, kinds }: { noise: Noise; normal: () => number; kinds: readonly (keyof Noise)[] },
): readonly Reading[] {
  return settings.flatMap((setting) => {
    const duty = trueDuty(loop, truth, setting);
    return Array.from({ length: times }, (_, time) => ({
      ...{ time, setting },
      ...Object.fromEntries(kinds.map((kind) => [kind, duty[kind] * (1 + noise[kind] * normal())])),
    }));
  });
}
