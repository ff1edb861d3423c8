/** A loop whose pipes are partly still to be chosen: a pipe element may list the sizes that it can have. */
import type { DocumentPath } from '../loop/document-path.ts';
import type { Branch, PipeBore, PipeworkLoop, RunElement } from '../loop/loop.ts';

export type Pipe = string | PipeBore;

/** A pipe of a known length [m] and 1 to 12 candidate sizes. */
export interface PipeList {
  readonly pipes: readonly Pipe[];
  readonly length: number;
}

export type DesignElement = RunElement | PipeList;

export interface DesignBranch extends Omit<Branch, 'run' | 'branches'> {
  readonly run: readonly DesignElement[];
  readonly branches?: readonly DesignBranch[] | undefined;
}

export interface DesignLoop extends Omit<PipeworkLoop, 'suction' | 'discharge'> {
  readonly suction: readonly DesignElement[];
  readonly discharge: DesignBranch;
}

/** A list at its place in the document. */
export interface PlacedList extends PipeList {
  readonly path: DocumentPath;
}

const listsIn = (run: readonly DesignElement[], path: DocumentPath): readonly PlacedList[] =>
  run.flatMap((element, place) => ('pipes' in element ? [{ ...element, path: [...path, place] }] : []));

const listsBeyond = (branch: DesignBranch, path: DocumentPath): readonly PlacedList[] => [
  ...listsIn(branch.run, [...path, 'run']),
  ...(branch.branches ?? []).flatMap((child, place) => listsBeyond(child, [...path, 'branches', place])),
];

/** Every list: those of the suction first, then those of the discharge, each branch before the next. */
export const listsOf = ({ suction, discharge }: DesignLoop): readonly PlacedList[] => [
  ...listsIn(suction, ['suction']),
  ...listsBeyond(discharge, ['discharge']),
];

/** The runs of a branch and of all beyond it. */
const runsBeyond = ({ branches = [] }: DesignBranch): number =>
  branches.reduce((sum, child) => sum + runsBeyond(child), 1);

/** How many runs [-] the loop has, its suction among them. */
export const countRuns = ({ discharge }: DesignLoop): number => 1 + runsBeyond(discharge);
