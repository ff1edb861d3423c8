/** Makes examples of stored documents for the OpenAPI document. */
import { z } from '@hono/zod-openapi';
import { answerUnits } from '../units/answer-units.ts';
import { quantitiesOf } from '../units/quantity-of.ts';
import { documentedContext, type SchemaContext } from '../units/schema-context.ts';

const RECORD = {
  id: '0198c0de-0000-7000-8000-000000000001',
  version: 1,
  createdAt: '2026-01-15T12:00:00.000Z',
  updatedAt: '2026-01-15T12:00:00.000Z',
} as const;

interface Facts {
  readonly input: (context: SchemaContext) => z.ZodType<object>;
  readonly answer: (context: SchemaContext) => z.ZodType<unknown>;
  /** As it is entered, in metric units. */
  readonly document: unknown;
}

function encoded(answer: z.ZodType<unknown>, body: object): unknown {
  return z.encode(answer, { ...body, units: answerUnits(quantitiesOf(answer), 'metric') });
}

const recordOf = ({ input, document }: Facts): object => ({
  ...input(documentedContext('request')).parse(document),
  ...RECORD,
});

/** What is answered for a document that was entered, its defaults filled in. */
export const storedExample = (facts: Facts): unknown =>
  encoded(facts.answer(documentedContext('answer')), recordOf(facts));

/** A page of one. */
export const listExample = (facts: Facts): unknown =>
  encoded(facts.answer(documentedContext('answer')), { items: [recordOf(facts)], next: null });
