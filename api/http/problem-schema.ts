/** Documents the body of errors. */
import { z } from '@hono/zod-openapi';
import { PROBLEMS } from './problem-registry.ts';
import { PROBLEM_ERRORS_MAX, problemType } from './problem-response.ts';

const CODES = Object.keys(PROBLEMS).sort();

const problemError = z
  .strictObject({
    pointer: z
      .string()
      .optional()
      .openapi({
        description: 'JSON pointer (RFC 6901) to the deepest member of the body that is concerned.',
        examples: ['/headPoints/2/flow'],
      }),
    parameter: z.string().optional().openapi({ description: 'Name of a query parameter.' }),
    header: z.string().optional().openapi({ description: 'Name of a request header.' }),
    detail: z.string().openapi({ description: 'What is wrong there.', examples: ['is required'] }),
    line: z.int().optional().openapi({ description: 'Line of a CSV body, from 1.' }),
    limit: z.number().optional().openapi({ description: 'The limit that is exceeded.' }),
    actual: z.number().optional().openapi({ description: 'What was found in its place.' }),
  })
  .openapi('ProblemError', { description: 'One fault of a request, named by pointer, parameter or header.' });

const usedBy = z
  .strictObject({
    kind: z.string().openapi({ description: 'The kind of resource.', examples: ['loop'] }),
    id: z.string().openapi({ description: 'Its id.' }),
    key: z.string().optional().openapi({ description: 'Its key, where it has one.' }),
    name: z.string().openapi({ description: 'Its name.' }),
  })
  .openapi('UsedBy', { description: 'A resource that uses the one in question.' });

export const problemSchema = z
  .strictObject({
    type: z.string().openapi({
      description: 'Names the kind of problem.',
      examples: [problemType('invalid-request')],
    }),
    code: z.string().openapi({
      description: `The last part of \`type\`: ${CODES.join(', ')}.`,
      examples: ['invalid-request'],
    }),
    title: z.string().openapi({ description: 'The kind of problem in a few words.' }),
    status: z.int().openapi({ description: 'The HTTP status.', examples: [422] }),
    detail: z.string().openapi({ description: 'This occurrence in a sentence.' }),
    instance: z.string().openapi({
      description: 'The path of the request, without its query.',
      examples: ['/v1/pumps'],
    }),
    requestId: z.string().openapi({ description: 'Names the request in the log.' }),
    errors: z.array(problemError).max(PROBLEM_ERRORS_MAX).optional().openapi({
      description: 'The single faults, where there are such.',
    }),
    limit: z.number().optional().openapi({ description: 'The limit that is exceeded.' }),
    actual: z.number().optional().openapi({ description: 'What was found in its place.' }),
    usedBy: z
      .array(usedBy)
      .optional()
      .openapi({ description: 'Those that stand in the way of a deletion, or have the key.' }),
  })
  .openapi('Problem', { description: 'An error in the form of RFC 9457.' });
