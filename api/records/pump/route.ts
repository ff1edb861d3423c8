/** Creates, lists, reads, replaces and deletes pumps. */
import { success } from '../../../curves/result.ts';
import { pumpEntryCautions } from '../../../models/cautions/pump-entry.ts';
import { recordBody } from '../../fields/record-fields.ts';
import { listExample, storedExample } from '../../fields/stored-example.ts';
import type { Api } from '../../http/api.ts';
import { example } from '../../http/examples.ts';
import { jsonAnswer } from '../../http/json-answer.ts';
import { keyedBody } from '../../http/json-body.ts';
import { plainList } from '../list-records.ts';
import { mountRecords } from '../mount-records.ts';
import { fitPumpOrProblem } from './fit.ts';
import { PUMPS, type PumpRecord } from './kind.ts';
import { pumpAnswer, pumpInput, pumpList } from './schema.ts';
import { pumpTable } from './table.ts';

const PUMP_EXAMPLE = example('pump-canister-250');

const stored = storedExample({ input: pumpInput, answer: pumpAnswer, document: PUMP_EXAMPLE });

export const storedPumpAnswer = (words: { readonly description: string; readonly status?: 201 }) =>
  jsonAnswer({ schema: pumpAnswer, example: stored, ...words });

const pumpAnswerOf = (record: PumpRecord) => ({
  body: recordBody(record),
  validator: { version: record.version },
});

/** A pump that was just written, with what looks odd about its entries. */
export const writtenPumpAnswer = (record: PumpRecord) => {
  const { body, validator } = pumpAnswerOf(record);
  const cautions = [...pumpEntryCautions({ entered: record.document, fit: record.fit })];
  return { body: { ...body, cautions }, validator };
};

export const pumpRoutes = (api: Api): void =>
  mountRecords(api, PUMPS, {
    collection: '/v1/pumps',
    one: '/v1/pumps/{pumpId}',
    idOf: ({ pumpId }) => pumpId,
    tag: 'pumps',
    words: {
      operation: ['Pump', 'Pumps'],
      summary: ['a pump', 'pumps'],
      answer: ['pump', 'pumps'],
      problem: 'pump',
    },
    operations: {
      create: { description: 'Stores a pump and the curves that are fitted to its points.' },
      list: { description: 'Stored pumps in the order of their creation, page by page.' },
      read: { description: 'A stored pump as it was entered.' },
      replace: { description: 'Writes all of a pump and fits its curves again.' },
      delete: {
        description: 'Deletes a pump that no loop has installed and no routine check is of.',
        problems: ['in-use'],
      },
    },
    body: keyedBody({ schema: pumpInput, example: PUMP_EXAMPLE }),
    ready({ body }) {
      const fit = fitPumpOrProblem(body.document);
      return fit.ok ? success({ ...body, fit: fit.value }) : fit;
    },
    answer: storedPumpAnswer,
    answerOf: pumpAnswerOf,
    writtenAnswerOf: writtenPumpAnswer,
    list: plainList({
      kind: PUMPS,
      answer: (words) =>
        jsonAnswer({
          schema: pumpList,
          example: listExample({ input: pumpInput, answer: pumpList, document: PUMP_EXAMPLE }),
          table: pumpTable,
          ...words,
        }),
      bodyOf: (records, next) => ({ items: records.map(recordBody), next }),
    }),
  });
