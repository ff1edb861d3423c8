/** Answers with 204 and no body. */
import { success } from '../../curves/result.ts';
import type { AnswerForm } from './answer-form.ts';

export const noContent = (description: string): AnswerForm<null> => ({
  status: 204,
  hasTable: false,
  mediaType: 'application/json',
  chooseMediaType: () => success('application/json'),
  write: () => success({ text: null, contentType: null }),
  document: () => ({ status: 204, description, schema: undefined, example: undefined }),
});
