/** Throttles every branch of a loop so that all are level at exactly the required flows. */

import { at } from '../../curves/at.ts';
import { kvOfLoss } from '../components/flow-coefficient.ts';
import { quadraticLoss } from '../components/resistance.ts';
import type { DocumentPath } from '../loop/document-path.ts';
import { GRAVITY } from '../physics/gravity.ts';
import { headAtTee } from './flows-at-tee.ts';
import { lossOver, type Network, type NetworkBranch, type PlacedResistance } from './network.ts';

/** A loss added to a branch. */
export interface Trim {
  /** The branch that is throttled, and the outlets it feeds. */
  readonly path: DocumentPath;
  readonly outlets: readonly string[];
  /** Closed altogether: no outlet beyond requires a flow. The figures of the loss are then null. */
  readonly closed: boolean;
  /** Through the branch [m3/s]. */
  readonly flow: number;
  /** Taken away at that flow [m]; null where it is closed. */
  readonly head: number | null;
  /** K on `diameter` [-]; null where no pipe of the loop gives a bore. */
  readonly lossCoefficient: number | null;
  /** [m]; null where no pipe of the loop gives a bore. */
  readonly diameter: number | null;
  /** Of a valve that makes the trim [m3/h at 1 bar]; null where it is closed. */
  readonly kv: number | null;
  /** The valve of the branch that can make the trim; null where it has none. */
  readonly valve: DocumentPath | null;
  /** To set it to [%]; null where it has none. */
  readonly opening: number | null;
}

export interface TrimmedNetwork {
  readonly network: Network;
  readonly trims: readonly Trim[];
}

/** A head below this share of the node's is rounding, not a trim. */
const NO_TRIM = 1e-12;
const NO_VALVE = { valve: null, opening: null } as const;

/**
 * Adds a loss to each child of a split, from the outlets up. It raises the head that the child needs to that of the
 * child that needs most, at exactly the required flows. Children whose requirements are all 0 are closed. The added K
 * are then part of the network.
 *
 * Every outlet of the network must have a requirement.
 * @returns the throttled network, and its trims in preorder.
 * Source: proportional balancing, as in any handbook of hydronic balancing (common practice).
 */
export function trimNetwork(network: Network): TrimmedNetwork {
  const { branches } = network;
  const flow = requiredFlows(branches);
  const shut = branches.map((branch, b) => branch.shut || at(flow, b) === 0);
  const added = new Float64Array(branches.length);
  const headAtFarEnd = Float64Array.from(branches, (branch) => branch.lift);
  for (let b = branches.length - 1; b >= 0; b--) {
    const { children } = branchOf(branches, b);
    const open = children.filter((c) => shut[c] !== true);
    if (open.length === 0) continue;
    const needs = open.map((c) => at(headAtFarEnd, c) + lossTo(branches, flow, c));
    const greatest = Math.max(...needs);
    headAtFarEnd[b] = greatest;
    for (const [place, c] of open.entries()) {
      const excess = greatest - (needs[place] ?? greatest);
      added[c] = excess > NO_TRIM * Math.abs(greatest) ? excess : 0;
    }
  }
  return {
    network: {
      ...network,
      branches: branches.map((branch, b) => throttled(branch, at(added, b), at(flow, b), shut[b])),
    },
    trims: branches.flatMap((branch, b) => {
      const isShutHere = shut[b] === true && !branch.shut && shut[branch.parent] !== true;
      if (at(added, b) === 0 && !isShutHere) return [];
      return [
        describe(branch, outletsBeyond(branches, b), {
          flow: at(flow, b),
          head: at(added, b),
          closed: isShutHere,
        }),
      ];
    }),
  };
}

/** Flow of every branch when each outlet gets what it requires; 0 beyond a branch that is closed. */
function requiredFlows(branches: readonly NetworkBranch[]): Float64Array {
  const flow = new Float64Array(branches.length);
  for (let b = branches.length - 1; b >= 0; b--) {
    const { outlet, parent, shut } = branchOf(branches, b);
    if (shut) flow[b] = 0;
    else if (outlet !== null) flow[b] = outlet.requiredFlow ?? 0;
    if (parent >= 0) flow[parent] = at(flow, parent) + at(flow, b);
  }
  return flow;
}

/** Head lost from the node above a branch to its far end [m]. */
function lossTo(branches: readonly NetworkBranch[], flow: Float64Array, b: number): number {
  return lossOver(branchOf(branches, b).elements, at(flow, b)).head + headAtTee(branches, flow, b);
}

function throttled(
  branch: NetworkBranch,
  head: number,
  flow: number,
  shut: boolean | undefined,
): NetworkBranch {
  if (shut === true) return { ...branch, shut: true };
  if (head === 0) return branch;
  const trim = {
    path: branch.path,
    kind: 'trim',
    name: null,
    role: null,
    bore: branch.nearBore,
    resistance: quadraticLoss(head / flow ** 2),
  } as const;
  return { ...branch, elements: [...branch.elements, trim] };
}

function describe(
  { path, nearBore, elements }: NetworkBranch,
  outlets: readonly string[],
  { flow, head, closed }: { readonly flow: number; readonly head: number; readonly closed: boolean },
): Trim {
  if (closed)
    return {
      path,
      outlets,
      closed,
      flow: 0,
      head: null,
      lossCoefficient: null,
      diameter: nearBore,
      kv: null,
      ...(shuttingValve(elements) ?? NO_VALVE),
    };
  const velocity = nearBore === null ? null : flow / ((Math.PI / 4) * nearBore ** 2);
  return {
    path,
    outlets,
    closed,
    flow,
    head,
    lossCoefficient: velocity === null ? null : (head * 2 * GRAVITY) / velocity ** 2,
    diameter: nearBore,
    kv: kvOfLoss({ head, flow }),
    ...(trimmingValve(elements, { head, flow }) ?? NO_VALVE),
  };
}

/** The valve, and the opening [%] to set. */
interface ValveSetting {
  readonly valve: DocumentPath;
  readonly opening: number;
}

/**
 * The first valve of a run whose part openings are known. It is set to lose a trim's head [m] at its flow [m3/s]
 * besides what it loses already. Null where the run has none.
 */
function trimmingValve(
  elements: readonly PlacedResistance[],
  { head, flow }: { readonly head: number; readonly flow: number },
): ValveSetting | null {
  for (const { path, resistance, openingFor } of elements) {
    const opening = openingFor?.({ head: head + resistance.lossAt(flow).head, flow }) ?? null;
    if (opening !== null) return { valve: path, opening };
  }
  return null;
}

/** The first valve of a run, to be closed; null where it has none. */
function shuttingValve(elements: readonly PlacedResistance[]): ValveSetting | null {
  const valve = elements.find(({ kind }) => kind === 'valve');
  return valve === undefined ? null : { valve: valve.path, opening: 0 };
}

function outletsBeyond(branches: readonly NetworkBranch[], b: number): readonly string[] {
  const { outlet, children } = branchOf(branches, b);
  return outlet === null ? children.flatMap((c) => outletsBeyond(branches, c)) : [outlet.name];
}

function branchOf(branches: readonly NetworkBranch[], b: number): NetworkBranch {
  const branch = branches[b];
  if (branch === undefined) throw new Error(`branch ${b} is not in the network`);
  return branch;
}
