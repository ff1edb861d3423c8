/** Finds and fits the pumps that a recommendation chooses among. */

import { failed, type Result, success } from '../../curves/result.ts';
import type { Pump } from '../../models/pump/pump.ts';
import type { PumpModel } from '../../models/pump/pump-model.ts';
import { gridSize } from '../../models/pump/settings-grid.ts';
import { type Place, type Problem, problem } from '../http/problem.ts';
import { unknownRecord } from '../http/unknown-record.ts';
import { fitPumpOrProblem } from '../records/pump/fit.ts';
import { findPumps, PUMPS, type PumpRecord } from '../records/pump/kind.ts';
import { recordReference } from '../store/record-reference.ts';
import type { SiteStore } from '../store/store.ts';

export interface Candidate extends CandidateWork {
  readonly version: number | null;
}

/** A pump by its id or as it came with the request; `path` is its place in the body, `place` where faults are named. */
export interface CandidateRequest {
  readonly pump: string | Pump;
  readonly count: number;
  readonly path: readonly (string | number)[];
  readonly place: Place;
}

/** Settings of all candidates together that one request may look through. */
const SETTINGS_IN_ALL = 1_000_000;

const ofRecord = ({ id, key, version, document, fit }: PumpRecord, count: number): Candidate => ({
  id,
  key,
  version,
  count,
  entered: document,
  fit,
});

/** All stored pumps, one of each. */
export async function allCandidates(
  store: SiteStore,
  count: number,
): Promise<Result<readonly Candidate[], Problem>> {
  const all = await store.of(PUMPS).all();
  if (all.outcome === 'too-many') {
    const { limit, actual } = all;
    const detail = `There are ${actual} stored pumps, more than one request may judge: name those to choose among.`;
    return failed(problem('limit-exceeded', detail, { limit, actual }));
  }
  return withinSettings(all.records.map((record) => ofRecord(record, count)));
}

/** The candidates asked for, in their order. */
export async function findCandidates(
  store: SiteStore,
  requests: readonly CandidateRequest[],
): Promise<Result<readonly Candidate[], Problem>> {
  const ids = [...new Set(requests.flatMap(({ pump }) => (typeof pump === 'string' ? [pump] : [])))];
  const records = await findPumps(store, ids);
  const byId = new Map(records.map((record) => [record.id, record]));
  const found: Candidate[] = [];
  for (const { pump, count, path, place } of requests) {
    if (typeof pump === 'string') {
      const record = byId.get(pump);
      if (record === undefined)
        return failed(await unknownRecord(store, { noun: 'pump', name: pump, place }));
      found.push(ofRecord(record, count));
      continue;
    }
    const fit = fitPumpOrProblem(pump, path);
    if (!fit.ok) return fit;
    found.push({ id: null, version: null, count, entered: pump, fit: fit.value });
  }
  return withinSettings(found);
}

function withinSettings(candidates: readonly Candidate[]): Result<readonly Candidate[], Problem> {
  const actual = candidates.reduce((sum, { entered: pump }) => sum + gridSize(pump.settings), 0);
  if (actual <= SETTINGS_IN_ALL) return success(candidates);
  const detail = `The candidates have ${actual} settings together, more than one request may look through: take coarser steps or fewer pumps.`;
  const limits = { limit: SETTINGS_IN_ALL, actual };
  return failed(problem('limit-exceeded', detail, limits));
}

export interface CandidateWork extends PumpModel {
  /** Null where the pump came with the request. */
  readonly id: string | null;
  readonly key?: string | undefined;
  readonly count: number;
}

/** As answers name it. */
export const pumpReference = ({ id, key, entered }: CandidateWork) =>
  recordReference({ id, key, name: entered.name });
