/** Answers a write that the store refused, naming what was not there. */
import { failed } from '../../curves/result.ts';
import { isKeyedNoun, unknownRecord } from '../http/unknown-record.ts';
import type { SiteStore } from '../store/store.ts';
import type { StoredRecord } from '../store/versions.ts';
import type { RecordsSpec } from './records-spec.ts';
import { nothingHere, type RefusedWrite, writeProblem } from './write-problems.ts';

interface Refusal {
  readonly outcome: RefusedWrite;
  readonly store: SiteStore;
  /** What the path calls the record. */
  readonly name: string;
}

/** A record that is not there is named by what it was called, also one that the document refers to. */
export async function refused(
  {
    words,
    collection,
    problemOf,
  }: Pick<
    RecordsSpec<string, unknown, unknown, StoredRecord<unknown>, unknown>,
    'words' | 'collection' | 'problemOf'
  >,
  { outcome, store, name }: Refusal,
) {
  const noun = words.problem;
  if (outcome.outcome === 'missing')
    return failed(
      isKeyedNoun(noun)
        ? await unknownRecord(store, { noun, name, place: null })
        : nothingHere(noun, collection),
    );
  const problem = problemOf?.(outcome) ?? writeProblem(outcome, noun);
  const pointer = problem.errors?.[0]?.pointer;
  if (pointer === undefined) return failed(problem);
  const place = { pointer };
  if (outcome.outcome === 'unknown-pump')
    return failed(await unknownRecord(store, { noun: 'pump', name: outcome.pumpId, place }));
  if (outcome.outcome === 'unknown-loop')
    return failed(await unknownRecord(store, { noun: 'loop', name: outcome.loopId, place }));
  return failed(problem);
}
