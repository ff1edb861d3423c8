/** Documents a setting that is a plain number in answers, since its unit is % in both systems. */
import { z } from '@hono/zod-openapi';
import { described } from '../units/described.ts';
import { markUnitOfColumn } from '../units/quantity-of.ts';
import type { SchemaContext } from '../units/schema-context.ts';

export const settingField = (context: SchemaContext, description: string, example: number) =>
  described(context, markUnitOfColumn(z.number(), 'setting'), { description, examples: [example] });
