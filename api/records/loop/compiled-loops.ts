/** Loops made ready once a version: what callers ask again and again is not compiled again and again. */
import { LRUCache } from 'lru-cache';
import { type Result, success } from '../../../curves/result.ts';
import { type AppliedCalibration, calibratedLoop } from '../../../models/calibration/applied.ts';
import type { Loop } from '../../../models/loop/loop.ts';
import type { CompiledLoop } from '../../../models/network/compiled-loop.ts';
import {
  type BalancedLoop,
  type BalanceFailure,
  balancedLoop,
} from '../../../models/selection/balanced-loop.ts';
import type { Balancing } from '../../../models/selection/options.ts';
import type { PathPart } from '../../http/json-pointer.ts';
import type { Problem } from '../../http/problem.ts';
import { compileLoopOrProblem } from './compile.ts';

/** A loop with the version it was read at; null where it came with the request. */
export interface VersionedLoop {
  readonly id: string | null;
  readonly version: number | null;
  /** As entered. */
  readonly document: Loop;
  readonly calibration?: AppliedCalibration | null | undefined;
}

export interface ReadyLoop {
  /** Of the loop with its calibration, which `model.loop` is. */
  readonly model: CompiledLoop;
  /** Worked out when first asked for. */
  balanced(balancing: Balancing): Result<BalancedLoop, BalanceFailure>;
}

export interface LoopCache {
  /** `at` is where a loop of the request stands in its body. */
  ready(loop: VersionedLoop, at: readonly PathPart[]): Result<ReadyLoop, Problem>;
}

/** Branches of all loops kept, roughly: a branch's samples take some 20 kB. */
const KEPT_BRANCHES = 10_000;

export function loopCache(): LoopCache {
  // An import may bring a loop that had been deleted back under its id and version, changed: the document decides.
  const kept = new LRUCache<string, { readonly document: Loop; readonly ready: ReadyLoop }>({
    maxSize: KEPT_BRANCHES,
    sizeCalculation: ({ ready: { model } }) => 1 + (model.network?.branches.length ?? 0),
  });
  return {
    ready({ id, version, document: entered, calibration }, at) {
      const document = calibratedLoop(entered, calibration);
      const key = id === null ? null : `${id} ${version}`;
      const known = key === null ? undefined : kept.get(key);
      if (known !== undefined && known.document === document) return success(known.ready);
      const model = compileLoopOrProblem(document, at);
      if (!model.ok) return model;
      const ready = readyLoop(model.value);
      if (key !== null) kept.set(key, { document, ready });
      return success(ready);
    },
  };
}

function readyLoop(model: CompiledLoop): ReadyLoop {
  const balanced = new Map<Balancing, Result<BalancedLoop, BalanceFailure>>();
  return {
    model,
    balanced(balancing) {
      const known = balanced.get(balancing) ?? balancedLoop(model, balancing);
      balanced.set(balancing, known);
      return known;
    },
  };
}
