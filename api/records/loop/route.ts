/** Creates, lists, reads, replaces and deletes loops. */
import { success } from '../../../curves/result.ts';
import { loopEntryCautions } from '../../../models/cautions/loop-entry.ts';
import { recordBody } from '../../fields/record-fields.ts';
import { listExample, storedExample } from '../../fields/stored-example.ts';
import type { Api } from '../../http/api.ts';
import { example } from '../../http/examples.ts';
import { jsonAnswer } from '../../http/json-answer.ts';
import { keyedBody } from '../../http/json-body.ts';
import { plainList } from '../list-records.ts';
import { mountRecords } from '../mount-records.ts';
import { compileLoopOrProblem } from './compile.ts';
import { checkInstalledSetting } from './installed-setting.ts';
import { LOOPS, type LoopRecord } from './kind.ts';
import { loopAnswer, loopInput, loopList } from './schema.ts';
import { loopTable } from './table.ts';
import { statedDensity } from './water.ts';

const LOOP_EXAMPLE = example('loop-kelp-flume');

const stored = storedExample({ input: loopInput, answer: loopAnswer, document: LOOP_EXAMPLE });

const answerOf = (record: LoopRecord) => ({
  body: recordBody(record),
  validator: { version: record.version },
});

/** A loop that was just written, with what looks odd about its entries. */
const writtenAnswer = (record: LoopRecord) => {
  const { body, validator } = answerOf(record);
  return { body: { ...body, cautions: [...loopEntryCautions(record.document)] }, validator };
};

export const loopRoutes = (api: Api): void =>
  mountRecords(api, LOOPS, {
    collection: '/v1/loops',
    one: '/v1/loops/{loopId}',
    idOf: ({ loopId }) => loopId,
    tag: 'loops',
    words: {
      operation: ['Loop', 'Loops'],
      summary: ['a loop', 'loops'],
      answer: ['loop', 'loops'],
      problem: 'loop',
    },
    operations: {
      create: {
        description: 'Stores a loop by its pipework, or by its system curve where that is not known.',
      },
      list: { description: 'Stored loops in the order of their creation, page by page.' },
      read: { description: 'A stored loop as it was entered.' },
      replace: { description: 'Writes all of a loop.' },
      delete: { description: 'Deletes a loop that no routine check is of.', problems: ['in-use'] },
    },
    body: keyedBody({ schema: loopInput, density: statedDensity, example: LOOP_EXAMPLE }),
    async ready({ body, store }) {
      const model = compileLoopOrProblem(body.document);
      if (!model.ok) return model;
      const checked = await checkInstalledSetting(store, body.document);
      return checked.ok ? success(body) : checked;
    },
    answer: (words) => jsonAnswer({ schema: loopAnswer, example: stored, ...words }),
    answerOf,
    writtenAnswerOf: writtenAnswer,
    list: plainList({
      kind: LOOPS,
      answer: (words) =>
        jsonAnswer({
          schema: loopList,
          example: listExample({ input: loopInput, answer: loopList, document: LOOP_EXAMPLE }),
          table: loopTable,
          ...words,
        }),
      bodyOf: (records, next) => ({ items: records.map(recordBody), next }),
    }),
  });
