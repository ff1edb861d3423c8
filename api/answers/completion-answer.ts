/** Completions of routine checks as answers carry them. */
import { recordBody } from '../schemas/record-fields.ts';
import type { CompletionRecord } from '../store/completion-contract.ts';

export const completionBody = (record: CompletionRecord) => ({
  ...recordBody(record),
  task: record.taskId,
  at: new Date(record.document.at).toISOString(),
});
