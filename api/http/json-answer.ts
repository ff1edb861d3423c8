/** Writes an answer in JSON, and from that in CSV or as one plain value. */
import { z } from '@hono/zod-openapi';
import { failed, type Result, success } from '../../curves/result.ts';
import { oncePerObject } from '../caches/once-per-object.ts';
import { writtenOnce } from '../caches/written-once.ts';
import { quantitiesOfCautions } from '../fields/caution.ts';
import { answerUnits } from '../units/answer-units.ts';
import { quantitiesOf } from '../units/quantity-of.ts';
import { documentedContext, type SchemaContext, schemaContext } from '../units/schema-context.ts';
import type { Quantity } from '../units/table.ts';
import type { UnitSystem } from '../units/unit-system.ts';
import { negotiate } from './accept.ts';
import type { AnswerForm, MediaType } from './answer-form.ts';
import { type Table, writeCsv } from './csv.ts';
import { pointedValue } from './pointed-value.ts';
import { type Problem, problem } from './problem.ts';

interface JsonAnswer<Schema extends z.ZodType> {
  /** States `units` where it carries quantities. */
  readonly schema: (context: SchemaContext) => Schema & z.ZodType<z.output<Schema>, z.input<Schema>>;
  readonly description: string;
  /** In metric units. */
  readonly example: unknown;
  /** 200 where it is not stated. */
  readonly status?: 200 | 201;
  /** The table that CSV shows, from the answer as it leaves. */
  readonly table?: (wire: z.input<Schema>) => Table;
}

/** Also without quantities, so that lists and records all look alike. */
const hasUnits = (schema: z.ZodType): boolean => schema instanceof z.ZodObject && 'units' in schema.shape;

/** Of the quantities that its schema carries, and of those of its cautions. */
const unitsOf = (body: unknown, ofSchema: readonly Quantity[], system: UnitSystem) =>
  answerUnits([...new Set([...ofSchema, ...quantitiesOfCautions(body)])].sort(), system);

/** A field that is missing, unknown or not finite is a fault of ours: it throws. */
function encode<Wire>(schema: z.ZodType<unknown, Wire>, body: unknown): Wire {
  const encoded = z.safeEncode(schema, body);
  if (encoded.success) return encoded.data;
  throw new Error(`invariant: the answer does not match its schema: ${z.prettifyError(encoded.error)}`);
}

function negotiated(accept: string | undefined, hasTable: boolean): Result<MediaType, Problem> {
  const offers: readonly MediaType[] = hasTable ? ['application/json', 'text/csv'] : ['application/json'];
  const chosen = negotiate(accept, offers);
  if (chosen !== undefined) return success(chosen);
  const detail = `The answer comes as ${offers.join(' or ')}.`;
  return failed(problem('not-acceptable', detail, { errors: [{ header: 'Accept', detail }] }));
}

/** What the query states about the form wins over the header Accept. */
export function jsonAnswer<Schema extends z.ZodType>(form: JsonAnswer<Schema>): AnswerForm<z.output<Schema>> {
  const { schema, table, description, example, status = 200 } = form;
  const documented = writtenOnce(() => schema(documentedContext('answer')));
  const quantities = writtenOnce(() => quantitiesOf(documented()));
  const statesUnits = writtenOnce(() => quantities().length > 0 || hasUnits(documented()));
  const withUnits = (body: unknown, system: UnitSystem) =>
    typeof body === 'object' && statesUnits()
      ? { ...body, units: unitsOf(body, quantities(), system) }
      : body;
  const write = (body: unknown, system: UnitSystem) => {
    const wire = encode(schema(schemaContext({ system, side: 'answer' })), withUnits(body, system));
    return { wire, text: writtenOnce(() => JSON.stringify(wire)) };
  };
  const written = oncePerObject<object, [UnitSystem], ReturnType<typeof write>>(write);
  return {
    status,
    hasTable: table !== undefined,
    mediaType: 'application/json',
    chooseMediaType({ pointer, format }, accept) {
      if (pointer !== undefined) return success('text/plain');
      if (format !== undefined) return success(format === 'csv' ? 'text/csv' : 'application/json');
      return negotiated(accept, table !== undefined);
    },
    write(body, { system, pointer }, mediaType) {
      const isObject = typeof body === 'object' && body !== null;
      const { wire, text: whole } = isObject ? written(body, system) : write(body, system);
      if (pointer !== undefined) {
        const text = pointedValue(wire, pointer);
        return text.ok ? success({ text: text.value, contentType: 'text/plain; charset=utf-8' }) : text;
      }
      if (mediaType === 'text/csv' && table !== undefined) {
        const contentType = 'text/csv; charset=utf-8; header=present';
        return success({ text: writeCsv(table(wire), system), contentType });
      }
      return success({ text: whole(), contentType: 'application/json' });
    },
    document: () => ({ status, description, schema: documented(), example }),
  };
}
