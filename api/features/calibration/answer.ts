/** Answers a calibration from its figures. */
import type { z } from '@hono/zod-openapi';
import type { LoopCalibration } from '../../../models/calibration/calibrate-loop.ts';
import type { NotIdentifiable } from '../../../models/calibration/determined.ts';
import type { HelpfulReading, SettledParameter } from '../../../models/calibration/helpful-readings.ts';
import type { Misfit } from '../../../models/calibration/misfits.ts';
import type { Gauge } from '../../../models/calibration/row-collector.ts';
import type { Uncertainty } from '../../../models/calibration/smallest-margin.ts';
import type { WithoutUnits } from '../../http/answer-form.ts';
import type { calibrationSchema } from './answer-schema.ts';
import { helpfulReadings, reasonWords } from './reason-words.ts';
import type { Included } from './request-schema.ts';

export type CalibrationAnswer = WithoutUnits<z.output<ReturnType<typeof calibrationSchema>>>;

type Figures = Pick<
  CalibrationAnswer,
  | 'parameters'
  | 'notIdentifiable'
  | 'misfits'
  | 'refusal'
  | 'smallestMargin'
  | 'nextReading'
  | 'nextReadings'
  | 'measuredSpeedMap'
  | 'fit'
>;

export function calibrationFigures(calibration: LoopCalibration, include: readonly Included[]): Figures {
  const { speeds, smallestMargin, refusal, covariance, nextReadings } = calibration;
  const [next] = nextReadings;
  const showsSpeeds = speeds !== null && (speeds.differs || include.includes('speeds'));
  return {
    parameters: calibration.parameters.map(parameterAnswer),
    notIdentifiable: calibration.notIdentifiable.map(notIdentifiableAnswer),
    misfits: calibration.misfits.map(misfitAnswer),
    refusal: refusal ?? undefined,
    smallestMargin:
      smallestMargin === null
        ? undefined
        : {
            outlet: smallestMargin.outlet ?? undefined,
            setting: smallestMargin.setting,
            margin: smallestMargin.margin ?? undefined,
            uncertainty: uncertaintyAnswer(smallestMargin.uncertainty),
          },
    nextReading: next === undefined ? undefined : nextReadingAnswer(next),
    nextReadings: include.includes('nextReadings') ? nextReadings.map(nextReadingAnswer) : undefined,
    measuredSpeedMap: showsSpeeds ? { points: [...speeds.points], differs: speeds.differs } : undefined,
    fit: include.includes('fit') ? { covariance: covariance.map((row) => [...row]) } : undefined,
  };
}

const uncertaintyAnswer = (uncertainty: Uncertainty | null) =>
  uncertainty === null
    ? undefined
    : { standardError: uncertainty.standardError, interval: uncertainty.interval ?? undefined };

const parameterAnswer = ({ name, value, standardError, interval }: SettledParameter) => ({
  ...{ name, value, standardError, interval },
});

const finite = (value: number): number | undefined => (Number.isFinite(value) ? value : undefined);

const notIdentifiableAnswer = (one: NotIdentifiable) => ({
  name: one.name,
  reason: one.reason,
  detail: reasonWords(one),
  conditionNumber: 'conditionNumber' in one ? finite(one.conditionNumber) : undefined,
  standardError: 'standardError' in one ? finite(one.standardError) : undefined,
  helpfulReadings: [...helpfulReadings(one)],
});

const gaugeAnswer = ({ setting, outlet, shut, zeroFlow }: Gauge) => ({
  setting,
  outlet: outlet ?? undefined,
  closedOutlets: shut.length === 0 ? undefined : [...shut],
  valveClosed: zeroFlow || undefined,
});

function misfitAnswer(misfit: Misfit): CalibrationAnswer['misfits'][number] {
  const { measure, measured, predicted, residual, slip } = misfit;
  const time = new Date(misfit.time).toISOString();
  const figures = { ...gaugeAnswer(misfit), time, measured, predicted, residual, slip: slip ?? undefined };
  // Each measure has a quantity of its own.
  switch (measure) {
    case 'flow':
    case 'outletFlow':
      return { measure, ...figures };
    case 'head':
      return { measure, ...figures };
    case 'power':
      return { measure, ...figures };
  }
}

function nextReadingAnswer(next: HelpfulReading): NonNullable<CalibrationAnswer['nextReading']> {
  const { measure, predicted } = next;
  const figures = {
    ...gaugeAnswer(next),
    predicted,
    remainingUncertainty: uncertaintyAnswer(next.margin),
    expectedParameters: next.parameters.map(parameterAnswer),
  };
  switch (measure) {
    case 'flow':
    case 'outletFlow':
      return { measure, ...figures };
    case 'head':
      return { measure, ...figures };
    case 'power':
      return { measure, ...figures };
  }
}
