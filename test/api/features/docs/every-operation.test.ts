/** Every operation of the document, called as its examples show: its status, its form, its answer against its schema. */
import { parse } from 'csv-parse/sync';
import { beforeAll, describe, expect, it } from 'vitest';
import { type AppUnderTest, appUnderTest } from '../../app-under-test.ts';
import { type CheckAnswer, documentValidator } from '../../document-validator.ts';
import { type StockedSite, stockedSite } from '../site-copy/stocked-site.ts';
import { calibratedSite } from './calibrated-site.ts';
import { callAsShown, calledPath, operations, requiredQuery, shownValue } from './call-operation.ts';
import type { Operation } from './operations.ts';

/** Those that need a site without records. */
const INTO_EMPTY = ['importSite'];

/** What reads is asked of one site; what writes, each time of a new one. */
let untouched: StockedSite;
let check: CheckAnswer;

beforeAll(async () => {
  untouched = await stockedSite();
  check = await documentValidator(untouched);
});

const siteFor = async ({ id, method }: Operation): Promise<AppUnderTest> => {
  if (INTO_EMPTY.includes(id)) return await appUnderTest();
  if (id === 'deleteCalibration') return await calibratedSite();
  return method === 'get' ? untouched : await stockedSite();
};

async function judge(operation: Operation, response: Response): Promise<void> {
  const text = await response.text();
  const { path, method } = operation;
  const { status } = response;
  expect([...operation.successes.keys()], `${status} ${text.slice(0, 1000)}`).toContain(status);
  const documented = operation.successes.get(status) ?? [];
  if (documented.length === 0) {
    expect(text).toBe('');
    return;
  }
  const [mediaType = ''] = (response.headers.get('content-type') ?? '').split(';');
  expect(documented).toContain(mediaType);
  if (mediaType === 'application/json') expect(check({ path, method, status }, JSON.parse(text))).toBe('');
  if (mediaType === 'text/csv') expect(parse(text).length).toBeGreaterThan(0);
}

describe.each(operations)('$method $path', (operation) => {
  const { method, bodies, parameters, answers, path, successes } = operation;

  it('answers as documented when called as shown', async () => {
    for (const response of await callAsShown(operation, siteFor)) await judge(operation, response);
  });

  it('shows answers that are as documented', () => {
    for (const { status, value } of answers) expect(check({ path, method, status }, value)).toBe('');
  });

  const optional = parameters.filter((one) => one.in === 'query' && one.required !== true);

  if (method === 'get' && optional.length > 0)
    it('takes the examples of its parameters', async () => {
      const called = await calledPath(untouched, operation);
      const required = await requiredQuery(untouched, operation);
      for (const parameter of optional) {
        const value = await shownValue(untouched, parameter);
        if (value === undefined) continue;
        const query = new URLSearchParams({ ...required, [parameter.name]: value });
        await judge(operation, await untouched.call(`${called}?${query}`));
      }
    });

  const isTable = method === 'get' && [...successes.values()].flat().includes('text/csv');

  if (isTable)
    it('comes as a table', async () => {
      const called = await calledPath(untouched, operation);
      const query = new URLSearchParams({ ...(await requiredQuery(untouched, operation)), format: 'csv' });
      const response = await untouched.call(`${called}?${query}`);
      expect(response.headers.get('content-type')).toMatch(/^text\/csv\b/);
      await judge(operation, response);
    });

  if (method === 'post' || method === 'put')
    it('shows a body', () => {
      expect(bodies.length).toBeGreaterThan(0);
    });
});
