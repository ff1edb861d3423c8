/** Gives an operation on a kind its words in the document. */
import type { StoredRecord } from '../store/versions.ts';
import type { OperationFacts, RecordsSpec } from './records-spec.ts';

/** The words of an operation on a kind: its verb, then the kind's word for one or for many. */
export function routeWords(
  {
    words,
    tag,
  }: Pick<RecordsSpec<string, unknown, unknown, StoredRecord<unknown>, unknown>, 'words' | 'tag'>,
  { verb, of, name = verb.toLowerCase() }: { verb: string; of: 0 | 1; name?: string },
  { description, summary = `${verb} ${words.summary[of]}`, problems = [] }: OperationFacts,
) {
  return { tag, operationId: `${name}${words.operation[of]}`, summary, description, problems };
}
