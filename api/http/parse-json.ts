/** JSON text as a value, its nesting checked first. */
import { failed, type Result, success } from '../../curves/result.ts';
import { type Problem, problem } from './problem.ts';

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

/** Parsers recurse; the limit keeps what a body can make them do within the stack. Of two equal keys the last counts. */
export function parseJson(text: string): Result<unknown, Problem> {
  const actual = nestingOf(text);
  if (actual > NESTING_MAX) {
    const detail = `The body is nested ${actual} deep; ${NESTING_MAX} is the limit.`;
    return failed(problem('limit-exceeded', detail, { limit: NESTING_MAX, actual }));
  }
  try {
    const value: unknown = JSON.parse(text);
    return success(value);
  } catch (error) {
    const reason = error instanceof SyntaxError ? error.message : 'not JSON';
    return failed(problem('malformed-json', `The body is not JSON: ${reason}.`));
  }
}
