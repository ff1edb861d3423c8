/** Gathers every caution that an answer can carry: how grave, in what words, on whose authority. */
import { CONDITION } from './condition.ts';
import { ENTERED_RANGE } from './entered-range.ts';
import { FLOW_REGION } from './flow-region.ts';
import { INSTALLATION } from './installation.ts';
import { INTAKE } from './intake.ts';
import { JETS } from './jets.ts';
import { MEASURED } from './measured.ts';
import { MONEY } from './money.ts';
import { OUTLETS } from './outlets.ts';
import { PARALLEL_PUMPS } from './parallel-pumps.ts';
import { PIPEWORK } from './pipework.ts';
import { PLAN } from './plan.ts';
import { PUMP_FIT } from './pump-fit.ts';
import { STARTING } from './starting.ts';
import { SUCTION } from './suction.ts';
import { TIME } from './time.ts';
import type { CautionRow, Given } from './topic.ts';
import { UPKEEP } from './upkeep.ts';

export const CAUTIONS = {
  ...INSTALLATION.rows,
  ...INTAKE.rows,
  ...STARTING.rows,
  ...SUCTION.rows,
  ...ENTERED_RANGE.rows,
  ...PUMP_FIT.rows,
  ...FLOW_REGION.rows,
  ...PARALLEL_PUMPS.rows,
  ...OUTLETS.rows,
  ...PIPEWORK.rows,
  ...JETS.rows,
  ...TIME.rows,
  ...MEASURED.rows,
  ...UPKEEP.rows,
  ...CONDITION.rows,
  ...MONEY.rows,
  ...PLAN.rows,
};

export type CautionCode = keyof typeof CAUTIONS;

export type Caution = Given<CautionCode>;

/** The catalogue as rows, in its order. */
export const CAUTION_TABLE = Object.entries<CautionRow>(CAUTIONS).map(([code, row]) => ({ code, ...row }));
