/** Names the rooms whose texts are written with their answers. */

/** Their files, and the schemas and operations that they document. */
export const UNWRITTEN_ROOMS: readonly { readonly where: RegExp; readonly reason: string }[] = [
  {
    where: /^(?:api\/features|models)\/(?:condition|calibration|comparison|readings)\//,
    reason: 'the answers of condition, calibration and comparison are written again, with their texts',
  },
  {
    where:
      /schemas\/(?:Condition|Evidence|Shortfall|Waiting|ResidualSeries|MeterSlip|CheapestCleaning|Calibration(?!Copy)|Calibrations|ComparedOption|Comparison|ComparisonBasis|ComparisonSensitivity|ComparisonAssemblyInput)\//,
    reason: 'schemas of those answers',
  },
  {
    where: /paths\/\/v1\/(?:comparisons|loops\/\{loopId\}\/(?:condition|calibration))/,
    reason: 'operations of those answers',
  },
  {
    where: /examples\/answers\/(?:condition|calibration|comparison)/,
    reason: 'answers of those operations',
  },
];
