/** Imports pumps from one table. */
import { z } from '@hono/zod-openapi';
import { failed, success } from '../../../curves/result.ts';
import { recordBody } from '../../fields/record-fields.ts';
import { listExample } from '../../fields/stored-example.ts';
import type { Api } from '../../http/api.ts';
import { bodyText } from '../../http/body-text.ts';
import { csvRows } from '../../http/csv-rows.ts';
import { defineRoute } from '../../http/define-route.ts';
import { example, exampleText } from '../../http/examples.ts';
import { jsonAnswer } from '../../http/json-answer.ts';
import type { RequestBody } from '../../http/request-body.ts';
import { noQuery } from '../../http/route.ts';
import { schemaContext } from '../../units/schema-context.ts';
import { writeProblem } from '../write-problems.ts';
import { type FittedPump, PUMP_COLUMNS, PUMP_ROWS_MAX, pumpsOfRows } from './import-rows.ts';
import { PUMPS } from './kind.ts';
import { pumpInput, pumpList } from './schema.ts';

const MEDIA_TYPE = 'text/csv';

const tableBody: RequestBody<readonly FittedPump[]> = {
  async read(request, { system }) {
    const text = await bodyText(request, MEDIA_TYPE);
    if (!text.ok) return text;
    const rows = csvRows(text.value, { columns: PUMP_COLUMNS, rowsMax: PUMP_ROWS_MAX });
    return rows.ok ? await pumpsOfRows(rows.value, schemaContext({ system, side: 'request' })) : rows;
  },
  document: () => ({
    mediaType: MEDIA_TYPE,
    schema: z.string().openapi({
      description:
        'Rows of one name make one pump. A row with `head` is a point of the head curve, one with `power` of the power, one with both is both; an empty setting is 100 %. What is said of the pump itself (key, standbyPower, settingMin, settingMax, settingStep, ratedSpeed, price, expectedLifeYears) stands in any of its rows.',
    }),
    example: exampleText('pumps.csv'),
  }),
};

export function pumpImportRoute(api: Api): void {
  const { clock, newId } = api.deps;
  defineRoute(
    api,
    {
      path: '/v1/pumps/import',
      tag: 'pumps',
      method: 'post',
      operationId: 'importPumps',
      summary: 'Create pumps from a table',
      description:
        'Stores every pump of a table, or none: its columns in any order, in the units in force or those of the header, such as `flow [gal/h]`.',
      query: noQuery,
      body: tableBody,
      answer: jsonAnswer({
        schema: pumpList,
        description: 'The pumps as they are stored, in the order of the table.',
        example: listExample({ input: pumpInput, answer: pumpList, document: example('pump-canister-120') }),
        status: 201,
      }),
      problems: ['malformed-csv', 'key-taken'],
    },
    async ({ body: pumps, store }) => {
      const now = clock().getTime();
      const inserted = await store
        .of(PUMPS)
        .insertAll(pumps.map(({ document, fit, key }) => ({ document, fit, key, id: newId(), now })));
      if (inserted.outcome === 'key-taken') {
        const pointer = `/${pumps[inserted.place]?.keyPlace ?? 0}/key`;
        const errors = [{ pointer, detail: 'is that of a stored pump; choose another' }];
        return failed({ ...writeProblem(inserted, 'pump'), errors });
      }
      const items = inserted.records.map(recordBody);
      return success({ body: { items, next: null }, location: '/v1/pumps' });
    },
  );
}
