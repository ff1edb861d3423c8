/** Documents the query parameters of a list of routine checks. */

import { z } from '@hono/zod-openapi';
import { dayOfText } from '../../../models/calendar/civil-text.ts';
import { TASK_KINDS } from '../../../models/maintenance/task.ts';
import { calendarDate } from '../../fields/clock-fields.ts';
import { idField } from '../../fields/id-field.ts';
import { listQuery } from '../../http/list-query.ts';
import { described } from '../../units/described.ts';
import { perContext } from '../../units/per-context.ts';
import type { SchemaContext } from '../../units/schema-context.ts';

const id = (context: SchemaContext, description: string) => idField(context, { description }).optional();

const yesOrNo = (context: SchemaContext, description: string) =>
  described(
    context,
    z.enum(['true', 'false']).transform((text) => text === 'true'),
    {
      type: 'boolean',
      description,
      examples: [true],
    },
  ).optional();

/** Those of one loop or of one pump. */
export const targetQuery = (context: SchemaContext) => ({
  loop: id(context, 'Only checks of this loop, by its id or key.'),
  pump: id(context, 'Only checks of this pump, by its id or key.'),
});

export const taskListQuery = perContext((context) =>
  listQuery(context).extend({
    ...targetQuery(context),
    kind: described(context, z.enum(TASK_KINDS), {
      description: 'Only checks of this kind.',
      examples: ['screen-cleaning'],
    }).optional(),
    due: yesOrNo(context, 'Only checks that are due, overdue ones included; or only those that are not.'),
    overdue: yesOrNo(context, 'Only checks that are overdue; or only those that are not.'),
    dueBy: calendarDate(context, {
      description: 'Only checks that are due on this day or before.',
      example: '2026-12-31',
    }).optional(),
  }),
);

type TaskListQuery = z.output<ReturnType<typeof taskListQuery>>;

/** The days between which a check must be due, both included; without bounds where nothing is asked. */
export function dueBounds(
  { due, overdue, dueBy }: Pick<TaskListQuery, 'due' | 'overdue' | 'dueBy'>,
  today: number,
): { readonly dueFrom?: number; readonly dueUntil?: number } {
  const untils = [
    ...(due === true ? [today] : []),
    ...(overdue === true ? [today - 1] : []),
    ...(dueBy === undefined ? [] : [dayOfText(dueBy) ?? today]),
  ];
  const froms = [...(due === false ? [today + 1] : []), ...(overdue === false ? [today] : [])];
  return {
    ...(froms.length === 0 ? {} : { dueFrom: Math.max(...froms) }),
    ...(untils.length === 0 ? {} : { dueUntil: Math.min(...untils) }),
  };
}
