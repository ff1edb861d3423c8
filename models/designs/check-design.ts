/** Finds what is wrong with the question for a design, before anything is searched. */
import { failed, type Result, success } from '../../curves/result.ts';
import { BORE_CHANGES } from '../loop/bore-changes.ts';
import type { Outlet } from '../loop/loop.ts';
import { shutValves } from '../loop/shut-valves.ts';
import { buildNetwork } from '../network/build-network.ts';
import { type NetworkFailure, placeRun } from '../network/place-elements.ts';
import { waterProperties } from '../physics/water.ts';
import type { DesignFailure } from './design-failure.ts';
import { countRuns, type DesignBranch, type DesignLoop, listsOf } from './design-loop.ts';
import { type PipePrice, priceOfPipe } from './pipe-price.ts';
import { type BranchFlow, lastBores, requiredFlows } from './required-flows.ts';
import { sizedLoop } from './sized-loop.ts';

/** The most runs of a loop, its suction among them, and the most candidates of a design. */
export const RUNS_MAX = 500;
export const DESIGN_CANDIDATES_MAX = 200;

export interface CheckedDesign {
  /** Into the discharge and all branches beyond. */
  readonly flows: BranchFlow;
  /** What is wrong with the first size of every list together, where other sizes may do; null: nothing. */
  readonly firstMisfit: NetworkFailure | null;
}

/** Failures that do not occur with every size. */
const BY_SIZE: ReadonlySet<NetworkFailure['code']> = new Set(['bores-do-not-fit', 'roughness-too-large']);

/** The flows of a question that can be searched; `candidates`: how many there are [-]. Fails at the first place that is wrong. */
export function checkDesign(
  loop: DesignLoop,
  { prices, candidates }: { readonly prices: readonly PipePrice[]; readonly candidates: number },
): Result<CheckedDesign, DesignFailure> {
  const runs = countRuns(loop);
  if (runs > RUNS_MAX) return failed({ code: 'too-many-runs', limit: RUNS_MAX, actual: runs });
  if (candidates > DESIGN_CANDIDATES_MAX) {
    return failed({ code: 'too-many-candidates', limit: DESIGN_CANDIDATES_MAX, actual: candidates });
  }
  const wrong = wrongSize(loop, prices);
  if (wrong !== null) return failed(wrong);
  const upstream = lastBores(loop.suction, [null]);
  const flows = requiredFlows(loop.discharge, { path: ['discharge'], upstream });
  if (!flows.ok) return flows;
  if (!(flows.value.flow > 0)) return failed({ code: 'no-requirement' });
  const first = sizedLoop(
    loop,
    listsOf(loop).map(() => 0),
  );
  const network = buildNetwork(first);
  if (!network.ok && !BY_SIZE.has(network.failure.code)) return network;
  const required = new Set(
    outletsOf(loop.discharge)
      .filter(isRequired)
      .map(({ name }) => name),
  );
  for (const { path, outlets } of shutValves(first)) {
    const outlet = outlets.find((name) => required.has(name));
    if (outlet !== undefined) return failed({ code: 'outlet-shut-off', path, outlet });
  }
  return success({ flows: flows.value, firstMisfit: network.ok ? null : network.failure });
}

function wrongSize(loop: DesignLoop, prices: readonly PipePrice[]): DesignFailure | null {
  const { kinematicViscosity } = waterProperties(loop.water);
  for (const { path, pipes, length } of listsOf(loop)) {
    for (const [place, pipe] of pipes.entries()) {
      const at = [...path, 'pipes', place];
      const placed = placeRun({
        ...{ run: [{ pipe, length }], path, upstream: null, downstream: null },
        ...{ kinematicViscosity, multiplier: 1, boreChanges: BORE_CHANGES },
      });
      if (!placed.ok) return { ...placed.failure, path: at };
      if (priceOfPipe(prices, pipe) === null) return { code: 'no-pipe-price', path: at };
    }
  }
  return null;
}

const outletsOf = ({ outlet, branches = [] }: DesignBranch): readonly Outlet[] =>
  outlet === undefined ? branches.flatMap(outletsOf) : [outlet];

const isRequired = ({ requiredFlow = 0, reach }: Outlet): boolean => requiredFlow > 0 || reach !== undefined;
