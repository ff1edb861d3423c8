/** Compiles loops once a version, since callers ask about the same loop again and again. */
import { LRUCache } from 'lru-cache';
import { type Result, success } from '../../../curves/result.ts';
import { type AppliedCalibration, calibratedLoop } from '../../../models/calibration/applied.ts';
import type { Loop } from '../../../models/loop/loop.ts';
import type { CompiledLoop } from '../../../models/network/compiled-loop.ts';
import type { PathPart } from '../../http/json-pointer.ts';
import type { Problem } from '../../http/problem.ts';
import { compileLoopOrProblem } from './compile.ts';

/** A loop with the version it was read at; null where it came with the request. */
export interface StoredLoop {
  readonly id: string | null;
  readonly key?: string | undefined;
  readonly version: number | null;
  /** As entered. */
  readonly document: Loop;
  readonly calibration?: AppliedCalibration | null | undefined;
}

export interface CompiledLoops {
  /** The loop with its calibration, which is `entered` of the model. `at` is the place of a loop of the request in its body. */
  compile(loop: StoredLoop, at: readonly PathPart[]): Result<CompiledLoop, Problem>;
}

/** Branches of all loops kept, roughly: a branch's samples take some 20 kB. */
const KEPT_BRANCHES = 10_000;

/**
 * The key is the loop's id and version. An import may bring a loop that had been deleted back under its id and version,
 * changed, so that a model is given only for the very document that it was compiled from.
 */
export function compiledLoops(): CompiledLoops {
  const kept = new LRUCache<string, CompiledLoop>({
    maxSize: KEPT_BRANCHES,
    sizeCalculation: ({ network }) => 1 + (network?.branches.length ?? 0),
  });
  return {
    compile({ id, version, document: entered, calibration }, at) {
      const document = calibratedLoop(entered, calibration);
      const key = id === null ? null : `${id} ${version}`;
      const known = key === null ? undefined : kept.get(key);
      if (known !== undefined && known.entered === document) return success(known);
      const model = compileLoopOrProblem(document, at);
      if (model.ok && key !== null) kept.set(key, model.value);
      return model;
    },
  };
}
