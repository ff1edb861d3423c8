/** Finds the closed valves of a loop, with the outlets that receive no water because of them. */

import type { DocumentPath } from './document-path.ts';
import type { Branch, Loop, RunElement } from './loop.ts';

export interface ShutValve {
  readonly path: DocumentPath;
  /** Names of the outlets beyond it. */
  readonly outlets: readonly string[];
}

/** The closed valves from the suction on: one a run, the first, and none beyond another. */
export function shutValves(loop: Loop): readonly ShutValve[] {
  if ('systemCurve' in loop) return [];
  const atSuction = shutIn(loop.suction, ['suction']);
  if (atSuction !== null) return [{ path: atSuction, outlets: outletsOf(loop.discharge) }];
  return beyond(loop.discharge, ['discharge']);
}

function beyond(branch: Branch, path: DocumentPath): readonly ShutValve[] {
  const shut = shutIn(branch.run, [...path, 'run']);
  if (shut !== null) return [{ path: shut, outlets: outletsOf(branch) }];
  return (branch.branches ?? []).flatMap((child, place) => beyond(child, [...path, 'branches', place]));
}

function shutIn(run: readonly RunElement[], path: DocumentPath): DocumentPath | null {
  const place = run.findIndex((element) => 'valve' in element && element.opening === 0);
  return place < 0 ? null : [...path, place];
}

const outletsOf = ({ outlet, branches = [] }: Branch): readonly string[] =>
  outlet === undefined ? branches.flatMap(outletsOf) : [outlet.name];
