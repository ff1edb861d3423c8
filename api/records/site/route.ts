/** Reads and replaces the site. */
import { failed, success } from '../../../curves/result.ts';
import { recordBody } from '../../fields/record-fields.ts';
import { storedExample } from '../../fields/stored-example.ts';
import type { Api } from '../../http/api.ts';
import { defineRoute } from '../../http/define-route.ts';
import { example } from '../../http/examples.ts';
import { jsonAnswer } from '../../http/json-answer.ts';
import { jsonBody } from '../../http/json-body.ts';
import { noBody } from '../../http/request-body.ts';
import { noQuery } from '../../http/route.ts';
import { unknownRecord } from '../../http/unknown-record.ts';
import { putCondition } from '../put-condition.ts';
import { writeProblem } from '../write-problems.ts';
import type { SiteRecord } from './kind.ts';
import { findSite, SITE } from './kind.ts';
import { siteAnswer, siteInput } from './schema.ts';

const SITE_EXAMPLE = example('site');

const common = { path: '/v1/site', tag: 'site', query: noQuery } as const;

const answerOf = (record: SiteRecord) => ({
  body: recordBody(record),
  validator: { version: record.version },
});

export function siteRoutes(api: Api): void {
  const { clock } = api.deps;
  const answer = jsonAnswer({
    schema: siteAnswer,
    description: 'The site.',
    example: storedExample({ input: siteInput, answer: siteAnswer, document: SITE_EXAMPLE }),
  });
  defineRoute(
    api,
    {
      ...common,
      method: 'get',
      operationId: 'getSite',
      summary: 'Read the site',
      description: 'The facility: its name, zone, currency, elevation and prices.',
      body: noBody,
      answer,
    },
    async ({ store }) => success(answerOf(await findSite(store))),
  );
  defineRoute(
    api,
    {
      ...common,
      method: 'put',
      operationId: 'replaceSite',
      summary: 'Replace the site',
      description: 'Writes all of the site. Prices are never converted when the currency changes.',
      conditional: 'unless-stored',
      body: jsonBody({ schema: siteInput, example: SITE_EXAMPLE }),
      answer,
    },
    async ({ body: document, store, ...conditions }) => {
      const stored = await findSite(store);
      const condition = putCondition(conditions, { stored, put: { document }, noun: 'site' });
      if (!condition.ok) return condition;
      if (condition.value === 'is-stored') return success(answerOf(stored));
      const now = clock().getTime();
      const { expectedVersion } = conditions;
      const written = await store.of(SITE).replace({ document, now, expectedVersion });
      if (written.outcome === 'replaced') return success(answerOf(written.record));
      if (written.outcome !== 'unknown-tariff' || document.tariff === null)
        return failed(writeProblem(written, 'site'));
      const place = { pointer: '/tariff' };
      return failed(await unknownRecord(store, { noun: 'tariff', name: document.tariff, place }));
    },
  );
}
