/** Every caution that an answer can carry: how grave, in what words, on whose authority. */
import type { CautionRow, Severity } from './catalogue/caution-row.ts';
import { CONDITION_CAUTIONS } from './catalogue/condition.ts';
import { INSTALLATION_CAUTIONS } from './catalogue/installation.ts';
import { INTAKE_CAUTIONS } from './catalogue/intake.ts';
import { MEASURED_CAUTIONS } from './catalogue/measured.ts';
import { MONEY_CAUTIONS } from './catalogue/money.ts';
import { PIPEWORK_CAUTIONS } from './catalogue/pipework.ts';
import { PLAN_CAUTIONS } from './catalogue/plan.ts';
import { PUMP_CAUTIONS } from './catalogue/pump.ts';
import { TIME_CAUTIONS } from './catalogue/time.ts';
import { UPKEEP_CAUTIONS } from './catalogue/upkeep.ts';

export const CAUTIONS = {
  ...INSTALLATION_CAUTIONS,
  ...INTAKE_CAUTIONS,
  ...PUMP_CAUTIONS,
  ...PIPEWORK_CAUTIONS,
  ...TIME_CAUTIONS,
  ...MEASURED_CAUTIONS,
  ...UPKEEP_CAUTIONS,
  ...CONDITION_CAUTIONS,
  ...MONEY_CAUTIONS,
  ...PLAN_CAUTIONS,
} as const satisfies Record<string, CautionRow>;

export type CautionCode = keyof typeof CAUTIONS;

/** The catalogue as rows, in its order. */
export const CAUTION_TABLE = Object.entries<CautionRow>(CAUTIONS).map(([code, row]) => ({ code, ...row }));

export interface Caution {
  readonly code: CautionCode;
  readonly severity: Severity;
  /** The sentence of the catalogue, and what it is about here. */
  readonly detail: string;
  readonly source: string;
}

/** A caution of the catalogue, about the named things where there are any. */
export function caution(code: CautionCode, subjects: readonly string[] = []): Caution {
  const { severity, sentence, source } = CAUTIONS[code];
  const about = subjects.length === 0 ? '' : ` (${subjects.join(', ')})`;
  return { code, severity, detail: `${sentence}${about}`, source };
}
