/** Whatever pump or loop is accepted has its pictures and its report. */
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { changed, pointersOf } from '../changed.ts';
import { example, type Json, jsonOf, sent } from '../requests.ts';
import { type StockedApp, stockedApp } from '../stocked-app.ts';
import { inertPage } from './read-page.ts';
import { readSvg } from './read-svg.ts';

const SEED = { seed: 1 } as const;

let app: StockedApp;
beforeAll(async () => {
  app = await stockedApp();
});

const factors = [0, 1e-6, 1e-3, 0.1, 0.7, 1.3, 3, 10, 100, 1e4, -1] as const;
const texts = ['<b>&"\'</b>', '\u202Eعقد', '\u0007', 'x'.repeat(120), ']]>'] as const;

interface Place {
  readonly pointer: string;
  readonly value: unknown;
}

/** Every figure and every name of a document. */
function placesOf(document: unknown): readonly Place[] {
  return pointersOf(document).flatMap((pointer) => {
    const value = pointer
      .split('/')
      .slice(1)
      .reduce<unknown>((at, key) => Object(at)[key], document);
    const isOpen = typeof value === 'number' || pointer.endsWith('/name');
    return isOpen ? [{ pointer, value }] : [];
  });
}

/** A document with up to three of its figures or names changed. */
function mutated(document: Json): fc.Arbitrary<unknown> {
  const change = fc.tuple(fc.nat(), fc.nat());
  return fc.array(change, { minLength: 1, maxLength: 3 }).map((changes) =>
    changes.reduce<unknown>((whole, [place, other]) => {
      const places = placesOf(whole);
      const { pointer, value } = places[place % places.length] ?? { pointer: '/name', value: '' };
      const isFigure = typeof value === 'number';
      const next = isFigure ? value * (factors[other % factors.length] ?? 1) : texts[other % texts.length];
      return changed(whole, pointer, next);
    }, document),
  );
}

const documents = (prefix: string, names: readonly string[]) =>
  fc.constantFrom(...names.map((name) => example(`${prefix}-${name}.json`))).chain(mutated);

/** Its text, or null where the question itself cannot be answered. */
async function answered(path: string): Promise<string | null> {
  const answer = await app.call(path);
  const text = await answer.text();
  expect([200, 422], text).toContain(answer.status);
  return answer.status === 200 ? text : null;
}

describe('a document that is accepted', () => {
  it('has the picture of its curves, being a pump', async () => {
    let seen = 0;
    const pumps = documents('pump', ['inline-60', 'canister-120', 'canister-250', 'canister-600']);
    const property = fc.asyncProperty(pumps, async (pump) => {
      const response = await app.call('/v1/pumps', sent('POST', pump));
      if (response.status !== 201) return;
      const { id } = await jsonOf(response);
      for (const units of ['metric', 'us']) {
        const picture = await answered(`/v1/pumps/${id}/chart.svg?units=${units}`);
        expect(picture).not.toBeNull();
        readSvg(picture ?? '');
      }
      seen += 1;
    });
    await fc.assert(property, { ...SEED, numRuns: 200 });
    expect(seen).toBeGreaterThan(50);
  });

  it('has its picture and its report, being a loop', async () => {
    let seen = 0;
    const loops = documents('loop', [
      'kelp-flume',
      'nursery-raceways',
      'touch-pool',
      'seahorse-bank-text',
      'system-curve',
    ]);
    const property = fc.asyncProperty(loops, async (loop) => {
      const response = await app.call('/v1/loops', sent('POST', loop));
      if (response.status !== 201) return;
      const { id } = await jsonOf(response);
      const picture = await answered(`/v1/loops/${id}/chart.svg?pump=${app.pumpId}`);
      if (picture !== null) readSvg(picture);
      const page = await answered(`/v1/loops/${id}/report?pump=${app.pumpId}&units=us`);
      if (page !== null) inertPage(page);
      seen += picture === null || page === null ? 0 : 1;
    });
    await fc.assert(property, { ...SEED, numRuns: 150 });
    expect(seen).toBeGreaterThan(50);
  });
});
