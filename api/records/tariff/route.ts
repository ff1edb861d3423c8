/** Creates, lists, reads, replaces and deletes tariffs. */
import { success } from '../../../curves/result.ts';
import { recordBody } from '../../fields/record-fields.ts';
import { listExample, storedExample } from '../../fields/stored-example.ts';
import type { Api } from '../../http/api.ts';
import { example } from '../../http/examples.ts';
import { jsonAnswer } from '../../http/json-answer.ts';
import { keyedBody } from '../../http/json-body.ts';
import { plainList } from '../list-records.ts';
import { mountRecords } from '../mount-records.ts';
import { TARIFFS, type TariffRecord } from './kind.ts';
import { tariffAnswer, tariffInput, tariffList } from './schema.ts';
import { tariffTable } from './table.ts';

const TARIFF_EXAMPLE = example('tariff');

const stored = storedExample({ input: tariffInput, answer: tariffAnswer, document: TARIFF_EXAMPLE });

const answerOf = (record: TariffRecord) => ({
  body: recordBody(record),
  validator: { version: record.version },
});

export const tariffRoutes = (api: Api): void =>
  mountRecords(api, TARIFFS, {
    collection: '/v1/tariffs',
    one: '/v1/tariffs/{tariffId}',
    idOf: ({ tariffId }) => tariffId,
    tag: 'tariffs',
    words: {
      operation: ['Tariff', 'Tariffs'],
      summary: ['a tariff', 'tariffs'],
      answer: ['tariff', 'tariffs'],
      problem: 'tariff',
    },
    operations: {
      create: { description: 'Stores prices by month, day and time of day.' },
      list: { description: 'Stored tariffs in the order of their creation, page by page.' },
      read: { description: 'A stored tariff as it was entered.' },
      replace: { description: 'Writes all of a tariff.' },
      delete: {
        description: 'Deletes a tariff that neither the site nor a schedule goes by.',
        problems: ['in-use'],
      },
    },
    body: keyedBody({ schema: tariffInput, example: TARIFF_EXAMPLE }),
    ready: ({ body }) => success(body),
    answer: (words) => jsonAnswer({ schema: tariffAnswer, example: stored, ...words }),
    answerOf,
    list: plainList({
      kind: TARIFFS,
      answer: (words) =>
        jsonAnswer({
          schema: tariffList,
          example: listExample({ input: tariffInput, answer: tariffList, document: TARIFF_EXAMPLE }),
          table: tariffTable,
          ...words,
        }),
      bodyOf: (records, next) => ({ items: records.map(recordBody), next }),
    }),
  });
