/** Reads the parameters that routes share: the units, the form of the answer, one value of it. */
import { failed, type Result, success } from '../../curves/result.ts';
import { UNIT_SYSTEMS, type UnitSystem } from '../units/unit-system.ts';
import { parsePointer } from './json-pointer.ts';
import type { Parameters } from './parse-query.ts';
import { invalidRequest, type Problem, type ProblemError } from './problem.ts';

export const FORMATS = ['json', 'csv'] as const;

export type Format = (typeof FORMATS)[number];

/** Which of the shared parameters a route knows. */
export interface SharedParameters {
  readonly units: boolean;
  readonly format: boolean;
  readonly pointer: boolean;
}

export interface CommonQuery {
  readonly system: UnitSystem;
  readonly format: Format | undefined;
  readonly pointer: readonly string[] | undefined;
  /** The parameters of the route itself. */
  readonly rest: Parameters;
}

const oneOf = (parameter: string, words: readonly string[]): ProblemError => ({
  parameter,
  detail: `must be one of ${words.join(', ')}`,
});

export function commonQuery(parameters: Parameters, known: SharedParameters): Result<CommonQuery, Problem> {
  const errors: ProblemError[] = [];
  const own = new Map(Object.entries(parameters));
  const take = (name: keyof SharedParameters): string | undefined => {
    if (!known[name]) return undefined;
    const value = own.get(name);
    own.delete(name);
    return value;
  };

  const units = take('units');
  const system = units === undefined ? 'metric' : UNIT_SYSTEMS.find((word) => word === units);
  if (system === undefined) errors.push(oneOf('units', UNIT_SYSTEMS));

  const formatText = take('format');
  const format = FORMATS.find((word) => word === formatText);
  if (formatText !== undefined && format === undefined) errors.push(oneOf('format', FORMATS));

  const pointerText = take('pointer');
  const pointer = pointerText === undefined ? undefined : parsePointer(pointerText);
  if (pointerText !== undefined && pointer === undefined) {
    errors.push({ parameter: 'pointer', detail: 'must be a JSON pointer such as /best/setting' });
  }
  if (pointer !== undefined && format === 'csv') {
    errors.push({ parameter: 'format', detail: 'must not be csv beside `pointer`' });
  }

  if (errors.length > 0 || system === undefined) return failed(invalidRequest(errors));
  return success({ system, format, pointer, rest: Object.fromEntries(own) });
}
