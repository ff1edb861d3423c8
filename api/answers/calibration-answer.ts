/** What readings say about friction, head and power, as answers carry it. */
import type { z } from '@hono/zod-openapi';
import type { Calibration } from '../../models/calibration/calibrate.ts';
import type { NotIdentifiable } from '../../models/calibration/identify.ts';
import type { NextReading, SettledParameter } from '../../models/calibration/next-readings.ts';
import type { WithoutUnits } from '../http/answer-form.ts';
import type { calibrationSchema } from '../schemas/answers/calibration-schema.ts';
import { helpfulReadings, reasonWords } from './calibration-words.ts';

export type CalibrationAnswer = WithoutUnits<z.output<ReturnType<typeof calibrationSchema>>>;

type Figures = Pick<
  CalibrationAnswer,
  'parameters' | 'notIdentifiable' | 'limiting' | 'nextReadings' | 'speedMap'
>;

export const calibrationFigures = (calibration: Calibration): Figures => {
  const { limiting, speeds } = calibration;
  return {
    parameters: calibration.parameters.map(parameterAnswer),
    notIdentifiable: calibration.notIdentifiable.map(notIdentifiableAnswer),
    limiting:
      limiting === null
        ? null
        : {
            ...{ outlet: limiting.outlet, setting: limiting.setting },
            ...{ margin: limiting.margin, doubt: limiting.doubt },
          },
    nextReadings: calibration.nextReadings.map(nextReadingAnswer),
    speedMap: speeds === null ? null : { points: [...speeds.points], differs: speeds.differs },
  };
};

const parameterAnswer = ({ name, value, standardError, interval }: SettledParameter) => ({
  ...{ name, value, standardError, interval },
});

const notIdentifiableAnswer = (one: NotIdentifiable) => ({
  name: one.name,
  reason: one.reason,
  detail: reasonWords(one),
  conditionNumber:
    'conditionNumber' in one && Number.isFinite(one.conditionNumber) ? one.conditionNumber : null,
  standardError: 'standardError' in one && Number.isFinite(one.standardError) ? one.standardError : null,
  readings: [...helpfulReadings(one)],
});

function nextReadingAnswer(next: NextReading): CalibrationAnswer['nextReadings'][number] {
  const { measure, setting, outlet, shut, zeroFlow, predicted, margin, parameters } = next;
  const isFlow = measure === 'flow' || measure === 'outletFlow';
  return {
    ...{ measure, setting, outlet, shut: [...shut], zeroFlow, margin },
    predicted: {
      flow: isFlow ? predicted : null,
      head: measure === 'head' ? predicted : null,
      power: measure === 'power' ? predicted : null,
    },
    parameters: parameters.map(parameterAnswer),
  };
}
