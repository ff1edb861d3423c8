/** Requests with a JSON body, and answers read as JSON. */
import { readFileSync } from 'node:fs';
import type { AppUnderTest } from './app-under-test.ts';

export type Json = Record<string, unknown>;

export const exampleText = (name: string): string =>
  readFileSync(new URL(`../../openapi/examples/${name}`, import.meta.url), 'utf8');

export const example = (name: string): Json => JSON.parse(exampleText(name));

export async function jsonOf(response: Response): Promise<Json> {
  const body: Json = JSON.parse(await response.text());
  return body;
}

export const sent = (method: string, body: unknown, headers: Record<string, string> = {}): RequestInit => ({
  method,
  headers: { 'Content-Type': 'application/json', ...headers },
  body: JSON.stringify(body),
});

/** Creates a resource that must be accepted, and gives its id. */
export async function created({ call }: AppUnderTest, path: string, body: unknown): Promise<string> {
  const response = await call(path, sent('POST', body));
  const answer = await jsonOf(response);
  if (response.status !== 201) throw new Error(`${path}: ${JSON.stringify(answer)}`);
  return String(answer.id);
}
