/** Reads JSON text as a value, after checking its nesting. */
import { failed, type Result, success } from '../../curves/result.ts';
import { type PathPart, toPointer } from './json-pointer.ts';
import { invalidRequest, type Problem, problem } from './problem.ts';

export const NESTING_MAX = 100;

const QUOTE = 0x22;
const BACKSLASH = 0x5c;
const OPENING = [0x5b, 0x7b];
const CLOSING = [0x5d, 0x7d];

/** The greatest depth of brackets outside strings, by one pass over the text. */
export function nestingOf(text: string): number {
  let depth = 0;
  let deepest = 0;
  let inString = false;
  for (let i = 0; i < text.length; i += 1) {
    const code = text.charCodeAt(i);
    if (inString) {
      if (code === BACKSLASH) i += 1;
      else if (code === QUOTE) inString = false;
    } else if (code === QUOTE) inString = true;
    else if (OPENING.includes(code)) {
      depth += 1;
      if (depth > deepest) deepest = depth;
    } else if (CLOSING.includes(code)) depth -= 1;
  }
  return deepest;
}

/** No validator hands on a member of this name, so that what it holds would be lost unseen. */
const NOT_KEPT = '__proto__';
/** A text without these holds no such member, spelt out or escaped. */
const MAY_HOLD = /proto__|\\u/;

/** The place of a member that is not kept; null without one. */
function notKept(value: unknown, path: readonly PathPart[] = []): readonly PathPart[] | null {
  if (typeof value !== 'object' || value === null) return null;
  for (const [name, member] of Object.entries(value)) {
    const at = [...path, Array.isArray(value) ? Number(name) : name];
    const found = name === NOT_KEPT ? at : notKept(member, at);
    if (found !== null) return found;
  }
  return null;
}

/** Parsers recurse; the limit keeps what a body can make them do within the stack. Of two equal keys the last counts. */
export function parseJson(text: string): Result<unknown, Problem> {
  const actual = nestingOf(text);
  if (actual > NESTING_MAX) {
    const detail = `The body is nested ${actual} deep; ${NESTING_MAX} is the limit.`;
    return failed(problem('limit-exceeded', detail, { limit: NESTING_MAX, actual }));
  }
  try {
    const value: unknown = JSON.parse(text);
    const lost = MAY_HOLD.test(text) ? notKept(value) : null;
    if (lost === null) return success(value);
    return failed(invalidRequest([{ pointer: toPointer(lost), detail: 'is not a field here' }]));
  } catch (error) {
    const reason = error instanceof SyntaxError ? error.message : 'not JSON';
    return failed(problem('malformed-json', `The body is not JSON: ${reason}.`));
  }
}
