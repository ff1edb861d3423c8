/** Puts questions to an application of their own, and keeps the answers as lines. */
import { appUnderTest } from '../../api/app-under-test.ts';
import { created, type Json, sent } from '../../api/requests.ts';
import { drawsFrom, mulberry32 } from '../../random/draw.ts';
import { invented } from './invented.ts';
import { randomTariff } from './random-tariff.ts';
import { written } from './written.ts';

export interface AnswerLine {
  readonly label: string;
  readonly status: number;
  /** The body of the answer, on one line. */
  readonly text: string;
}

export interface Question {
  /** Names the line; letters, digits, points and hyphens. */
  readonly label: string;
  readonly path: string;
  readonly query?: Json;
  /** GET where it is left out, POST where there is a body. */
  readonly method?: 'PUT';
  readonly body?: Json;
  readonly ifMatch?: string;
}

/** What the application has before the first question. */
export interface Stock {
  readonly tariff: string;
  readonly pumps: readonly string[];
}

export interface Asker {
  readonly stock: Stock;
  /** Stores a document that must be accepted, and gives its id. */
  readonly store: (path: string, body: Json) => Promise<string>;
  /** Keeps the answer as a line, and gives its body. */
  readonly ask: (question: Question) => Promise<string>;
  /** The lines since it was last called. */
  readonly taken: () => readonly AnswerLine[];
  readonly close: () => Promise<void>;
}

/** What the clock shows however often it is read: answers must not depend on that. */
export const NOW = Date.UTC(2026, 0, 15, 12);

export const SITE = {
  name: 'Skerry Point Marine Station',
  timeZone: 'Europe/Lisbon',
  currency: 'EUR',
  elevation: 10,
  price: 0.21,
  labourRate: 30,
} as const;

const STOCKED_PUMPS = [1, 2, 3];
const STOCKED_TARIFF = 1;

function pathOf({ path, query = {} }: Question): string {
  const stated = Object.entries(query).map(([name, value]) => `${name}=${encodeURIComponent(String(value))}`);
  return stated.length === 0 ? path : `${path}?${stated.join('&')}`;
}

function requestOf({ label, method, body, ifMatch }: Question): RequestInit {
  // Problems repeat the id of their request, which would else be the next of the application's own.
  const headers = { 'X-Request-Id': label, ...(ifMatch === undefined ? {} : { 'If-Match': ifMatch }) };
  return body === undefined ? { headers } : sent(method ?? 'POST', body, headers);
}

const oneLine = (text: string): string => text.replaceAll('\r', '\\r').replaceAll('\n', '\\n');

export async function openAsker(): Promise<Asker> {
  const app = await appUnderTest({ change: { clock: () => new Date(NOW) } });
  const store = (path: string, body: Json) => created(app, path, body);
  const site = await app.call('/v1/site', sent('PUT', SITE, { 'If-Match': '*' }));
  if (!site.ok) throw new Error(`the site is refused: ${await site.text()}`);
  const tariff = await store('/v1/tariffs', randomTariff(drawsFrom(mulberry32(STOCKED_TARIFF))));
  const pumps: string[] = [];
  for (const seed of STOCKED_PUMPS) {
    pumps.push(await store('/v1/pumps', written(invented(seed).pump, 'metric')));
  }
  let lines: AnswerLine[] = [];
  return {
    stock: { tariff, pumps },
    store,
    ask: async (question) => {
      const response = await app.call(pathOf(question), requestOf(question));
      const text = await response.text();
      lines.push({ label: question.label, status: response.status, text: oneLine(text) });
      return text;
    },
    taken: () => {
      const taken = lines;
      lines = [];
      return taken;
    },
    close: () => app.api.deps.store.close(),
  };
}
