/** Answers with the routine checks of a site as a calendar. */
import { z } from '@hono/zod-openapi';
import { failed, success } from '../../../curves/result.ts';
import type { Api } from '../../http/api.ts';
import { defineRoute } from '../../http/define-route.ts';
import { pageAnswer } from '../../http/page-answer.ts';
import { noBody } from '../../http/request-body.ts';
import { findSite } from '../../records/site/kind.ts';
import { targetQuery } from '../../records/task/query.ts';
import { perContext } from '../../units/per-context.ts';
import { maintenanceCalendar, type NamedTask } from './calendar.ts';
import { calendarTasks } from './calendar-tasks.ts';

const SHOWN: NamedTask = {
  of: 'Kelp flume',
  record: {
    id: '0198c0de-0000-7000-8000-000000000001',
    version: 1,
    name: 'Clean the intake screen',
    createdAt: Date.UTC(2026, 0, 15, 12),
    updatedAt: Date.UTC(2026, 0, 15, 12),
    document: {
      title: 'Clean the intake screen',
      kind: 'screen-cleaning',
      every: { weeks: 1 },
      minutes: 10,
      parts: 0,
      firstDue: '2026-01-12',
      loop: '0198c0de-0000-7000-8000-000000000002',
    },
    progress: {
      nextDue: 20_465,
      lastDone: null,
      completions: 0,
      changes: 0,
      changedAt: Date.UTC(2026, 0, 15, 12),
    },
  },
};

const EXAMPLE = maintenanceCalendar({
  name: 'Maintenance: Skerry Point Marine Station',
  currency: 'EUR',
  tasks: [SHOWN],
});

const query = perContext((context) => z.strictObject(targetQuery(context)));

export function maintenanceCalendarRoute(api: Api): void {
  defineRoute(
    api,
    {
      path: '/v1/maintenance.ics',
      tag: 'maintenance',
      method: 'get',
      operationId: 'getMaintenanceCalendar',
      summary: 'Routine checks as a calendar',
      description:
        'A calendar (RFC 5545) to subscribe to: one event a check, all day on the day it is due next, and on by its interval. A completion moves it; an overdue check stays on its day.',
      query,
      body: noBody,
      answer: pageAnswer({
        mediaType: 'text/calendar',
        description: 'The calendar.',
        example: EXAMPLE,
      }),
    },
    async ({ query: { loop, pump }, store }) => {
      const { document: site } = await findSite(store);
      const tasks = await calendarTasks(store, { loop, pump });
      if (!tasks.ok) return failed(tasks.failure);
      const body = maintenanceCalendar({
        name: `Maintenance: ${site.name}`,
        currency: site.currency,
        tasks: tasks.value,
      });
      return success({ body, validator: { basis: body } });
    },
  );
}
