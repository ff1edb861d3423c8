/** Keeps the arrays that a network is solved in, made once for each network. */
import { type StepBuffers, stepBuffers } from './linear-tree.ts';
import type { Network } from './network.ts';
import type { Passage } from './passage.ts';
import { type Tree, type TreeState, treeOf } from './tree.ts';
import { type EquationBuffers, equationBuffers } from './tree-equations.ts';

/** A state, and the equations at it. */
export interface Side extends TreeState {
  readonly buffers: EquationBuffers;
}

/** The arrays of one network. */
export interface SolverBuffers {
  readonly tree: Tree;
  readonly step: StepBuffers;
  /** The state reached, and the one tried next, by turns. */
  readonly sides: readonly [Side, Side];
  readonly allOutward: readonly Passage[];
  /** Zeros [m]. */
  readonly noResidual: Float64Array;
}

const side = (size: number): Side => ({
  flow: new Float64Array(size),
  head: new Float64Array(size),
  buffers: equationBuffers(size),
});

function made(network: Network): SolverBuffers {
  const size = network.branches.length;
  return {
    tree: treeOf(network),
    step: stepBuffers(size),
    sides: [side(size), side(size)],
    allOutward: network.branches.map(() => 'outward'),
    noResidual: new Float64Array(size),
  };
}

const buffersByNetwork = new WeakMap<Network, SolverBuffers>();

/**
 * The buffers of a network. Networks never change, and a solve ends before the next one begins: nothing of one solve
 * reaches another.
 */
export function buffersOf(network: Network): SolverBuffers {
  const known = buffersByNetwork.get(network);
  if (known !== undefined) return known;
  const buffers = made(network);
  buffersByNetwork.set(network, buffers);
  return buffers;
}
