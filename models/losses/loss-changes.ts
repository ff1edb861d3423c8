/** Makes one of the losses of a loop smaller. */

import { largerPipe } from '../components/larger-pipe.ts';
import { scaled } from '../components/resistance.ts';
import type { DocumentPath } from '../loop/document-path.ts';
import type { Branch, Loop, RunElement } from '../loop/loop.ts';
import { type CompiledLoop, compileLoop } from '../network/compiled-loop.ts';
import type { NetworkBranch, PlacedResistance } from '../network/network.ts';
import { pipeworkSystem } from '../network/pipework-system.ts';
import { teeLossTimes } from '../network/tee-branch-loss.ts';
import type { LossRow } from './loss-rows.ts';

/** `boreUp`: the next larger pipe of its series; `halved`, `removed`: its head at any flow. */
export type Change = 'boreUp' | 'halved' | 'removed';

/**
 * The loop with `change` made to the element of a row.
 *
 * A wider pipe gives its bore to the elements that take theirs from it.
 * @returns null where the change has no meaning: `boreUp` of anything but a named pipe with a larger one in its
 *   series, `halved` of a pipe, `removed` of an outlet, whose stream takes its velocity head away in any case,
 *   anything of a lift, a trim or a system curve; and where another element does not fit the wider pipe.
 */
export function changedLoop(model: CompiledLoop, row: LossRow, change: Change): CompiledLoop | null {
  if (!isOffered(row, change)) return null;
  return change === 'boreUp' ? withWiderPipe(model, row) : withLossTimes(model, row, FACTORS[change]);
}

const FACTORS = { halved: 0.5, removed: 0 } as const;

const OFFERED: Readonly<Record<LossRow['kind'], readonly Change[]>> = {
  pipe: ['boreUp', 'removed'],
  fitting: ['halved', 'removed'],
  valve: ['halved', 'removed'],
  loss: ['halved', 'removed'],
  'bore-change': ['halved', 'removed'],
  intake: ['halved', 'removed'],
  outlet: ['halved'],
  'tee-branch': ['halved', 'removed'],
  lift: [],
  trim: [],
  'system-curve': [],
};

const isOffered = ({ kind }: LossRow, change: Change): boolean => OFFERED[kind].includes(change);

/** Whether any change is offered for a row. */
export const canChange = ({ kind }: LossRow): boolean => OFFERED[kind].length > 0;

function withLossTimes(model: CompiledLoop, row: LossRow, factor: number): CompiledLoop {
  const { network } = model;
  if (network === null) throw new Error('a loop without pipework has no element to change');
  const inList = (elements: readonly PlacedResistance[]) =>
    elements.map((one) =>
      one.kind === row.kind && samePath(one.path, row.path)
        ? { ...one, resistance: scaled(one.resistance, factor) }
        : one,
    );
  const changed = {
    ...network,
    suction: inList(network.suction),
    branches: network.branches.map((branch) => ({
      ...branch,
      elements: inList(branch.elements),
      teeLoss: changedTeeLoss(branch, row, factor),
    })),
  };
  return { ...model, network: changed, system: pipeworkSystem(changed) };
}

function changedTeeLoss(
  { teeLoss, path }: NetworkBranch,
  row: LossRow,
  factor: number,
): NetworkBranch['teeLoss'] {
  if (teeLoss === null || row.kind !== 'tee-branch' || !samePath(path, row.path)) return teeLoss;
  return factor === 0 ? null : teeLossTimes(teeLoss, factor);
}

const samePath = (one: DocumentPath, other: DocumentPath): boolean =>
  one.length === other.length && one.every((part, place) => part === other[place]);

function withWiderPipe({ entered: loop }: CompiledLoop, { name, path }: LossRow): CompiledLoop | null {
  const wider = name === null ? null : largerPipe(name);
  if (wider === null) return null;
  const built = compileLoop(withElement(loop, path, (element) => ({ ...element, pipe: wider.name })));
  return built.ok ? built.value : null;
}

type ElementChange = (element: Extract<RunElement, { pipe: unknown }>) => RunElement;

function withElement(loop: Loop, path: DocumentPath, change: ElementChange): Loop {
  if ('systemCurve' in loop) return loop;
  const inRun = (run: readonly RunElement[], at: DocumentPath) =>
    run.map((element, index) =>
      'pipe' in element && samePath([...at, index], path) ? change(element) : element,
    );
  const inBranch = (branch: Branch, at: DocumentPath): Branch => ({
    ...branch,
    run: inRun(branch.run, [...at, 'run']),
    branches: branch.branches?.map((child, index) => inBranch(child, [...at, 'branches', index])),
  });
  return {
    ...loop,
    suction: inRun(loop.suction, ['suction']),
    discharge: inBranch(loop.discharge, ['discharge']),
  };
}
