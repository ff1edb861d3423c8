/** Mounts the route that lists the records of a kind, page by page. */
import type { z } from '@hono/zod-openapi';
import { success } from '../../curves/result.ts';
import type { Answer, AnswerForm } from '../http/answer-form.ts';
import { defineRoute } from '../http/define-route.ts';
import { listQuery, nextCursor, pageRequest } from '../http/list-query.ts';
import { noBody } from '../http/request-body.ts';
import type { RouteRequest } from '../http/route.ts';
import type { Kind } from '../store/kind.ts';
import type { Page, PageRequest, StoredRecord } from '../store/versions.ts';
import type { SchemaContext } from '../units/schema-context.ts';
import type { RecordsSpec } from './records-spec.ts';

type MountList = RecordsSpec<string, unknown, unknown, StoredRecord<unknown>, unknown>['list'];

interface Asked<Query extends z.ZodObject, Listed> {
  readonly query: (context: SchemaContext) => Query;
  readonly answer: (words: { readonly description: string }) => AnswerForm<Listed>;
  readonly page: (
    request: Pick<RouteRequest<string, z.output<Query>, unknown>, 'query' | 'store'>,
  ) => Promise<Answer<Listed>['body']>;
}

/** A list that is asked for in a way of its own. */
export const listOfOwn =
  <Query extends z.ZodObject, Listed>({ query, answer, page }: Asked<Query, Listed>): MountList =>
  (api, { page: description, ...route }) =>
    defineRoute(
      api,
      { ...route, method: 'get', query, body: noBody, answer: answer({ description }) },
      async (request) => success({ body: await page(request) }),
    );

interface Plain<Kept, Listed> {
  readonly kind: Kind<{ list(request: PageRequest): Promise<Page<Kept>> }>;
  readonly answer: (words: { readonly description: string }) => AnswerForm<Listed>;
  readonly bodyOf: (records: readonly Kept[], next: string | null) => Answer<Listed>['body'];
}

/** A list by page and name. */
export const plainList = <Kept extends StoredRecord<unknown>, Listed>({
  kind,
  answer,
  bodyOf,
}: Plain<Kept, Listed>): MountList =>
  listOfOwn({
    query: listQuery,
    answer,
    async page({ query, store }) {
      const page = await store.of(kind).list(pageRequest(query));
      return bodyOf(page.records, nextCursor(page));
    },
  });
