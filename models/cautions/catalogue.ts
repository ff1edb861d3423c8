/** Gathers every caution that an answer can carry: how grave, in what words, on whose authority. */
import { BORE_CHANGES_ASSUMED } from './bore-changes.ts';
import { CONDITION } from './condition.ts';
import { DESIGNS } from './designs.ts';
import { DRY_OUTLETS } from './dry-outlets.ts';
import { EFFICIENCY } from './efficiency.ts';
import { ENTERED_RANGE } from './entered-range.ts';
import { FLOW_REGION } from './flow-region.ts';
import { GRAVITY } from './gravity.ts';
import { INSTALLATION } from './installation.ts';
import { INTAKE } from './intake.ts';
import { JETS } from './jets.ts';
import { LINE_PRESSURE } from './line-pressure.ts';
import { LOOP_ENTRY } from './loop-entry.ts';
import { MEASURED } from './measured.ts';
import { MONEY } from './money.ts';
import { MOTOR } from './motor.ts';
import { OUTLETS } from './outlets.ts';
import { PARALLEL_PUMPS } from './parallel-pumps.ts';
import { PIPEWORK } from './pipework.ts';
import { PLAN } from './plan.ts';
import { PUMP_ENTRY } from './pump-entry.ts';
import { PUMP_FIT } from './pump-fit.ts';
import { READING_ENTRY } from './reading-entry.ts';
import { STARTING } from './starting.ts';
import { SUCTION } from './suction.ts';
import { TIME } from './time.ts';
import type { CautionRow, Given } from './topic.ts';
import { UPKEEP } from './upkeep.ts';
import { VALVES } from './valves.ts';

export const CAUTIONS = {
  ...INSTALLATION.rows,
  ...INTAKE.rows,
  ...GRAVITY.rows,
  ...STARTING.rows,
  ...SUCTION.rows,
  ...ENTERED_RANGE.rows,
  ...PUMP_FIT.rows,
  ...FLOW_REGION.rows,
  ...MOTOR.rows,
  ...EFFICIENCY.rows,
  ...PUMP_ENTRY.rows,
  ...LOOP_ENTRY.rows,
  ...READING_ENTRY.rows,
  ...PARALLEL_PUMPS.rows,
  ...OUTLETS.rows,
  ...DRY_OUTLETS.rows,
  ...PIPEWORK.rows,
  ...BORE_CHANGES_ASSUMED.rows,
  ...VALVES.rows,
  ...LINE_PRESSURE.rows,
  ...JETS.rows,
  ...TIME.rows,
  ...MEASURED.rows,
  ...UPKEEP.rows,
  ...CONDITION.rows,
  ...MONEY.rows,
  ...DESIGNS.rows,
  ...PLAN.rows,
};

export type CautionCode = keyof typeof CAUTIONS;

export type Caution = Given<CautionCode>;

/** The catalogue as rows, in its order. */
export const CAUTION_TABLE = Object.entries<CautionRow>(CAUTIONS).map(([code, row]) => ({ code, ...row }));
