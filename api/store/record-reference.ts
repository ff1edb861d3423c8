/** Names a record to whoever reads an answer: its id, its key where it has one, its name. */
import type { RecordReference } from './versions.ts';

export const recordReference = <Id extends string | null>({
  id,
  key,
  name,
}: {
  readonly id: Id;
  readonly key?: string | null | undefined;
  readonly name: string;
}): RecordReference<Id> => ({ id, ...(typeof key === 'string' ? { key } : {}), name });
