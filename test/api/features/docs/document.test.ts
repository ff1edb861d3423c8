/** The OpenAPI document of the routes that are mounted. */
import { beforeAll, describe, expect, it } from 'vitest';
import { openApiDocument } from '../../../../api/features/docs/document.ts';
import { DOCS_PATHS } from '../../../../api/features/docs/page.ts';
import { TAGS } from '../../../../api/features/docs/tags.ts';
import type { Api } from '../../../../api/http/api.ts';
import { appUnderTest } from '../../app-under-test.ts';
import { demonstrationRoutes } from '../../http/demonstration-routes.ts';

let api: Api;
let document: ReturnType<typeof openApiDocument>;
beforeAll(async () => {
  ({ api } = await appUnderTest());
  document = openApiDocument(api);
});

const operationsOf = (paths: typeof document.paths) =>
  Object.entries(paths ?? {}).flatMap(([path, item]) =>
    (['get', 'post', 'put', 'delete'] as const).flatMap((method) => {
      const operation = item[method];
      return operation === undefined ? [] : [{ path, method, operation }];
    }),
  );

describe('the document', () => {
  it('shows every route that is mounted, and none else', () => {
    const documented = operationsOf(document.paths).map(
      ({ path, method }) => `${method.toUpperCase()} ${path.replaceAll(/\{(\w+)\}/g, ':$1')}`,
    );
    const pages: readonly string[] = Object.values(DOCS_PATHS);
    const mounted = api.app.routes
      .filter(({ method, path }) => method !== 'ALL' && !pages.includes(path))
      .map(({ method, path }) => `${method} ${path}`);
    expect(documented.sort()).toEqual(mounted.sort());
  });

  it('gives each operation an id of its own and a tag that is described', () => {
    const operations = operationsOf(document.paths).map(({ operation }) => operation);
    const ids = operations.map(({ operationId }) => operationId);
    expect(new Set(ids).size).toBe(ids.length);
    const tags: readonly string[] = TAGS.map(({ name }) => name);
    for (const operation of operations) expect(tags).toContain(operation.tags?.[0]);
  });

  it('is served as it is emitted', async () => {
    const response = await api.app.request('http://localhost/openapi.json');
    expect(response.status).toBe(200);
    expect(await response.json()).toEqual(JSON.parse(JSON.stringify(document)));
  });

  it('names no component twice', () => {
    const names = api.app.openAPIRegistry.definitions.flatMap((definition) =>
      definition.type === 'component' ? [definition.name] : [],
    );
    expect(new Set(names).size).toBe(names.length);
  });
});

describe('an operation', () => {
  it('shows the errors that can occur on it', async () => {
    const { api: demonstration } = await appUnderTest({ mount: demonstrationRoutes });
    const { paths } = openApiDocument(demonstration);
    const statuses = (path: string, method: 'get' | 'put' | 'delete' | 'post') =>
      Object.keys(paths?.[path]?.[method]?.responses ?? {}).map(Number);
    const everywhere = [400, 403, 408, 414, 422, 431, 500, 503];
    expect(statuses('/v1/tanks', 'post')).toEqual(
      [201, ...everywhere, 406, 413, 415, 507].sort((a, b) => a - b),
    );
    expect(statuses('/v1/tanks/{tankId}', 'put')).toEqual(
      [200, ...everywhere, 404, 406, 412, 413, 415, 428, 507].sort((a, b) => a - b),
    );
    expect(statuses('/v1/tanks/{tankId}', 'delete')).toEqual(
      [204, ...everywhere, 404, 412, 428, 507].sort((a, b) => a - b),
    );
    expect(statuses('/v1/table', 'get')).toEqual([200, ...everywhere, 404, 406].sort((a, b) => a - b));
  });

  it('shows a quantity in metric units, with its range and both of its forms', async () => {
    const { api: demonstration } = await appUnderTest({ mount: demonstrationRoutes });
    const { components } = openApiDocument(demonstration);
    expect(components?.schemas?.TankRequest).toMatchObject({
      properties: {
        flow: { type: ['number', 'string'], minimum: 0, maximum: 3_600_000, maxLength: 40 },
      },
    });
    expect(components?.schemas?.Tank).toMatchObject({ properties: { flow: { type: 'number' } } });
  });
});
