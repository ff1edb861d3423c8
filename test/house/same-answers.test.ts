/** The questions by which two checkouts are compared: the service accepts them, and answers them alike each time. */
import { describe, expect, it } from 'vitest';
import { answersOf, KINDS } from './same-answers/answers.ts';
import type { AnswerLine } from './same-answers/asker.ts';
import type { Kind } from './same-answers/kind.ts';

/** Of each kind a twentieth is asked, two at least. */
const firstOf = ({ count }: Kind): number => Math.max(2, Math.ceil(count / 20));

async function linesOf(kind: Kind, count: number): Promise<readonly AnswerLine[]> {
  const lines: AnswerLine[] = [];
  for await (const line of answersOf(kind, count)) lines.push(line);
  return lines;
}

describe.each(KINDS)('the first questions of the kind $name', (kind) => {
  it('are accepted, and answered in the same words by another application', async () => {
    const lines = await linesOf(kind, firstOf(kind));
    expect(lines.length).toBeGreaterThanOrEqual(firstOf(kind));
    expect(lines.filter(({ status }) => status !== 200 && status !== 201)).toEqual([]);
    expect(lines.filter(({ text }) => text === '' || text.includes('\n'))).toEqual([]);
    expect(new Set(lines.map(({ label }) => label)).size).toBe(lines.length);
    const again = await linesOf(kind, 1);
    expect(again).toEqual(lines.slice(0, again.length));
  });
});
