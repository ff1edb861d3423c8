/** The answers about readings that the document shows. */
import { example } from '../http/examples.ts';

type Ask = (path: string, init?: RequestInit) => Promise<Record<string, unknown>>;

/** By file name; `loop` has its pump installed. */
export async function readingAnswers(ask: Ask, loop: string): Promise<ReadonlyMap<string, unknown>> {
  const path = `/v1/loops/${loop}`;
  await ask(`${path}/readings`, {
    method: 'POST',
    headers: { 'Content-Type': 'application/json' },
    body: JSON.stringify(example('readings')),
  });
  return new Map([
    ['answers/readings.json', await ask(`${path}/readings?limit=2`)],
    ['answers/condition.json', await ask(`${path}/condition?cleaningCost=15`)],
  ]);
}
