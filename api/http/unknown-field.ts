/** Says of a field that is unknown which one may be meant. */
import { z } from '@hono/zod-openapi';

/** Fields that are named at most; more are counted. */
const NAMED_MOST = 20;
/** A name that begins like a field, with so many letters, is taken as short for it. */
const BEGINNING_LEAST = 3;
/** Of so many letters one may be wrong. */
const LETTERS_A_SLIP = 3;
/** Longer names are not compared: they are no slips. */
const COMPARED_MOST = 60;

export const UNKNOWN_FIELD = 'is not a field here';

/** `is not a field here; the nearest is "requiredFlow"`, or the fields that there are. */
export function unknownFieldWords(name: string, fields: readonly string[]): string {
  const near = nearestField(name, fields);
  if (near !== undefined) return `${UNKNOWN_FIELD}; the nearest is "${near}"`;
  if (fields.length === 0) return UNKNOWN_FIELD;
  const more = fields.length > NAMED_MOST ? ` and ${fields.length - NAMED_MOST} more` : '';
  return `${UNKNOWN_FIELD}; fields are ${fields.slice(0, NAMED_MOST).join(', ')}${more}`;
}

function nearestField(name: string, fields: readonly string[]): string | undefined {
  if (name.length > COMPARED_MOST) return undefined;
  const written = name.toLowerCase();
  const short = fields.find(
    (field) => written.length >= BEGINNING_LEAST && field.toLowerCase().startsWith(written),
  );
  const slips = Math.ceil(written.length / LETTERS_A_SLIP);
  const [best] = fields
    .map((field) => ({ field, changes: changesBetween(written, field.toLowerCase()) }))
    .filter(({ changes }) => changes <= slips && changes < written.length)
    .toSorted((a, b) => a.changes - b.changes);
  return best?.changes === 0 ? best.field : (short ?? best?.field);
}

/** Letters put in, taken out or replaced between two words (Levenshtein 1966). */
function changesBetween(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, place) => place);
  for (const [i, letter] of [...a].entries()) {
    const next = [i + 1];
    for (const [j, other] of [...b].entries()) {
      const replaced = (row[j] ?? 0) + (letter === other ? 0 : 1);
      next.push(Math.min(replaced, (row[j + 1] ?? 0) + 1, (next[j] ?? 0) + 1));
    }
    row = next;
  }
  return row.at(-1) ?? 0;
}

/** Between the names of fields in a message. */
const SEPARATOR = ', ';

/** The fields that an object with unknown ones may have, from the message of its issue. */
export const fieldsOfMessage = (message: string): readonly string[] =>
  message === '' ? [] : message.split(SEPARATOR);

// An issue loses its schema before anybody sees it, so that its message carries the names of the fields.
z.config({
  customError: (issue) => {
    if (issue.code !== 'unrecognized_keys') return undefined;
    return issue.inst instanceof z.ZodObject ? Object.keys(issue.inst.shape).join(SEPARATOR) : '';
  },
});
