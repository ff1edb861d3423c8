/** Answers routine checks, with when they are due and their upkeep of a year. */
import type { z } from '@hono/zod-openapi';
import { civilDate } from '../../../models/calendar/civil-day.ts';
import { textOfDate } from '../../../models/calendar/civil-text.ts';
import { workCautions } from '../../../models/cautions/upkeep.ts';
import { attentionOf, pricedAttention } from '../../../models/maintenance/attention.ts';
import { dangersOf, taskWork } from '../../../models/maintenance/task.ts';
import { recordBody } from '../../fields/record-fields.ts';
import type { WithoutUnits } from '../../http/answer-form.ts';
import type { Site } from '../site/kind.ts';
import type { taskAnswerSchema, taskItem, taskListSchema } from './answer-schema.ts';
import type { MaintenanceTaskRecord, TaskTotals } from './contract.ts';

/** What an answer about checks rests on besides them: the site, and the day that its clocks show. */
export interface TaskView {
  readonly site: Pick<Site, 'labourRate' | 'currency'>;
  readonly today: number;
}

export const dateText = (day: number): string => textOfDate(civilDate(day));

export function taskItemBody(
  record: MaintenanceTaskRecord,
  { site, today }: TaskView,
): WithoutUnits<z.output<ReturnType<typeof taskItem>>> {
  const { document, progress } = record;
  const work = taskWork(document);
  const { hours, parts, cost } = attentionOf([work], site.labourRate);
  const { nextDue, lastDone, completions } = progress;
  return {
    ...recordBody(record),
    nextDue: dateText(nextDue),
    due: nextDue <= today,
    overdue: nextDue < today,
    daysUntilDue: nextDue - today,
    lastDone: lastDone === null ? null : new Date(lastDone.at).toISOString(),
    completions,
    timesAYear: work.timesAYear,
    annualHours: hours,
    annualParts: parts,
    annualCost: cost,
    currency: site.currency,
  };
}

export const taskAnswer = (
  record: MaintenanceTaskRecord,
  view: TaskView,
): WithoutUnits<z.output<ReturnType<typeof taskAnswerSchema>>> => ({
  ...taskItemBody(record, view),
  cautions: workCautions(dangersOf([record.document.kind])),
});

export const taskListAnswer = (
  records: readonly MaintenanceTaskRecord[],
  { next, totals, view }: { next: string | null; totals: TaskTotals; view: TaskView },
): WithoutUnits<z.output<ReturnType<typeof taskListSchema>>> => ({
  items: records.map((record) => taskItemBody(record, view)),
  next,
  today: dateText(view.today),
  attention: {
    tasks: totals.tasks,
    due: totals.due,
    overdue: totals.overdue,
    ...pricedAttention(totals, view.site.labourRate),
    currency: view.site.currency,
  },
  cautions: workCautions(dangersOf(records.map(({ document }) => document.kind))),
});
