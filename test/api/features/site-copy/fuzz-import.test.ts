/** Nothing in the copy of a site makes an error of the service's own, and what is taken in can be read. */
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { appUnderTest } from '../../app-under-test.ts';
import { changed, pointersOf } from '../../changed.ts';
import { type CheckAnswer, documentValidator } from '../../document-validator.ts';
import { furnishedSite } from './furnished-site.ts';
import { exported, imported } from './stocked-site.ts';

let copy: unknown;
let check: CheckAnswer;

beforeAll(async () => {
  const site = await furnishedSite();
  copy = JSON.parse(await exported(site));
  check = await documentValidator(site);
});

const odd = fc.oneof(
  fc.constantFrom<unknown>(
    undefined,
    null,
    true,
    '',
    '1e3',
    '\u0000',
    [],
    {},
    [[]],
    '__proto__',
    '00000000-0000-7000-8000-000000000005',
  ),
  fc.constantFrom(0, -1, 1e-13, 0.5, 1, 1e6, 1e300, -1e300),
  fc.string({ maxLength: 8 }),
);

/** Every question that lists or tells what is stored. */
const QUESTIONS = [
  '/v1/export',
  '/v1/pumps',
  '/v1/loops',
  '/v1/tariffs',
  '/v1/comparisons',
  '/v1/upgrade-plans',
  '/v1/maintenance-tasks',
];

describe('the copy of a site with members changed at random', () => {
  it('is taken in or refused, never a fault', async () => {
    const change = fc.tuple(fc.nat(), odd);
    let taken = 0;
    await fc.assert(
      fc.asyncProperty(fc.array(change, { minLength: 1, maxLength: 2 }), async (changes) => {
        const body = changes.reduce<unknown>((value, [place, oddValue]) => {
          const pointers = pointersOf(value);
          return changed(value ?? null, pointers[place % pointers.length] ?? '', oddValue) ?? null;
        }, copy);
        const target = await appUnderTest();
        const response = await imported(target, JSON.stringify(body));
        const text = await response.text();
        const { status } = response;
        expect(status, text).toBeLessThan(500);
        expect(check({ path: '/v1/export', method: 'post', status }, JSON.parse(text)), text).toBe('');
        if (status !== 201) return;
        taken += 1;
        for (const path of QUESTIONS) expect((await target.call(path)).status, path).toBe(200);
      }),
      { seed: 1, numRuns: 250 },
    );
    expect(taken).toBeGreaterThan(10);
  });
});
