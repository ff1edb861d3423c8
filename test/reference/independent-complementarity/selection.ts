/** The smallest setting of a pump that serves a loop, by trying every setting of its grid. */
import type { ExtendedLoop, ExtendedPump } from '../../random/extended-loop.ts';
import { needsOf } from '../independent/requirements.ts';
import { settingsGrid } from '../independent/speed.ts';
import { density, kinematicViscosity } from '../independent/water.ts';
import { broken, DEFAULT_LIMITS, type Judge, type Limits, REASONS, type Reason } from './conditions.ts';
import { type Duty, dutyOf, fitPump, type Served } from './duty.ts';
import { systemOf } from './flows.ts';
import { gravitySuffices } from './gravity.ts';
import { type Circuit, circuitOf } from './legs.ts';
import { trimmedCircuit } from './trims.ts';

export interface Question {
  readonly loop: ExtendedLoop;
  readonly pump: ExtendedPump;
  readonly count: number;
  readonly balancing: 'as-built' | 'trimmed';
  readonly limits?: Partial<Limits> | undefined;
}

export type Answer =
  | { readonly feasible: true; readonly duty: Duty }
  | { readonly feasible: false; readonly reasons: readonly Reason[] };

/** The hydraulics of a loop, its trims applied where they are asked for. */
export function circuitFor(loop: ExtendedLoop, balancing: Question['balancing']): Circuit {
  const circuit = circuitOf({ ...loop, viscosity: kinematicViscosity(loop.water) });
  return balancing === 'trimmed' ? trimmedCircuit(circuit) : circuit;
}

/** A question with everything that does not depend on the setting worked out. */
export interface Prepared {
  readonly question: Question;
  readonly circuit: Circuit;
  readonly served: Served;
  readonly judge: Judge;
}

export function prepare(question: Question): Prepared {
  const { loop, pump, count, balancing } = question;
  const circuit = circuitFor(loop, balancing);
  const served = systemOf(circuit);
  const needs = needsOf(circuit.root);
  const judge = {
    needs,
    count,
    limits: { ...DEFAULT_LIMITS, ...question.limits },
    fitted: fitPump(pump),
    screen: loop.intake?.screen,
    gravitySuffices: gravitySuffices(served, needs),
  };
  return { question, circuit, served, judge };
}

export function dutyAtSetting({ question, served, judge }: Prepared, setting: number): Duty {
  const running = { fitted: judge.fitted, count: question.count, setting };
  return dutyOf(served, running, density(question.loop.water));
}

/** A duty and the conditions that it breaks. */
interface Judged {
  readonly duty: Duty;
  readonly faults: readonly Reason[];
}

/** The duties at every setting up to the first that qualifies. */
export function scan(prepared: Prepared): readonly Judged[] {
  const rows: Judged[] = [];
  for (const setting of settingsGrid(prepared.question.pump.settings)) {
    const duty = dutyAtSetting(prepared, setting);
    const faults = broken(prepared.judge, duty);
    rows.push({ duty, faults });
    if (faults.length === 0) break;
  }
  return rows;
}

/** The choice, or every reason whose condition no setting meets. */
export function answerOf(rows: readonly Judged[]): Answer {
  const qualifying = rows.find(({ faults }) => faults.length === 0);
  if (qualifying !== undefined) return { feasible: true, duty: qualifying.duty };
  const everywhere = REASONS.filter((reason) => rows.every(({ faults }) => faults.includes(reason)));
  return { feasible: false, reasons: everywhere.length > 0 ? everywhere : ['no-setting'] };
}

export const select = (prepared: Prepared): Answer => answerOf(scan(prepared));
