/** The arrays that a network is solved in, made once for each network. */
import { type StepRoom, stepRoom } from './linear-tree.ts';
import type { Network } from './network.ts';
import type { SideDirection } from './side-directions.ts';
import { type Tree, type TreeState, treeOf } from './tree.ts';
import { type EquationsRoom, equationsRoom } from './tree-equations.ts';

/** A state, and the equations at it. */
export interface Side extends TreeState {
  readonly room: EquationsRoom;
}

export interface Workshop {
  readonly tree: Tree;
  readonly step: StepRoom;
  /** The state reached, and the one tried next, by turns. */
  readonly sides: readonly [Side, Side];
  readonly allOutward: readonly SideDirection[];
  readonly noResidual: Float64Array;
}

const side = (size: number): Side => ({
  flow: new Float64Array(size),
  head: new Float64Array(size),
  room: equationsRoom(size),
});

function open(network: Network): Workshop {
  const size = network.branches.length;
  return {
    tree: treeOf(network),
    step: stepRoom(size),
    sides: [side(size), side(size)],
    allOutward: network.branches.map(() => 'outward'),
    noResidual: new Float64Array(size),
  };
}

const workshops = new WeakMap<Network, Workshop>();

/** Networks never change, and a solve ends before the next one begins: nothing of one solve reaches another. */
export function workshopOf(network: Network): Workshop {
  const known = workshops.get(network);
  if (known !== undefined) return known;
  const opened = open(network);
  workshops.set(network, opened);
  return opened;
}
