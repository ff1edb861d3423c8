/** Finds the loop of an assembly, which is stored, sent along, or joined from several. */
import { failed, type Result, success } from '../../../../curves/result.ts';
import { type ConsolidationFailure, consolidatedLoop } from '../../../../models/loop/consolidated-loop.ts';
import type { Loop, PipeworkLoop } from '../../../../models/loop/loop.ts';
import type { CompiledLoop } from '../../../../models/network/compiled-loop.ts';
import { BRANCH_DEPTH_MAX, BRANCHES_MAX } from '../../../fields/limits.ts';
import { type PathPart, toPointer } from '../../../http/json-pointer.ts';
import { invalidRequest, type Problem } from '../../../http/problem.ts';
import { extentOf } from '../../../records/loop/checks.ts';
import type { StoredLoop } from '../../../records/loop/compiled-loops.ts';
import { findLoop } from '../../../records/loop/kind.ts';
import type { ComparisonContext } from '../context.ts';
import type { ComparisonQuestion } from '../schema.ts';

export type AskedAssembly = ComparisonQuestion['options'][number]['assemblies'][number];

export interface AssemblyLoop {
  readonly loop: StoredLoop;
  readonly model: CompiledLoop;
  /** The loop itself, or those that are joined. */
  readonly parts: readonly StoredLoop[];
}

type Context = Pick<ComparisonContext, 'store' | 'loops'>;
type Path = readonly PathPart[];

/** Null where the power of the assembly is stated without a loop; `path` is its place in the body. */
export async function assemblyLoop(
  context: Context,
  { loop, consolidate }: AskedAssembly,
  path: Path,
): Promise<Result<AssemblyLoop | null, Problem>> {
  if (loop !== undefined) return ofOne(context, loop, [...path, 'loop']);
  return consolidate === undefined ? success(null) : joined(context, consolidate, [...path, 'consolidate']);
}

async function ofOne(
  { store, loops }: Context,
  asked: string | Loop,
  path: Path,
): Promise<Result<AssemblyLoop, Problem>> {
  const found =
    typeof asked === 'string'
      ? await findLoop(store, asked, { pointer: toPointer(path) })
      : success({ id: null, version: null, document: asked });
  if (!found.ok) return found;
  const model = loops.compile(found.value, path);
  return model.ok ? success({ loop: found.value, model: model.value, parts: [found.value] }) : model;
}

async function joined(
  context: Context,
  { loops: asked, suction, manifold, intake }: NonNullable<AskedAssembly['consolidate']>,
  path: Path,
): Promise<Result<AssemblyLoop, Problem>> {
  const parts: StoredLoop[] = [];
  for (const [place, one] of asked.entries()) {
    // Each must hold by itself, so that a fault is named where it was entered.
    const found = await ofOne(context, one, [...path, 'loops', place]);
    if (!found.ok) return found;
    parts.push(found.value.loop);
  }
  const made = consolidatedLoop({ loops: parts.map(({ document }) => document), suction, manifold, intake });
  if (!made.ok) return failed(consolidationProblem(made.failure, path));
  const beyond = beyondLimits(made.value, path);
  if (beyond !== null) return failed(beyond);
  const loop = { id: null, version: null, document: made.value };
  const model = context.loops.compile(loop, []);
  if (!model.ok) return failed(elsewhere(model.failure, path));
  return success({ loop, model: model.value, parts });
}

/** Each loop keeps the limits by itself; all of them together may not. */
function beyondLimits({ discharge }: PipeworkLoop, path: Path): Problem | null {
  const { branches, levels } = extentOf(discharge);
  const pointer = toPointer([...path, 'loops']);
  const over = (noun: string, { limit, actual }: { limit: number; actual: number }) =>
    actual <= limit
      ? []
      : [{ pointer, detail: `have ${actual} ${noun} when joined; ${limit} are the limit`, limit, actual }];
  const errors = [
    ...over('branches', { limit: BRANCHES_MAX, actual: branches }),
    ...over('levels of branches', { limit: BRANCH_DEPTH_MAX, actual: levels }),
  ];
  return errors.length === 0 ? null : invalidRequest(errors);
}

const REMEDIES = {
  'no-pipework': 'is known by its system curve alone and cannot be joined with others',
  'other-water': 'has other water than the first: loops that are joined share theirs',
  'other-friction': 'has another frictionMultiplier than the first; state one for all',
  'other-bore-changes': 'has other boreChanges than the first; state one for all',
} as const satisfies Record<ConsolidationFailure['code'], string>;

const consolidationProblem = ({ code, place }: ConsolidationFailure, path: Path): Problem =>
  invalidRequest([{ pointer: toPointer([...path, 'loops', place]), detail: REMEDIES[code] }]);

/** Of the joined loop only suction and manifold were not checked before; its pointers are turned into those of the body. */
function elsewhere(problem: Problem, path: Path): Problem {
  const at = toPointer(path);
  const errors = (problem.errors ?? []).map((error) => {
    const pointer = `${at}${(error.pointer ?? '').replace(/^\/discharge\/run/, '/manifold')}`;
    return { ...error, pointer };
  });
  return invalidRequest(errors);
}
