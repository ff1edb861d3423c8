/** Answers what each gauge showed, and which one to read next. */
import type { ConditionReport } from '../../../models/condition/condition-report.ts';
import type { GaugeReport } from '../../../models/condition/gauge-report.ts';
import type { ConditionAnswer } from './answer-schema.ts';

export function evidenceAnswer({
  gauge,
  trend,
  change,
  ...one
}: GaugeReport): ConditionAnswer['evidence'][number] {
  const figures = {
    outlet: gauge.outlet ?? undefined,
    predicted: one.predicted,
    baselineValue: one.baselineValue ?? undefined,
    measured: one.measured,
    change: change?.value,
    standardError: change?.standardError,
    serialCorrelation: one.serialCorrelation,
    trendPerYear: trend?.perYear,
    interval: trend?.interval,
    readingCount: one.readingCount,
  };
  const { measure } = gauge;
  // Each measure has a quantity of its own.
  switch (measure) {
    case 'flow':
    case 'outletFlow':
      return { measure, ...figures };
    case 'power':
      return { measure, ...figures };
    case 'head':
      return { measure, ...figures };
    case 'suctionPressure':
    case 'dischargePressure':
      return { measure, ...figures };
  }
}

export function nextReadingAnswer({ nextReading, setting }: ConditionReport): ConditionAnswer['nextReading'] {
  if (nextReading === null) return undefined;
  const { gauge, expected } = nextReading;
  const figures = {
    outlet: gauge.outlet ?? undefined,
    setting,
    valveClosed: gauge.valveClosed || undefined,
    expected: [...expected],
  };
  const { measure } = gauge;
  switch (measure) {
    case 'flow':
    case 'outletFlow':
      return { measure, ...figures };
    case 'power':
      return { measure, ...figures };
    case 'head':
      return { measure, ...figures };
    case 'suctionPressure':
    case 'dischargePressure':
      return { measure, ...figures };
  }
}
