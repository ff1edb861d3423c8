/** Names the figures that the answer of a schedule adds to what was entered. */

const INFEASIBLE_FIGURES = ['reason', 'step', 'limitedBy'] as const;

export const PHASE_FIGURES = [
  'setting',
  'feasible',
  ...INFEASIBLE_FIGURES,
  'power',
  'flow',
  'hoursPerYear',
  'annualEnergy',
  'annualCost',
  'outlets',
  'otherSetting',
  'gap',
] as const;

export const EMERGENCY_FIGURES = [
  'setting',
  'feasible',
  ...INFEASIBLE_FIGURES,
  'power',
  'flow',
  'outlets',
  'batteryHours',
] as const;

export const SCHEDULE_FIGURES = [
  'year',
  'hoursPerYear',
  'currency',
  'annualEnergy',
  'annualCost',
  'against',
  'fallback',
  'summary',
  'cautions',
  'dataBasis',
  'basis',
] as const;
