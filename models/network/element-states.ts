/** Finds the head before and behind every element of a solved network. */
import { at } from '../../curves/at.ts';
import type { Network, NetworkBranch, PlacedResistance } from './network.ts';
import type { NetworkSolution } from './solve-network.ts';

/** An element with what passes it. */
export interface ElementState {
  readonly element: PlacedResistance;
  /** Null in the suction. */
  readonly branch: NetworkBranch | null;
  /** In the direction of the document [m3/s]. */
  readonly flow: number;
  /** At its start in the document, over the surface drawn from [m]. */
  readonly headBefore: number;
  /** At its end [m]. */
  readonly headBehind: number;
  /** Bore that its velocity is taken in [m]: its own, else that of the element before it, at the start of a run that of the next; null where none has one. */
  readonly bore: number | null;
}

/**
 * The suction's elements, then those of the branches in their order. In the suction heads [m] fall from the surface drawn
 * from; in a branch they are counted back from the solution's head at its far end.
 */
export function elementStates(
  { suction, branches }: Network,
  { flows, heads }: Pick<NetworkSolution, 'flows' | 'heads'>,
): readonly ElementState[] {
  const drawn = statesOf(suction, { branch: null, flow: at(flows, 0), start: 0 });
  const delivered = branches.flatMap((branch, b) => {
    const flow = at(flows, b);
    const lost = branch.elements.reduce((sum, { resistance }) => sum + resistance.lossAt(flow).head, 0);
    return statesOf(branch.elements, { branch, flow, start: at(heads, b) + lost });
  });
  return [...drawn, ...delivered];
}

function statesOf(
  elements: readonly PlacedResistance[],
  { branch, flow, start }: Pick<ElementState, 'branch' | 'flow'> & { readonly start: number },
): readonly ElementState[] {
  let head = start;
  let bore = elements.find((element) => element.bore !== null)?.bore ?? branch?.nearBore ?? null;
  return elements.map((element) => {
    const headBefore = head;
    head -= element.resistance.lossAt(flow).head;
    bore = element.bore ?? bore;
    return { element, branch, flow, headBefore, headBehind: head, bore };
  });
}
