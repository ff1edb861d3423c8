/** The smallest setting of a pump that serves a loop, by trying every setting of its grid. */
import type { IntakeScreen, PipeworkLoop } from '../../../models/loop/loop.ts';
import type { Pump } from '../../../models/pump/pump.ts';
import { type Duty, dutyOf, type FittedPump, fitPump } from './duty.ts';
import { type System, systemOf } from './flows.ts';
import { headAtFullSpeed, reducedPoints } from './head-curve.ts';
import { type Circuit, circuitOf } from './legs.ts';
import { type Need, needsOf } from './requirements.ts';
import { settingsGrid } from './speed.ts';
import { trimmedCircuit } from './trims.ts';
import { density, kinematicViscosity } from './water.ts';

export interface Question {
  readonly loop: PipeworkLoop;
  readonly pump: Pump;
  readonly count: number;
  readonly balancing: 'as-built' | 'trimmed';
  readonly price: number;
  readonly hoursPerDay: number;
  readonly limits?: Partial<Limits> | undefined;
}

export interface Limits {
  /** m/s; null for none. */
  readonly throughSlotVelocity: number | null;
  readonly cloggedFraction: number;
  readonly maximumEfficiency: number;
  readonly allowExtrapolation: boolean;
}

const DEFAULT_LIMITS: Limits = {
  throughSlotVelocity: 0.1524,
  cloggedFraction: 0.5,
  maximumEfficiency: 0.85,
  allowExtrapolation: false,
};

const REASONS = [
  'efficiency-impossible',
  'dead-head',
  'not-enough-head',
  'reverse-flow',
  'outside-data',
  'outlet-above-maximum',
  'screen-velocity',
  'pump-below-minimum',
  'pump-above-maximum',
  'no-setting',
] as const;
export type Reason = (typeof REASONS)[number];

export interface Choice {
  readonly duty: Duty;
  readonly annualEnergy: number;
  readonly annualCost: number;
  readonly turnover: number | undefined;
  readonly limitingOutlet: string | undefined;
}

export type Answer =
  | { readonly feasible: true; readonly choice: Choice }
  | { readonly feasible: false; readonly reasons: readonly Reason[] };

const ALLOWANCE = 1e-9;

/** Open area [m2] of an unclogged screen, the end of a cylinder not counted. */
function openArea(screen: IntakeScreen): number {
  if (screen.shape === 'box') throw new Error('boxes are not part of this solution');
  const face =
    screen.shape === 'flat' ? screen.length * screen.width : Math.PI * screen.diameter * screen.length;
  return screen.openFraction * screen.count * face;
}

interface Setup {
  readonly question: Question;
  readonly limits: Limits;
  readonly needs: readonly Need[];
  readonly fitted: FittedPump;
}

/** The conditions a duty breaks. */
function broken({ question, limits, needs, fitted }: Setup, duty: Duty): readonly Reason[] {
  const { pump, count, loop } = question;
  const reduced = duty.flow / (count * duty.ratio);
  const flows = new Map(duty.outlets.map((outlet) => [outlet.name, outlet.flow]));
  const at = (need: Need): number => flows.get(need.name) ?? Number.NaN;
  const screen = loop.intake?.screen;
  const limit = limits.throughSlotVelocity;
  const largest = Math.max(...reducedPoints(fitted.pump).map((point) => point.flow));
  const greatest = Math.max(...duty.outlets.map(({ flow }) => Math.abs(flow)));
  const faults: Record<Exclude<Reason, 'no-setting'>, boolean> = {
    'efficiency-impossible': duty.efficiency > limits.maximumEfficiency,
    'dead-head': duty.deadHead,
    'not-enough-head': needs.some((need) => at(need) < (need.required ?? -Infinity) * (1 - ALLOWANCE)),
    'reverse-flow': duty.outlets.some(({ flow }) => flow < -ALLOWANCE * greatest),
    'outside-data': !limits.allowExtrapolation && reduced > 1.1 * largest,
    'outlet-above-maximum': needs.some((need) => at(need) > (need.maximum ?? Infinity) * (1 + ALLOWANCE)),
    'screen-velocity':
      screen !== undefined &&
      limit !== null &&
      duty.flow / (openArea(screen) * (1 - limits.cloggedFraction)) > limit,
    'pump-below-minimum': reduced < (pump.flowLimits?.min ?? 0),
    'pump-above-maximum': reduced > (pump.flowLimits?.max ?? Infinity),
  };
  return REASONS.filter((reason) => reason !== 'no-setting' && faults[reason]);
}

function priced({ question, needs }: Setup, duty: Duty): Choice {
  const { hoursPerDay: hours, pump, count, price, loop } = question;
  const standby = count * pump.standbyPower;
  const annualEnergy = (365 * (hours * duty.power + (24 - hours) * standby)) / 1000;
  const volume = loop.tank?.volume;
  const margins = needs.flatMap((need) => {
    const flow = duty.outlets.find((outlet) => outlet.name === need.name)?.flow ?? Number.NaN;
    return need.required === undefined || need.required === 0
      ? []
      : [{ name: need.name, margin: flow / need.required - 1 }];
  });
  const limiting = margins.sort((a, b) => a.margin - b.margin)[0];
  const turnover = volume === undefined ? undefined : (3600 * duty.flow) / volume;
  return { duty, annualEnergy, annualCost: price * annualEnergy, turnover, limitingOutlet: limiting?.name };
}

/** The hydraulics of a loop, its trims applied where they are asked for. */
export function circuitFor(loop: PipeworkLoop, balancing: Question['balancing']): Circuit {
  const circuit = circuitOf({ ...loop, viscosity: kinematicViscosity(loop.water) });
  return balancing === 'trimmed' ? trimmedCircuit(circuit) : circuit;
}

/** Duties over the whole grid, each computed afresh. */
export function scan(question: Question, system: System, fitted: FittedPump): readonly Duty[] {
  const water = density(question.loop.water);
  return settingsGrid(question.pump.settings).map((setting) =>
    dutyOf(system, { fitted, count: question.count, setting }, water),
  );
}

/** The choice, or every reason whose condition no setting meets. */
export function select(question: Question): Answer {
  const fitted = fitPump(question.pump);
  if (fitted === undefined || headAtFullSpeed(fitted.curve, 0) <= 0) throw new Error('no head curve');
  const circuit = circuitFor(question.loop, question.balancing);
  const limits = { ...DEFAULT_LIMITS, ...question.limits };
  const setup: Setup = { question, limits, needs: needsOf(circuit.root), fitted };
  const rows = scan(question, systemOf(circuit), fitted).map((duty) => ({
    duty,
    faults: broken(setup, duty),
  }));
  const first = rows.find((row) => row.faults.length === 0);
  if (first !== undefined) return { feasible: true, choice: priced(setup, first.duty) };
  const everywhere = REASONS.filter((reason) => rows.every((row) => row.faults.includes(reason)));
  return { feasible: false, reasons: everywhere.length > 0 ? everywhere : ['no-setting'] };
}
