/** Answers completions of routine checks. */
import { recordBody } from '../../fields/record-fields.ts';
import type { CompletionRecord } from './contract.ts';

export const completionBody = (record: CompletionRecord) => ({
  ...recordBody(record),
  task: record.taskId,
  at: new Date(record.document.at).toISOString(),
});
