/** Shortens the names that objects of the OpenAPI document get by their places. */

/** The beginning of a name by place, and what the object there is called. */
const CALLED: readonly (readonly [place: string, name: string])[] = [
  ['AppliedCalibrationCalibrationParameter', 'AppliedParameter'],
  ['AppliedCalibrationCalibrationFactors', 'AppliedFactors'],
  ['AppliedCalibrationCalibration', 'CalibrationResult'],
  ['BestOnePumpStoppedOutlet', 'OutletOnePumpStopped'],
  ['BestOnePumpStopped', 'OnePumpStopped'],
  ['BestCoveredIntake', 'CoveredIntake'],
  ['BestHeat', 'PumpHeat'],
  ['BestNpsh', 'Npsh'],
  ['BestOutletReach', 'OutletReach'],
  ['BestOutlet', 'DutyOutlet'],
  ['BestPerPump', 'DutyPerPump'],
  ['BestScreen', 'ScreenVelocities'],
  ['BestTrim', 'Trim'],
  ['BestUncertaintyLaws', 'PowerLaws'],
  ['BestUncertaintyFlow', 'FlowInterval'],
  ['BestUncertaintyPower', 'PowerInterval'],
  ['BestUncertaintyAnnualEnergy', 'AnnualEnergyInterval'],
  ['BestUncertainty', 'DutyUncertainty'],
  ['CalibrationSmallestMarginUncertaintyInterval', 'MarginInterval'],
  ['CalibrationSmallestMarginUncertainty', 'MarginUncertainty'],
  ['CalibrationMeasuredSpeedMap', 'MeasuredSpeedMap'],
  ['CalibrationMisfitMeasured', 'MeasuredValue'],
  ['CalibrationMisfit', 'Misfit'],
  ['CalibrationsItem', 'CalibrationInHistory'],
  ['CautionTableItem', 'CautionDefinition'],
  ['CurvesTable', 'CurvePoint'],
  ['DutyPointDrainBack', 'DrainBack'],
  ['DutyPointIntersection', 'Intersection'],
  ['FittingTableItem', 'FittingDefinition'],
  ['LossesRowSavingsLargerPipe', 'SavingByLargerPipe'],
  ['LossesRowSavingsHalvedContinuous', 'SavingOffGrid'],
  ['LossesRowSavingsHalvedGrid', 'SavingOnGrid'],
  ['LossesRowSavingsHalved', 'LossSaving'],
  ['LossesRowSavings', 'LossSavings'],
  ['LossesRow', 'Loss'],
  ['PipeTableItem', 'PipeDefinition'],
  ['RecommendationAssumptions', 'Assumptions'],
  ['RecommendationAssuranceEffect', 'AssuranceEffect'],
  ['RecommendationRequestAssurance1B', 'AssuranceByGrade'],
  ['RecommendationRequestAssurance', 'Assurance'],
  ['RecommendationRequiredDuty', 'RequiredDuty'],
  ['RecommendationTrimEffect', 'TrimEffect'],
  ['RecommendationWithoutScreenLimit', 'WithoutScreenLimit'],
  ['RejectedCandidateRemedy', 'Remedy'],
  ['RejectedCandidateShortfall', 'Shortfall'],
  ['SummarySavingLoop', 'RecordReference'],
];

export function objectName(place: string): string {
  const called = CALLED.find(([start]) => place === start || /^[A-Z0-9]/.test(after(place, start)));
  return called === undefined ? place : `${called[1]}${after(place, called[0])}`;
}

const after = (place: string, start: string): string =>
  place.startsWith(start) ? place.slice(start.length) : '';
