/** The runs of a loop whose sizes are to be chosen, from the intake to the outlets, each cut at its pipes. */
import { BORE_CHANGES } from '../loop/bore-changes.ts';
import type { DocumentPath } from '../loop/document-path.ts';
import type { Outlet, RunElement } from '../loop/loop.ts';
import { pipeBore } from '../network/bores.ts';
import { velocityIn } from '../network/velocity-in.ts';
import type { DesignBranch, DesignElement, DesignLoop, Pipe } from './design-loop.ts';
import { type PipePrice, priceOfPipe } from './pipe-price.ts';
import type { BranchFlow } from './required-flows.ts';

/** One way to fill a place for a pipe. */
export interface Size {
  readonly pipe: Pipe;
  /** [m] */
  readonly bore: number;
  /** Money for its whole length; 0 of a pipe that is not to be chosen [money]. */
  readonly cost: number;
  /** Its place in the list [-]. */
  readonly place: number;
  /** Whether the velocity in it keeps to the limit; a pipe that is not to be chosen always counts as allowed. */
  readonly allowed: boolean;
}

/** A pipe of a run, with what lies between it and the next pipe. */
export interface PipePlace {
  /** Which list it is, by `listsOf`; null of a pipe that is not to be chosen [-]. */
  readonly list: number | null;
  /** [m] */
  readonly length: number;
  readonly sizes: readonly Size[];
  /** Whether a step to the next pipe of the run costs head where no element is entered for it. */
  readonly chargesStep: boolean;
  readonly after: readonly RunElement[];
}

export interface Run {
  /** Of the branch; that of the suction is the whole loop's. */
  readonly path: DocumentPath;
  readonly isSuction: boolean;
  /** [m3/s] */
  readonly flow: number;
  /** What lies before the first pipe. */
  readonly lead: readonly RunElement[];
  readonly pipes: readonly PipePlace[];
  readonly outlet: Outlet | null;
  /** Head [m] at an outlet: its rise from the surface drawn from. */
  readonly lift: number;
  readonly split: 'tee-90' | undefined;
  readonly beyond: readonly Run[];
}

/** Head [m] required at an outlet whose exit loses a head [m]; without a flow none is, since the branch is shut. */
export const headAtOutlet = ({ flow, lift }: Run, exitLoss: number): number =>
  flow > 0 ? lift + exitLoss : Number.NEGATIVE_INFINITY;

export interface RunTerms {
  readonly prices: readonly PipePrice[];
  /** [m/s]; null: none. */
  readonly pipeVelocity: number | null;
}

/** A velocity this far above its limit, as a share, is at the limit. */
const EQUAL = 1e-9;

/** The suction, with the discharge beyond it. Every pipe must be known and every candidate have a price. */
export function runTree(loop: DesignLoop, flows: BranchFlow, terms: RunTerms): Run {
  const lists = { next: 0 };
  const chargesStep = (loop.boreChanges ?? BORE_CHANGES) === 'abrupt';
  const cut = (run: readonly DesignElement[], flow: number) =>
    cutAtPipes(run, { flow, terms, lists, chargesStep });
  const runOf = (branch: DesignBranch, { flow, beyond }: BranchFlow, path: DocumentPath): Run => ({
    path,
    isSuction: false,
    flow,
    ...cut(branch.run, flow),
    outlet: branch.outlet ?? null,
    lift: loop.staticHead + (branch.outlet?.staticHead ?? 0),
    split: branch.split,
    beyond: beyond.map((child, place) => runOf(childOf(branch, place), child, [...path, 'branches', place])),
  });
  // The suction's lists come first.
  const suction = cut(loop.suction, flows.flow);
  const discharge = runOf(loop.discharge, flows, ['discharge']);
  return {
    ...{ path: ['suction'], isSuction: true, flow: flows.flow, ...suction },
    ...{ outlet: null, lift: 0, split: undefined, beyond: [discharge] },
  };
}

function childOf({ branches }: DesignBranch, place: number): DesignBranch {
  const child = branches?.[place];
  if (child === undefined) throw new Error(`invariant: there is no branch ${place}`);
  return child;
}

interface Cutting {
  readonly flow: number;
  readonly terms: RunTerms;
  readonly lists: { next: number };
  readonly chargesStep: boolean;
}

function cutAtPipes(run: readonly DesignElement[], cutting: Cutting): Pick<Run, 'lead' | 'pipes'> {
  const lead: RunElement[] = [];
  const pipes: (PipePlace & { readonly after: RunElement[] })[] = [];
  for (const element of run) {
    if ('pipes' in element || 'pipe' in element) pipes.push({ ...placeOf(element, cutting), after: [] });
    else (pipes.at(-1)?.after ?? lead).push(element);
  }
  return { lead, pipes };
}

function placeOf(
  element: Extract<DesignElement, { pipe: unknown } | { pipes: unknown }>,
  { flow, terms: { prices, pipeVelocity }, lists, chargesStep }: Cutting,
): Omit<PipePlace, 'after'> {
  const { length } = element;
  if (!('pipes' in element)) {
    const { pipe } = element;
    return {
      list: null,
      length,
      chargesStep,
      sizes: [{ pipe, bore: boreOf(pipe), cost: 0, place: 0, allowed: true }],
    };
  }
  const list = lists.next;
  lists.next += 1;
  const sizes = element.pipes.map((pipe, place): Size => {
    const bore = boreOf(pipe);
    const price = priceOfPipe(prices, pipe);
    if (price === null) throw new Error('invariant: every candidate has a price');
    const allowed = pipeVelocity === null || velocityIn(bore, flow) <= pipeVelocity * (1 + EQUAL);
    return { pipe, bore, cost: price * length, place, allowed };
  });
  return { list, length, chargesStep, sizes };
}

function boreOf(pipe: Pipe): number {
  const size = pipeBore(pipe);
  if (size === null) throw new Error('invariant: every pipe is known');
  return size.bore;
}

/** Every pipe with the flow [m3/s] in it, in the order of the loop. */
export const placesOf = ({
  pipes,
  flow,
  beyond,
}: Run): readonly (PipePlace & { readonly flow: number })[] => [
  ...pipes.map((place) => ({ ...place, flow })),
  ...beyond.flatMap(placesOf),
];
