/** Answers a calibration from its figures. */
import type { z } from '@hono/zod-openapi';
import type { Calibration } from '../../../models/calibration/calibrate.ts';
import type { NotIdentifiable } from '../../../models/calibration/identify.ts';
import type { Gauge, Measure } from '../../../models/calibration/measured-rows.ts';
import type { Misfit } from '../../../models/calibration/misfit.ts';
import type { NextReading, SettledParameter } from '../../../models/calibration/next-readings.ts';
import type { WithoutUnits } from '../../http/answer-form.ts';
import type { calibrationSchema } from './answer-schema.ts';
import { helpfulReadings, reasonWords } from './sentence.ts';

export type CalibrationAnswer = WithoutUnits<z.output<ReturnType<typeof calibrationSchema>>>;

type Figures = Pick<
  CalibrationAnswer,
  'parameters' | 'notIdentifiable' | 'misfits' | 'limiting' | 'nextReadings' | 'speedMap'
>;

export const calibrationFigures = (calibration: Calibration): Figures => {
  const { limiting, speeds } = calibration;
  return {
    parameters: calibration.parameters.map(parameterAnswer),
    notIdentifiable: calibration.notIdentifiable.map(notIdentifiableAnswer),
    misfits: calibration.misfits.map(misfitAnswer),
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

const gaugeAnswer = ({ measure, setting, outlet, shut, zeroFlow }: Gauge) => ({
  ...{ measure, setting, outlet, shut: [...shut], zeroFlow },
});

/** Under the quantity that a measure is of. */
const shown = (measure: Measure, value: number) => ({
  flow: measure === 'flow' || measure === 'outletFlow' ? value : null,
  head: measure === 'head' ? value : null,
  power: measure === 'power' ? value : null,
});

const misfitAnswer = (misfit: Misfit): CalibrationAnswer['misfits'][number] => ({
  ...gaugeAnswer(misfit),
  measured: shown(misfit.measure, misfit.measured),
  predicted: shown(misfit.measure, misfit.predicted),
  off: misfit.off,
});

const nextReadingAnswer = (next: NextReading): CalibrationAnswer['nextReadings'][number] => ({
  ...gaugeAnswer(next),
  predicted: shown(next.measure, next.predicted),
  margin: next.margin,
  parameters: next.parameters.map(parameterAnswer),
});
