/** Answers the calibrations of a loop that were applied. */
import type { z } from '@hono/zod-openapi';
import { dataBasisOf } from '../../records/loop/data-basis.ts';
import type { LoopRecord } from '../../records/loop/kind.ts';
import type { calibrationsSchema } from './applied-answer-schema.ts';
import type { CalibrationRecord } from './contract.ts';

type Answer = z.output<ReturnType<typeof calibrationsSchema>>;

export function calibrationsAnswer(loop: LoopRecord, records: readonly CalibrationRecord[]): Answer {
  const latest = records.find(({ undoneAt }) => undoneAt === null);
  return {
    dataBasis: dataBasisOf(loop),
    items: records.map(({ place, appliedAt, undoneAt, calibration }) => ({
      ...{ place, appliedAt, undoneAt },
      inUse: loop.calibration !== null && place === latest?.place,
      factors: calibration.factors,
      parameters: calibration.parameters.map(({ name, value, standardError, interval }) => ({
        ...{ name, value, standardError, interval },
      })),
      ...{ from: calibration.from, to: calibration.to, readings: calibration.readings },
    })),
  };
}
