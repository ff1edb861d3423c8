/** Answers with a picture, a page or a calendar, for people and for programs that are no callers of the API. */
import { z } from '@hono/zod-openapi';
import { failed, success } from '../../curves/result.ts';
import { negotiate } from './accept.ts';
import type { AnswerForm, PageType } from './answer-form.ts';
import { problem } from './problem.ts';

interface PageAnswer {
  readonly mediaType: PageType;
  readonly description: string;
  readonly example: string;
}

const CONTENT_TYPES = {
  'image/svg+xml': 'image/svg+xml; charset=utf-8',
  'text/html': 'text/html; charset=utf-8',
  'text/calendar': 'text/calendar; charset=utf-8',
} as const satisfies Record<PageType, string>;

/** The body of the answer is its whole text, already in the units in force. */
export const pageAnswer = ({ mediaType, description, example }: PageAnswer): AnswerForm<string> => ({
  status: 200,
  hasTable: false,
  mediaType,
  chooseMediaType(_query, accept) {
    if (negotiate(accept, [mediaType]) !== undefined) return success(mediaType);
    const detail = `The answer comes as ${mediaType}.`;
    return failed(problem('not-acceptable', detail, { errors: [{ header: 'Accept', detail }] }));
  },
  write: (text) => success({ text, contentType: CONTENT_TYPES[mediaType] }),
  document: () => ({ status: 200, description, schema: z.string(), example }),
});
