/** Describes a loop's pipework compiled for solving: branches in preorder, each with its resistances. */

import type { Resistance } from '../components/resistance.ts';
import type { Role } from '../components/role.ts';
import type { DocumentPath } from '../loop/document-path.ts';
import type { Exit } from '../loop/loop.ts';
import type { TeeBranchLoss } from './tee-branch-loss.ts';

/** A resistance, and the element of the loop that it represents; a step of bore has the place of the pipe after it. */
export interface PlacedResistance {
  readonly path: DocumentPath;
  readonly kind: 'pipe' | 'fitting' | 'valve' | 'loss' | 'bore-change' | 'intake' | 'outlet' | 'trim';
  /** Standard or table name; null where the element has none. */
  readonly name: string | null;
  /** Role of its row; null of a loss that names no thing, and of a trim. */
  readonly role: Role | null;
  /** Bore that the velocity is taken in [m]; null where a loss is stated without one. */
  readonly bore: number | null;
  readonly resistance: Resistance;
  /** Of a step of bore: K [-] on `bore`, before the friction multiplier. */
  readonly lossCoefficient?: number;
  /**
   * Of a valve: the opening [%] at which it would lose a head [m] at a flow [m3/s]; null where no published relation
   * gives one.
   */
  readonly openingFor?: (loss: { readonly head: number; readonly flow: number }) => number | null;
}

/** An outlet of the pipework. */
export interface NetworkOutlet {
  readonly name: string;
  readonly path: DocumentPath;
  /** Larger of the stated flow and the flow that the stated reach takes [m3/s]; null where nothing is required. */
  readonly requiredFlow: number | null;
  /** [m3/s]; null without one. */
  readonly maximumFlow: number | null;
  /** Area that the stream leaves through, all nozzles together [m2]; null where neither nozzle nor pipe is known. */
  readonly area: number | null;
  /** Bore that the stream leaves through [m]; null where neither nozzle nor pipe is known. */
  readonly nozzleDiameter: number | null;
  /** [-] */
  readonly nozzleCount: number;
  /** Distance [m] on the axis and velocity [m/s] there; null where none is stated. */
  readonly reach: { readonly distance: number; readonly velocity: number } | null;
  /** A free outlet never draws water back. */
  readonly exit: Exit;
}

/** A branch of the pipework. */
export interface NetworkBranch {
  readonly path: DocumentPath;
  /** Index [-] of the branch that feeds this one; -1 at the root. Always lower than the branch's own index. */
  readonly parent: number;
  /** Indices [-] of the branches that it feeds. */
  readonly children: readonly number[];
  readonly elements: readonly PlacedResistance[];
  /** What it loses at the tee that it leaves. */
  readonly teeLoss: TeeBranchLoss | null;
  /** A check valve or foot valve lies in its run: no water runs backwards through it. */
  readonly hasCheckValve: boolean;
  /** The loss stated for the split at the far end. */
  readonly split: 'tee-90' | null;
  readonly outlet: NetworkOutlet | null;
  /** Head at the branch's far end where it is an outlet [m]: the rise from the surface drawn from. */
  readonly lift: number;
  /** No water passes: a closed valve is in its run, or everything beyond it is closed. */
  readonly shut: boolean;
  /** Bore at the branch's far end [m], from its last pipe or the nearest upstream. */
  readonly farBore: number | null;
  /** Bore of the first element of the run that has one [m], else the bore at the node it leaves. */
  readonly nearBore: number | null;
  /** Highest point of the run [m] above the surface drawn from; null where it is not stated. */
  readonly highestElevation: number | null;
}

/** The pipework of a loop. */
export interface Network {
  /** Elements from the intake to the pump; they carry the whole flow. */
  readonly suction: readonly PlacedResistance[];
  /** Preorder; index 0 is the discharge's root, which carries the whole flow. */
  readonly branches: readonly NetworkBranch[];
  /** Indices [-] of the branches that end in an outlet, in document order. */
  readonly outlets: readonly number[];
  /** First suction pipe's bore [m], where the intake's velocity is taken. */
  readonly intakeBore: number | null;
  /** Of the water [m2/s]. */
  readonly kinematicViscosity: number;
}

/** Head lost over a list of elements at a flow [m3/s], either way [m], and its slope [s/m2]. */
export function lossOver(
  elements: readonly PlacedResistance[],
  flow: number,
): { readonly head: number; readonly slope: number } {
  let head = 0;
  let slope = 0;
  for (const element of elements) {
    const loss = element.resistance.lossAt(flow);
    head += loss.head;
    slope += loss.slope;
  }
  return { head, slope };
}
