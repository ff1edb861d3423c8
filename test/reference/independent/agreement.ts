/** Compares a service's duties and selections with the second solution over invented loops. */
import { featuredCase } from '../../random-featured-loop.ts';
import type { Duty } from '../independent-complementarity/duty.ts';
import {
  type Answer,
  answerOf,
  dutyAtSetting,
  type Prepared,
  prepare,
  type Question,
  scan,
} from '../independent-complementarity/selection.ts';
import { greatestSideShare, mismatch } from '../independent-complementarity/verify.ts';
import type { OutletFlow } from './flows.ts';
import { settingsGrid } from './speed.ts';
import { withStatedBores } from './stated-bores.ts';

/** Total flow [m3/s], head [m], power [W], and what leaves by each outlet. */
export interface ServiceDuty {
  readonly flow: number;
  readonly head: number;
  readonly power: number;
  readonly outlets: readonly OutletFlow[];
}

export type ServiceAnswer =
  | { readonly feasible: true; readonly setting: number; readonly duty: ServiceDuty }
  | { readonly feasible: false; readonly reasons: readonly string[] };

/** What is judged. Loop, pump and limits of a question are documents in SI; its pipes have stated bores. */
export interface Service {
  readonly dutyAt: (question: Question, setting: number) => ServiceDuty;
  readonly select: (question: Question) => ServiceAnswer;
}

export interface Agreement {
  /** Seeds of the loops whose selections were compared, and of those whose duties at one setting were. */
  readonly selections: readonly number[];
  readonly duties: readonly number[];
  /** Seeds whose selection was left out: a reducing tee starves its run at some setting, or as in `unsolved`. */
  readonly leftOut: readonly number[];
  /** Seeds left out because the second solution finds no balance of a run near rest at a reducing tee. */
  readonly unsolved: readonly number[];
  /** Seeds at which the service's flows differ and hold too: with outlets at unlike levels a tee may balance twice. */
  readonly otherBalances: readonly number[];
  readonly disagreements: readonly string[];
}

/** Of a duty's flows, head and power; an outlet's flow counts as a hundredth of the greatest one at least. */
const RELATIVE = 1e-6;
const LEAST_PART = 0.01;
/** Several balances may exist where the sides of a reducing tee take more. */
const MOST_SIDE = 0.9;
/** Contradiction among the heads of the second solution, as a part of 1 m and the head; sides about to flow amplify rounding. */
const VERIFIED = 1e-7;
/** Place in the grid of the setting whose duty is compared whether it qualifies or not. */
const PLACE = 0.6;

type Uniqueness = 'single' | 'starved' | 'unsolved';

/** Whether a duty is the only balance of its loop, as far as the second solution knows. */
function uniquenessOf({ circuit, served }: Prepared, { flow, outlets }: Duty): Uniqueness {
  if (greatestSideShare(circuit, outlets) > MOST_SIDE) return 'starved';
  const head = served.head(flow);
  return mismatch(circuit, outlets, head) <= VERIFIED * (1 + Math.abs(head)) ? 'single' : 'unsolved';
}

/** Every figure of a duty that differs, in words. */
function differences(actual: ServiceDuty, expected: Duty): readonly string[] {
  const flows = new Map(actual.outlets.map(({ name, flow }) => [name, flow]));
  const greatest = Math.max(expected.flow, ...expected.outlets.map(({ flow }) => Math.abs(flow)));
  const figures: readonly (readonly [name: string, is: number, due: number, least: number])[] = [
    ['flow', actual.flow, expected.flow, LEAST_PART * greatest],
    ['head', actual.head, expected.head, LEAST_PART],
    ['power', actual.power, expected.power, 0],
    ...expected.outlets.map(
      ({ name, flow }) => [name, flows.get(name) ?? Number.NaN, flow, LEAST_PART * greatest] as const,
    ),
  ];
  return figures.flatMap(([name, is, due, least]) =>
    Math.abs(is - due) <= RELATIVE * Math.max(Math.abs(due), least) ? [] : [`${name} ${is}, expected ${due}`],
  );
}

function unlikeAnswers(actual: ServiceAnswer, expected: Answer): readonly string[] {
  if (actual.feasible && expected.feasible)
    return actual.setting === expected.duty.setting
      ? differences(actual.duty, expected.duty)
      : [`setting ${actual.setting}, expected ${expected.duty.setting}`];
  const said = actual.feasible ? `setting ${actual.setting}` : actual.reasons.join(' ');
  const due = expected.feasible ? `setting ${expected.duty.setting}` : expected.reasons.join(' ');
  return said === due ? [] : [`${said}, expected ${due}`];
}

/** Contradiction among the heads of a service's flows at which they hold, as a part of 1 m and the head. */
const HOLDS = 1e-6;

/** Whether a service's duty is a balance of the loop at all; its place on the pump's curve is not looked at. */
function holds({ circuit }: Prepared, { outlets, head, flow }: ServiceDuty): boolean {
  const sum = outlets.reduce((total, outlet) => total + outlet.flow, 0);
  const closes = Math.abs(sum - flow) <= RELATIVE * flow;
  return closes && mismatch(circuit, outlets, head) <= HOLDS * (1 + Math.abs(head));
}

interface Verdict {
  readonly duty: readonly string[] | undefined;
  readonly selection: readonly string[] | undefined;
  readonly unsolved: boolean;
  readonly otherBalance: boolean;
}

/** What of one question differs; undefined where it is left out. */
function judged(service: Service, question: Question): Verdict {
  const prepared = prepare(question);
  const rows = scan(prepared);
  const grid = settingsGrid(question.pump.settings);
  const setting = grid[Math.floor(PLACE * grid.length)] ?? question.pump.settings.max;
  const expected = dutyAtSetting(prepared, setting);
  const duty = uniquenessOf(prepared, expected) === 'single' ? service.dutyAt(question, setting) : undefined;
  const unlike = duty && differences(duty, expected);
  const found = rows.map((row) => uniquenessOf(prepared, row.duty));
  return {
    duty: unlike,
    selection: found.every((one) => one === 'single')
      ? unlikeAnswers(service.select(question), answerOf(rows))
      : undefined,
    unsolved: found.includes('unsolved'),
    otherBalance: duty !== undefined && unlike !== undefined && unlike.length > 0 && holds(prepared, duty),
  };
}

interface Sample {
  readonly balancing: Question['balancing'];
  readonly firstSeed: number;
  /** How many selections are compared. */
  readonly loops: number;
}

/** Goes from seed to seed until enough selections were compared. */
export function agreementOf(service: Service, { balancing, firstSeed, loops }: Sample): Agreement {
  const selections: number[] = [];
  const duties: number[] = [];
  const leftOut: number[] = [];
  const unsolved: number[] = [];
  const otherBalances: number[] = [];
  const disagreements: string[] = [];
  for (let seed = firstSeed; selections.length < loops; seed += 1) {
    const found = featuredCase({ seed, everyOutlet: balancing === 'trimmed' });
    const verdict = judged(service, { ...found, loop: withStatedBores(found.loop), balancing });
    if (verdict.duty !== undefined) duties.push(seed);
    if (verdict.unsolved) unsolved.push(seed);
    if (verdict.otherBalance) otherBalances.push(seed);
    (verdict.selection === undefined ? leftOut : selections).push(seed);
    const said = [...(verdict.duty ?? []), ...(verdict.selection ?? [])];
    disagreements.push(...said.map((text) => `seed ${seed} ${balancing}: ${text}`));
  }
  return { selections, duties, leftOut, unsolved, otherBalances, disagreements };
}
