/** Turns issues of a schema into errors at the deepest member that they concern. */
import type { z } from '@hono/zod-openapi';
import { type PathPart, toPointer, valueAt } from './json-pointer.ts';
import type { ProblemError } from './problem.ts';
import { fieldsOfMessage, unknownFieldWords } from './unknown-field.ts';

type Issue = z.core.$ZodIssue;

interface Placed {
  readonly path: readonly PathPart[];
  readonly issue: Issue;
}

const partsOf = (path: readonly PropertyKey[]): readonly PathPart[] =>
  path.map((part) => (typeof part === 'symbol' ? String(part) : part));

const keysOf = (value: unknown): readonly string[] =>
  typeof value === 'object' && value !== null ? Object.keys(value) : [];

const isMissing = (document: unknown, path: readonly PathPart[]): boolean =>
  path.length > 0 && valueAt(document, path) === undefined;

interface Misfit {
  readonly issues: readonly Issue[];
  readonly wrongKind: boolean;
  readonly unknownKeys: number;
  readonly missingKeys: number;
}

function misfit(issues: readonly Issue[], input: unknown): Misfit {
  let unknownKeys = 0;
  let missingKeys = 0;
  let wrongKind = false;
  for (const issue of issues) {
    const [key, ...deeper] = issue.path;
    if (key === undefined && issue.code === 'unrecognized_keys') unknownKeys += issue.keys.length;
    else if (key === undefined && issue.code === 'invalid_type') wrongKind = true;
    else if (key !== undefined && deeper.length === 0 && !keysOf(input).includes(String(key)))
      missingKeys += 1;
  }
  return { issues, wrongKind, unknownKeys, missingKeys };
}

/** The option whose keys the input comes closest to; undefined where two come as close and the input does not decide between them. */
function closestOption(options: readonly (readonly Issue[])[], input: unknown): readonly Issue[] | undefined {
  const fitting = options.map((issues) => misfit(issues, input)).filter(({ wrongKind }) => !wrongKind);
  fitting.sort((a, b) => a.unknownKeys - b.unknownKeys || a.missingKeys - b.missingKeys);
  const [best, next] = fitting;
  if (best === undefined) return undefined;
  const asClose = next?.unknownKeys === best.unknownKeys && next.missingKeys === best.missingKeys;
  return asClose && best.missingKeys > 0 ? undefined : best.issues;
}

/** Follows an issue into the option of a union or the entry of a record that it concerns. */
function deepest(document: unknown, base: readonly PathPart[], issue: Issue): readonly Placed[] {
  const path = [...base, ...partsOf(issue.path)];
  const inside = (issues: readonly Issue[], at: readonly PathPart[]) =>
    issues.flatMap((inner) => deepest(document, at, inner));
  if (issue.code === 'unrecognized_keys') return issue.keys.map((key) => ({ path: [...path, key], issue }));
  if (issue.code === 'invalid_union' && !isMissing(document, path)) {
    const option = closestOption(issue.errors, valueAt(document, path));
    if (option !== undefined) return inside(option, path);
  }
  if (issue.code === 'invalid_element' || issue.code === 'invalid_key') return inside(issue.issues, path);
  return [{ path, issue }];
}

const counted = (count: number | bigint, noun: string): string =>
  `${count} ${noun}${Number(count) === 1 ? '' : 's'}`;

const FRACTION_WORDS = 'must be at most 1: it is a fraction, 0.35 for 35 %';
const PERCENT_MOST = 100;

/** Whether a fraction looks like one stated in percent. */
const isPercent = (value: unknown, maximum: number | bigint): boolean =>
  maximum === 1 && typeof value === 'number' && value > 1 && value <= PERCENT_MOST;

function sizeDetail(issue: Extract<Issue, { code: 'too_big' | 'too_small' }>, value: unknown): string {
  const noun = issue.origin === 'string' ? 'character' : 'item';
  const isNumber = issue.origin === 'number' || issue.origin === 'int';
  if (issue.code === 'too_big') {
    if (isNumber && isPercent(value, issue.maximum)) return FRACTION_WORDS;
    if (isNumber) return `must be ${issue.inclusive === false ? 'below' : 'at most'} ${issue.maximum}`;
    return `must have at most ${counted(issue.maximum, noun)}`;
  }
  if (isNumber) return `must be ${issue.inclusive === false ? 'above' : 'at least'} ${issue.minimum}`;
  return `must have at least ${counted(issue.minimum, noun)}`;
}

function detailOf(document: unknown, { path, issue }: Placed): string {
  switch (issue.code) {
    case 'unrecognized_keys':
      return unknownFieldWords(String(path.at(-1) ?? ''), fieldsOfMessage(issue.message));
    case 'too_big':
    case 'too_small':
      return sizeDetail(issue, valueAt(document, path));
    case 'invalid_type':
      if (isMissing(document, path)) return 'is required';
      return issue.expected === 'int' ? 'must be a whole number' : `must be of type ${issue.expected}`;
    case 'invalid_value':
      if (isMissing(document, path)) return 'is required';
      return `must be one of ${issue.values.map((value) => JSON.stringify(value)).join(', ')}`;
    case 'invalid_union':
      return isMissing(document, path) ? 'is required' : issue.message;
    default:
      return issue.message;
  }
}

function limitOf(document: unknown, { path, issue }: Placed): { limit?: number; actual?: number } {
  if (
    issue.code === 'custom' &&
    typeof issue.params?.limit === 'number' &&
    typeof issue.params.actual === 'number'
  ) {
    return { limit: issue.params.limit, actual: issue.params.actual };
  }
  const value = valueAt(document, path);
  if (issue.code !== 'too_big' || issue.origin !== 'array' || !Array.isArray(value)) return {};
  return { limit: Number(issue.maximum), actual: value.length };
}

/** `document` is the body as it came, before any codec. */
export function bodyErrors(issues: readonly Issue[], document: unknown): readonly ProblemError[] {
  return issues
    .flatMap((issue) => deepest(document, [], issue))
    .map((placed) => ({
      pointer: toPointer(placed.path),
      detail: detailOf(document, placed),
      ...limitOf(document, placed),
    }));
}

/** `parameters` are the query as it came, `known` the names of those that there are. */
export function queryErrors(
  issues: readonly Issue[],
  parameters: unknown,
  known: readonly string[],
): readonly ProblemError[] {
  const unknown = `is not a parameter here; parameters are ${known.join(', ')}`;
  return issues
    .flatMap((issue) => deepest(parameters, [], issue))
    .map((placed) => {
      const isUnknown = placed.issue.code === 'unrecognized_keys';
      const detail = isUnknown
        ? known.length === 0
          ? NO_PARAMETERS
          : unknown
        : detailOf(parameters, placed);
      return { parameter: String(placed.path[0] ?? ''), detail };
    });
}

const NO_PARAMETERS = 'is not a parameter here; there are none';
