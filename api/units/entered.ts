/** Reads a quantity that a user enters, a number in the unit in force or a string with its unit. */
import { z } from '@hono/zod-openapi';
import { decodeNumber, encodeNumber, unitInForce } from './convert.ts';
import { described } from './described.ts';
import { parseQuantity, QUANTITY_TEXT_MAX, type QuantityFailure } from './parse.ts';
import { markQuantity } from './quantity-of.ts';
import { roundComputed, roundEntered, roundExact } from './round.ts';
import type { SchemaContext } from './schema-context.ts';
import type { Quantity } from './table.ts';

interface QuantityRange {
  /** In the unit kept inside. */
  readonly minimum: number;
  readonly maximum: number;
  /** The minimum itself is refused. */
  readonly aboveMinimum?: boolean;
}

// An entry of exactly the limit may be a rounding error beyond it.
const ROUNDING = 1e-12;

// Below any flow, length or power that could be meant; squares and quotients of smaller numbers leave the range of doubles.
const SMALLEST = 1e-12;

const beyond = (value: number, limit: number): boolean => value - limit > ROUNDING * Math.abs(limit);

/** What is wrong with a value, quoting the limit in the unit of the caller; undefined when it is within. */
function rangeFault(
  value: number,
  { minimum, maximum, aboveMinimum = false }: QuantityRange,
  { unit, shown }: { unit: string; shown: (limit: number) => number },
): string | undefined {
  const quoted = (limit: number) => `${roundComputed(shown(limit))} ${unit}`;
  if (value !== 0 && Math.abs(value) < SMALLEST) {
    return `is too close to 0: it must be 0, or at least ${quoted(SMALLEST)} in size`;
  }
  if (beyond(value, maximum)) return `must be at most ${quoted(maximum)}, not ${quoted(value)}`;
  if (aboveMinimum && value <= minimum) return `must be above ${quoted(minimum)}, not ${quoted(value)}`;
  if (beyond(minimum, value)) return `must be at least ${quoted(minimum)}, not ${quoted(value)}`;
  return undefined;
}

export interface EnteredQuantity extends QuantityRange {
  readonly description: string;
  /** In the metric unit. */
  readonly example: number;
  /** In the unit kept inside; where it is given, a request may leave the field out. */
  readonly default?: number;
}

export type QuantityCodec = z.ZodType<number, number | string | undefined>;

function failureDetail(failure: QuantityFailure): string {
  switch (failure.code) {
    case 'too-long':
      return `must be at most ${failure.limit} characters, not ${failure.actual}`;
    case 'not-a-quantity':
      return `must be a number, or "<decimal or mixed fraction> <unit>" with one of ${failure.accepted.join(', ')}; not "${failure.text}"`;
    case 'has-exponent':
      return `must be written out, without an exponent; not "${failure.text}"`;
    case 'has-comma':
      return `must have a point as its decimal mark, and no grouping; not "${failure.text}"`;
    case 'spaced-fraction':
      return `must have a hyphen between the whole number and the fraction, as in "1-1/2 in"; not "${failure.text}"`;
    case 'unit-not-accepted':
      return `has the unit "${failure.unit}"; accepted are ${failure.accepted.join(', ')}`;
  }
}

function documentedRange(quantity: Quantity, { minimum, maximum, aboveMinimum = false }: QuantityRange) {
  const inUnit = (value: number) => roundComputed(encodeNumber(value, quantity, 'metric'));
  return aboveMinimum
    ? { exclusiveMinimum: inUnit(minimum), maximum: inUnit(maximum) }
    : { minimum: inUnit(minimum), maximum: inUnit(maximum) };
}

/** The description, the units and the example of a quantity as the document shows them. */
export function quantityWords(
  quantity: Quantity,
  { description, example }: { description: string; example: number },
) {
  const metric = unitInForce(quantity, 'metric');
  const us = unitInForce(quantity, 'us');
  const unit = metric === us ? `[${metric}]` : `[${metric}; ${us} with \`units=us\`]`;
  return { description: `${description} ${unit}`, examples: [example] };
}

function quantityCodec(context: SchemaContext, quantity: Quantity, range: QuantityRange) {
  const { system, density, exact } = context;
  const unit = unitInForce(quantity, system);
  const wire = z.union([z.number(), z.string()], {
    error: `must be a number of ${unit} or a string with its unit`,
  });
  return z.codec(wire, z.number(), {
    decode: (value, issues) => {
      const refuse = (message: string) => {
        issues.issues.push({ code: 'custom', message, input: value });
        return z.NEVER;
      };
      const parsed =
        typeof value === 'string'
          ? parseQuantity(value, { quantity, density })
          : { ok: true as const, value: decodeNumber(value, quantity, system) };
      if (!parsed.ok) return refuse(failureDetail(parsed.failure));
      const fault = rangeFault(parsed.value, range, {
        unit,
        shown: (limit) => encodeNumber(limit, quantity, system),
      });
      if (fault !== undefined) return refuse(fault);
      return parsed.value === 0 ? 0 : parsed.value;
    },
    encode: (value) => (exact ? roundExact : roundEntered)(encodeNumber(value, quantity, system)),
  });
}

/** Decodes to the unit kept inside and checks the range there; encodes what was entered within 1e-9. */
export function entered(context: SchemaContext, quantity: Quantity, field: EnteredQuantity): QuantityCodec {
  const codec = markQuantity(quantityCodec(context, quantity, field), quantity);
  const words = quantityWords(quantity, field);
  if (context.side === 'answer') return described(context, codec, { type: 'number', ...words });
  const both = {
    type: ['number', 'string'] as ['number', 'string'],
    maxLength: QUANTITY_TEXT_MAX,
    ...documentedRange(quantity, field),
    ...words,
  };
  if (field.default === undefined) return described(context, codec, both);
  return described(context, codec.default(field.default), {
    ...both,
    default: roundEntered(encodeNumber(field.default, quantity, 'metric')),
  });
}
