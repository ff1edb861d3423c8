/** Makes examples of computed answers for the OpenAPI document, from the figures of the computation itself. */
import { z } from '@hono/zod-openapi';
import { answerUnits } from '../units/answer-units.ts';
import { quantitiesOf } from '../units/quantity-of.ts';
import { documentedContext, type SchemaContext } from '../units/schema-context.ts';

/** A body in SI, without its units, as it leaves in metric units. */
export function answerExample(schema: (context: SchemaContext) => z.ZodType<unknown>, body: object): unknown {
  const answer = schema(documentedContext('answer'));
  return z.encode(answer, { ...body, units: answerUnits(quantitiesOf(answer), 'metric') });
}
