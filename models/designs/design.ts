/** A design in full: its sizes, what each trim takes away, and the loop as a document. */
import { at } from '../../curves/at.ts';
import { kvOfLoss } from '../components/flow-coefficient.ts';
import { dutyPoint } from '../duty/duty-point.ts';
import type { DocumentPath } from '../loop/document-path.ts';
import type { PipeworkLoop, RunElement } from '../loop/loop.ts';
import { type CompiledLoop, compileLoop } from '../network/compiled-loop.ts';
import type { Network, NetworkBranch } from '../network/network.ts';
import { trimNetwork } from '../network/trim.ts';
import { velocityIn } from '../network/velocity-in.ts';
import { GRAVITY } from '../physics/gravity.ts';
import type { DesignOption } from './choose-options.ts';
import { type DesignLoop, listsOf, type Pipe } from './design-loop.ts';
import { type Appended, type Sizes, sizedLoop } from './sized-loop.ts';

/** A list with its chosen size. Length, head [m], velocity [m/s]; `head` is what the pipe itself loses. */
export interface DesignRun {
  readonly path: DocumentPath;
  readonly pipe: Pipe;
  readonly length: number;
  readonly velocity: number;
  readonly head: number;
  readonly cost: number;
}

/** A valve that takes a head [m] away, at its place in the loop of the design; figures are absent of a branch that is shut. */
export interface DesignTrim {
  readonly path: DocumentPath;
  readonly closed: boolean;
  readonly head: number | null;
  /** K [-] on the first bore of the run. */
  readonly lossCoefficient: number | null;
  /** m3/h at 1 bar. */
  readonly kv: number | null;
}

export interface DesignedLoop {
  readonly runs: readonly DesignRun[];
  readonly trims: readonly DesignTrim[];
  /** With sizes and trims, ready to be stored. */
  readonly loop: PipeworkLoop;
}

/** What a design is made of. */
export interface Choice {
  readonly loop: DesignLoop;
  readonly sizes: Sizes;
  /** [m3/s] */
  readonly flow: number;
  /** Given by the pump, and required without its trim [m]. */
  readonly head: number;
  /** [m] */
  readonly requiredHead: number;
}

/** Trims this small, as a share of the head given, are rounding. */
const NO_TRIM = 1e-12;

/** Builds the loop of a choice; throws where its network does not require the head that was counted on, which is a bug. `priceOf` [money/m]. */
export function designedLoop(choice: Choice, priceOf: (pipe: Pipe) => number): DesignedLoop {
  const network = networkOf(sizedLoop(choice.loop, choice.sizes));
  const added = trimsOf(choice, network);
  const loop = sizedLoop(choice.loop, choice.sizes, added);
  const trims = added.map(({ trim }) => trim);
  return { runs: runsOf(choice, network, priceOf), trims, loop };
}

function modelOf(loop: PipeworkLoop): CompiledLoop {
  const model = compileLoop(loop);
  if (!model.ok) throw new Error(`invariant: a design cannot be built, ${model.failure.code}`);
  return model.value;
}

function networkOf(loop: PipeworkLoop): Network {
  const { network } = modelOf(loop);
  if (network === null) throw new Error('invariant: a design has pipework');
  return network;
}

interface AddedTrim extends Appended {
  readonly trim: DesignTrim;
}

/** That of the pump at the end of the discharge's first run, then those of the branches. */
function trimsOf({ loop, flow, head, requiredHead }: Choice, network: Network): readonly AddedTrim[] {
  const { frictionMultiplier } = loop;
  const byPath = new Map(network.branches.map((branch) => [branch.path.join('/'), branch]));
  const trimAt = (branch: DocumentPath, lost: number, own: number): AddedTrim => {
    const diameter = byPath.get(branch.join('/'))?.nearBore ?? null;
    const kv = kvOfLoss({ head: lost, flow: own });
    const velocityHead = diameter === null ? null : velocityIn(diameter, own) ** 2 / (2 * GRAVITY);
    const lossCoefficient = velocityHead === null ? null : lost / velocityHead;
    // The multiplier acts on every element of a run, and so on this one too.
    const element = { valve: { kv: kv * Math.sqrt(frictionMultiplier) } };
    const path = endOfRun(loop, branch);
    return { branch, element, trim: { path, closed: false, head: lost, lossCoefficient, kv } };
  };
  const ofPump = head - requiredHead;
  return [
    ...(ofPump > NO_TRIM * Math.abs(head) ? [trimAt(['discharge'], ofPump, flow)] : []),
    ...trimNetwork(network).trims.map((trim) =>
      trim.head === null ? closedAt(loop, trim) : trimAt(trim.path, trim.head, trim.flow),
    ),
  ];
}

function closedAt(
  loop: DesignLoop,
  { path: branch, diameter }: { readonly path: DocumentPath; readonly diameter: number | null },
): AddedTrim {
  // A valve of a table needs a bore, even shut.
  const element: RunElement =
    diameter === null ? { valve: { kv: 1 }, opening: 0 } : { valve: 'ball', opening: 0 };
  const figures = { head: null, lossCoefficient: null, kv: null };
  return { branch, element, trim: { path: endOfRun(loop, branch), closed: true, ...figures } };
}

/** The place behind the last element of a branch's run. */
function endOfRun({ discharge }: DesignLoop, path: DocumentPath): DocumentPath {
  let branch = discharge;
  for (const token of path) {
    if (typeof token !== 'number') continue;
    const child = branch.branches?.[token];
    if (child === undefined) throw new Error(`invariant: the loop has no branch ${path.join('/')}`);
    branch = child;
  }
  return [...path, 'run', branch.run.length];
}

function runsOf(
  { loop, sizes }: Choice,
  network: Network,
  priceOf: (pipe: Pipe) => number,
): readonly DesignRun[] {
  const flows = flowsByElement(network);
  return listsOf(loop).map(({ path, pipes, length }, list) => {
    const pipe = pipes[at(sizes, list)];
    const placed = flows.get(path.join('/'));
    if (pipe === undefined || placed === undefined)
      throw new Error(`invariant: no pipe at ${path.join('/')}`);
    const { velocity, head } = placed;
    return { path, pipe, length, velocity, head, cost: priceOf(pipe) * length };
  });
}

/** Velocity [m/s] in each pipe and the head [m] that it loses, by its place, at the required flows. */
function flowsByElement(network: Network): ReadonlyMap<string, { velocity: number; head: number }> {
  const found = new Map<string, { velocity: number; head: number }>();
  const flows = requiredFlowsOf(network.branches);
  const add = (elements: Network['suction'], flow: number): void => {
    for (const { kind, path, bore, resistance } of elements) {
      if (kind !== 'pipe' || bore === null) continue;
      found.set(path.join('/'), { velocity: velocityIn(bore, flow), head: resistance.lossAt(flow).head });
    }
  };
  add(network.suction, flows[0] ?? 0);
  for (const [index, { elements }] of network.branches.entries()) add(elements, at(flows, index));
  return found;
}

function requiredFlowsOf(branches: readonly NetworkBranch[]): readonly number[] {
  const flows = branches.map(({ outlet }) => outlet?.requiredFlow ?? 0);
  for (let b = branches.length - 1; b > 0; b--) {
    const parent = branches[b]?.parent ?? -1;
    flows[parent] = at(flows, parent) + at(flows, b);
  }
  return flows;
}

/** Flows within this share are one. */
const SAME_FLOW = 1e-6;

/** Whether the pump of an option, coming from rest, runs at the required flow [m3/s] in its loop. */
export function runsAtFlow({ loop }: DesignedLoop, { offer }: DesignOption, flow: number): boolean {
  const duty = dutyPoint(modelOf(loop), offer.pump);
  return !duty.deadHead && Math.abs(duty.flow - flow) <= SAME_FLOW * flow;
}
