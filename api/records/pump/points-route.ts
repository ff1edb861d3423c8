/** Replaces the points of a pump by a table in CSV. */
import { z } from '@hono/zod-openapi';
import { failed, type Result, success } from '../../../curves/result.ts';
import type { Pump } from '../../../models/pump/pump.ts';
import { LIST_MAX } from '../../fields/limits.ts';
import type { Api, SiteDependencies } from '../../http/api.ts';
import { csvBody, withLine } from '../../http/csv-body.ts';
import { csvColumns } from '../../http/csv-columns.ts';
import { defineRoute } from '../../http/define-route.ts';
import { invalidRequest, type Problem } from '../../http/problem.ts';
import { noQuery } from '../../http/route.ts';
import { type PutConditions, putCondition } from '../put-condition.ts';
import { writeProblem } from '../write-problems.ts';
import { fitPumpOrProblem } from './fit.ts';
import type { PumpRecord } from './kind.ts';
import { findPump, PUMPS } from './kind.ts';
import { headPoint, powerPoint } from './points-schema.ts';
import { storedPumpAnswer, writtenPumpAnswer } from './route.ts';

interface PointsWrite {
  readonly id: string;
  readonly conditions: PutConditions;
  readonly member: 'headPoints' | 'powerPoints';
  readonly points: Partial<Pump>;
  readonly lines: readonly number[];
}

/** Faults of the list that came are named by its rows, those of other members by their place in the pump. */
function byRows({ errors = [] }: Problem, { member, lines }: PointsWrite): Problem {
  const prefix = `/${member}`;
  return invalidRequest(
    errors.map((error) => {
      const { pointer } = error;
      if (pointer === undefined || !pointer.startsWith(prefix)) return error;
      return withLine({ ...error, pointer: pointer.slice(prefix.length) }, lines);
    }),
  );
}

async function replacePoints(
  deps: Pick<SiteDependencies, 'store' | 'clock'>,
  write: PointsWrite,
): Promise<Result<PumpRecord, Problem>> {
  const { id, conditions, points } = write;
  const found = await findPump(deps.store, id, null);
  if (!found.ok) return found;
  const { version, document: before } = found.value;
  const document = { ...before, ...points };
  const condition = putCondition(conditions, { stored: found.value, put: { document }, noun: 'pump' });
  if (!condition.ok) return condition;
  if (condition.value === 'is-stored') return found;
  const fit = fitPumpOrProblem(document);
  if (!fit.ok) return failed(byRows(fit.failure, write));
  const now = deps.clock().getTime();
  // The version read, also for `*`: what another wrote in between must not be lost with the rest of the pump.
  const replacement = { id, document, fit: fit.value, now, expectedVersion: version };
  const written = await deps.store.of(PUMPS).replace(replacement);
  return written.outcome === 'replaced' ? success(written.record) : failed(writeProblem(written, 'pump'));
}

const common = {
  method: 'put',
  tag: 'pumps',
  query: noQuery,
  conditional: 'unless-stored',
  answer: storedPumpAnswer({ description: 'The pump as it is stored.' }),
} as const;

export function pumpPointRoutes(api: Api): void {
  const { clock } = api.deps;
  defineRoute(
    api,
    {
      ...common,
      path: '/v1/pumps/{pumpId}/head-points',
      operationId: 'replaceHeadPoints',
      summary: 'Replace the head points of a pump',
      description: 'A table of points, its columns in any order; the unit in force, or that in the header.',
      body: csvBody({
        columns: csvColumns(headPoint, {
          flow: { required: true },
          head: { required: true },
          setting: { required: false },
        }),
        rowsMax: LIST_MAX,
        rows: (context) => z.array(headPoint(context)).min(1).max(LIST_MAX),
        description:
          'Columns flow, head and, where it is not 100, setting. A head [bar], [kPa] or [psi] is that of a column of sea water of 25 degC and 35 g/kg.',
        example: 'flow [gal/h],head [ft],setting\r\n0,16.7,100\r\n1585,14.8,100\r\n3698,6.2,100\r\n',
      }),
    },
    async ({ params, body: { rows, lines }, store, ...conditions }) => {
      const points = { headPoints: rows };
      const write = { id: params.pumpId, conditions, points, lines };
      const written = await replacePoints({ store, clock }, { ...write, member: 'headPoints' });
      return written.ok ? success(writtenPumpAnswer(written.value)) : written;
    },
  );
  defineRoute(
    api,
    {
      ...common,
      path: '/v1/pumps/{pumpId}/power-points',
      operationId: 'replacePowerPoints',
      summary: 'Replace the power points of a pump',
      description: 'A table of points, its columns in any order; the unit in force, or that in the header.',
      body: csvBody({
        columns: csvColumns(powerPoint, {
          setting: { required: true },
          power: { required: true },
          flow: { required: false },
        }),
        rowsMax: LIST_MAX,
        rows: (context) => z.array(powerPoint(context)).min(1).max(LIST_MAX),
        description: 'Columns setting, power and, where it was noted, flow.',
        example: 'setting,power,flow\r\n100,245,9000\r\n60,55,\r\n',
      }),
    },
    async ({ params, body: { rows, lines }, store, ...conditions }) => {
      const points = { powerPoints: rows };
      const write = { id: params.pumpId, conditions, points, lines };
      const written = await replacePoints({ store, clock }, { ...write, member: 'powerPoints' });
      return written.ok ? success(writtenPumpAnswer(written.value)) : written;
    },
  );
}
