/** A pump on a network as plain equations: the flows of all branches and the heads of all nodes are unknown. */
import { headAtTee } from '../../models/network/flows-at-tee.ts';
import { lossOver, type Network } from '../../models/network/network.ts';
import type { PumpAtSetting } from '../../models/pump/pump-at-setting.ts';

/**
 * Unknowns: the flow of each branch [L/s] in the order of the network, then the head at each node [m]. Equations: the
 * balance of heads along each branch [m], then that of flows at each node [L/s]; as many as unknowns, all 0 at the duty.
 */
export interface NetworkEquations {
  readonly count: number;
  /** Every node's flow split evenly over the outlets beyond it, half of the pump's shutoff head everywhere. */
  start(totalFlow: number): number[];
  residuals(unknowns: readonly number[]): Float64Array;
}

const LITRE_PER_SECOND = 1e-3;

function outletsBeyond({ branches, outlets }: Network): Float64Array {
  const beyond = new Float64Array(branches.length);
  for (const end of outlets) {
    for (let b = end; b >= 0; b = branches[b]?.parent ?? -1) beyond[b] = (beyond[b] ?? 0) + 1;
  }
  return beyond;
}

/** For water that runs outward at every tee. */
export function networkEquations(network: Network, pump: PumpAtSetting): NetworkEquations {
  const { branches, suction, outlets } = network;
  const nodes = branches.flatMap(({ outlet }, b) => (outlet === null ? [b] : []));
  const placeOfNode = new Map(nodes.map((b, place) => [b, branches.length + place]));
  const count = branches.length + nodes.length;
  const headAtEnd = (unknowns: readonly number[], b: number): number => {
    const place = placeOfNode.get(b);
    return (place === undefined ? branches[b]?.lift : unknowns[place]) ?? Number.NaN;
  };
  const flowOf = (unknowns: readonly number[], b: number): number =>
    (unknowns[b] ?? Number.NaN) * LITRE_PER_SECOND;
  return {
    count,
    start: (totalFlow) => {
      const beyond = outletsBeyond(network);
      const flows = Array.from(
        beyond,
        (reached) => (totalFlow * reached) / outlets.length / LITRE_PER_SECOND,
      );
      return [...flows, ...nodes.map(() => pump.headAt(0).head / 2)];
    },
    residuals: (unknowns) => {
      const values = new Float64Array(count);
      const flows = branches.map((_, b) => flowOf(unknowns, b));
      for (const [b, { elements, parent }] of branches.entries()) {
        const flow = flowOf(unknowns, b);
        const from =
          b === 0 ? pump.headAt(flow).head - lossOver(suction, flow).head : headAtEnd(unknowns, parent);
        const atTee = headAtTee(branches, flows, b);
        values[b] = from - lossOver(elements, flow).head - atTee - headAtEnd(unknowns, b);
      }
      for (const [place, b] of nodes.entries()) {
        let left = unknowns[b] ?? Number.NaN;
        for (const child of branches[b]?.children ?? []) left -= unknowns[child] ?? Number.NaN;
        values[branches.length + place] = left;
      }
      return values;
    },
  };
}
