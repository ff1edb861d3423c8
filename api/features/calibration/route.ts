/** Calibrates a loop, lists its calibrations, undoes the last one. */
import { failed, success } from '../../../curves/result.ts';
import type { Api } from '../../http/api.ts';
import { defineRoute } from '../../http/define-route.ts';
import { example } from '../../http/examples.ts';
import { jsonAnswer } from '../../http/json-answer.ts';
import { jsonBody } from '../../http/json-body.ts';
import { noContent } from '../../http/no-content.ts';
import { problem } from '../../http/problem.ts';
import { noBody } from '../../http/request-body.ts';
import { noQuery } from '../../http/route.ts';
import { findLoop } from '../../records/loop/kind.ts';
import { writeProblem } from '../../records/write-problems.ts';
import { calibrationSchema } from './answer-schema.ts';
import { calibrationsAnswer } from './applied-answer.ts';
import { calibrationsSchema } from './applied-answer-schema.ts';
import { answerCalibration } from './calibration.ts';
import { CALIBRATIONS } from './kind.ts';
import { calibrationRequest } from './request-schema.ts';

const common = { path: '/v1/loops/{loopId}/calibration', tag: 'readings', query: noQuery } as const;

function calibratingRoute(api: Api): void {
  defineRoute(
    api,
    {
      ...common,
      method: 'post',
      operationId: 'calibrateLoop',
      summary: 'What do readings say about friction, head and power?',
      description:
        'Fits multipliers of friction, head and power to the readings, with their uncertainty, the factors that the readings do not determine, and the reading to take next. With `apply`, and the ETag of the loop in If-Match, the loop and its installed pump are computed with them from then on; the loop moves on by a version, and its document stays as entered.',
      conditional: 'optional',
      body: jsonBody({ schema: calibrationRequest, example: example('calibration') }),
      answer: jsonAnswer({
        schema: calibrationSchema,
        description: 'The factors, their uncertainty, and what would lessen it.',
        example: example('answers/calibration'),
      }),
      problems: ['no-installed-pump', 'not-calibrated', 'version-required', 'unsolved', 'unavailable'],
    },
    async ({ params, body, expectedVersion, isConditional, store }) => {
      const { from, to, apply } = body;
      if (apply && !isConditional) {
        const errors = [{ header: 'If-Match', detail: 'is required where `apply` is true' }];
        return failed(problem('version-required', 'Send the ETag of the loop in If-Match.', { errors }));
      }
      const found = await findLoop(store, params.loopId, null);
      if (!found.ok) return found;
      const loop = found.value;
      if (expectedVersion !== 'any' && expectedVersion !== loop.version) {
        return failed(writeProblem({ outcome: 'stale', version: loop.version }, 'loop'));
      }
      const done = await answerCalibration({ ...api.deps, store }, { loop, from, to, apply });
      if (!done.ok) return done;
      const validator = { version: done.value.loop.version };
      return success({ body: done.value.body, ...(apply ? { validator } : {}) });
    },
  );
}

function readingRoute(api: Api): void {
  defineRoute(
    api,
    {
      ...common,
      method: 'get',
      operationId: 'getCalibrations',
      summary: 'The calibration in use, and those before it',
      description: 'Every calibration that was applied to the loop, the latest first, undone ones included.',
      body: noBody,
      answer: jsonAnswer({
        schema: calibrationsSchema,
        description: 'The calibrations.',
        example: example('answers/calibrations'),
      }),
    },
    async ({ params, store }) => {
      const loop = await findLoop(store, params.loopId, null);
      if (!loop.ok) return loop;
      const records = await store.of(CALIBRATIONS).list(params.loopId);
      const { version } = loop.value;
      return success({ body: calibrationsAnswer(loop.value, records), validator: { version } });
    },
  );
}

function undoingRoute(api: Api): void {
  const { clock } = api.deps;
  defineRoute(
    api,
    {
      ...common,
      method: 'delete',
      operationId: 'undoCalibration',
      summary: 'Undo the calibration in use',
      description:
        'Goes back to the calibration applied before, else to the loop as entered. If-Match takes the ETag of the loop, which moves on by a version.',
      conditional: true,
      body: noBody,
      answer: noContent('The calibration is no longer in use.'),
    },
    async ({ params, expectedVersion, store }) => {
      const now = clock().getTime();
      const undone = await store.of(CALIBRATIONS).undo({ id: params.loopId, now, expectedVersion });
      if (undone.outcome === 'undone') return success({ body: null });
      return undone.outcome === 'no-calibration'
        ? failed(problem('not-found', 'The loop has no calibration in use.'))
        : failed(writeProblem(undone, 'loop'));
    },
  );
}

export function calibrationRoutes(api: Api): void {
  calibratingRoute(api);
  readingRoute(api);
  undoingRoute(api);
}
