/** Small loops and pumps that the tests of the models are made of. */
import type { Branch, Outlet, PipeworkLoop, RunElement } from '../../models/loop/loop.ts';
import { type CompiledLoop, compileLoop } from '../../models/network/compiled-loop.ts';
import type { Network } from '../../models/network/network.ts';
import { pipeworkSystem } from '../../models/network/pipework-system.ts';
import { type NetworkSolution, solveNetwork } from '../../models/network/solve-network.ts';
import { trimNetwork } from '../../models/network/trim.ts';
import type { Pump } from '../../models/pump/pump.ts';
import type { PumpAtSetting } from '../../models/pump/pump-at-setting.ts';
import { fitPump, type PumpModel } from '../../models/pump/pump-model.ts';

/** m3/s */
export const LITRE_PER_HOUR = 1 / 3.6e6;

export const pipe = (insideDiameter: number, length: number): RunElement => ({
  pipe: { insideDiameter },
  length,
});

/** A branch that ends in a jet from a nozzle of 15 mm unless it says otherwise. */
export const outlet = (
  name: string,
  facts: Partial<Outlet> = {},
  run: readonly RunElement[] = [],
): Branch => ({
  run,
  outlet: { name, nozzleDiameter: 0.015, ...facts },
});

export function loopOf(discharge: Branch, facts: Partial<PipeworkLoop> = {}): PipeworkLoop {
  return {
    name: 'bench loop',
    water: { temperature: 25, salinity: 35 },
    pumpElevation: 0,
    frictionMultiplier: 1,
    staticHead: 0,
    suction: [pipe(0.05, 1)],
    discharge,
    ...facts,
  };
}

export function modelOf(loop: Parameters<typeof compileLoop>[0]): CompiledLoop {
  const built = compileLoop(loop);
  if (!built.ok) throw new Error(JSON.stringify(built.failure));
  return built.value;
}

export function networkOf(loop: PipeworkLoop): Network {
  const { network } = modelOf(loop);
  if (network === null) throw new Error('the loop has no pipework');
  return network;
}

export function solved(network: Network, totalFlow: number, earlier?: NetworkSolution): NetworkSolution {
  const solution = solveNetwork(network, totalFlow, earlier);
  if (!solution.ok) throw new Error(JSON.stringify(solution.failure));
  return solution.value;
}

export function trimmedModelOf(loop: PipeworkLoop): CompiledLoop {
  const model = modelOf(loop);
  const { network } = trimNetwork(networkOf(loop));
  return { ...model, network, system: pipeworkSystem(network) };
}

/** A canister of 6 m shutoff head and 12 m3/h, that draws 250 W at full speed. */
export const canister: Pump = {
  name: 'Canister 250',
  headPoints: [0, 4000, 8000, 12000].map((flow) => ({
    flow: flow * LITRE_PER_HOUR,
    head: 6 - 4 * (flow / 12000) ** 2,
    setting: 100,
  })),
  powerPoints: [{ setting: 100, power: 250 }],
  settings: { min: 30, max: 100, step: 1 },
  standbyPower: 3,
};

export function pumpModelOf(pump: Pump): PumpModel {
  const fit = fitPump(pump);
  if (!fit.ok) throw new Error(JSON.stringify(fit.failure));
  return { entered: pump, fit: fit.value };
}

/** A pump that gives a stated head at a stated flow, for duties on curves of no real pump. */
export function pumpByLaw(
  headAt: PumpAtSetting['headAt'],
  facts: Partial<PumpAtSetting> = {},
): PumpAtSetting {
  return {
    setting: 100,
    speedRatio: 1,
    count: 1,
    headAt,
    powerAt: () => 100,
    turningFlows: [],
    flowScale: 1e-3,
    ...facts,
  };
}

/** Branches nested `depth` deep, one outlet aside at every level. */
export function nested(depth: number, split?: 'tee-90'): Branch {
  let branch = outlet('deepest', {}, [pipe(0.03, 1)]);
  for (let level = depth - 1; level > 0; level -= 1) {
    const aside = outlet(`level ${level}`, { nozzleDiameter: 0.01 }, [pipe(0.025, 0.5)]);
    branch = {
      run: [pipe(0.03, 1)],
      branches: [branch, aside],
      ...(split === undefined ? {} : { split }),
    };
  }
  return branch;
}
