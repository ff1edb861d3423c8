/** The head loss of a run of elements, the changes of bore between its pipes included. */
import type { ExtendedElement } from '../../random/extended-loop.ts';
import { elementLoss, type Loss, pipeBore, quadratic, quadraticFactor } from '../independent/losses.ts';
import { colebrookByNewton } from './colebrook.ts';

/** fT multiples of check and foot valves, Crane TP-410 (2009). */
const ONE_WAY_LENGTHS: ReadonlyMap<string, number> = new Map([
  ['check-swing', 100],
  ['check-swing-clear', 50],
  ['check-lift', 600],
  ['check-lift-angle', 55],
  ['check-tilting-disc', 40],
  ['foot-poppet', 420],
  ['foot-hinged', 75],
]);

export interface RunPlace {
  /** Bore of the nearest pipe upstream of the run. */
  readonly above: number | undefined;
  /** Bore of the first pipe met downstream of it. */
  readonly below: () => number | undefined;
  readonly viscosity: number;
  readonly multiplier: number;
  readonly boreChanges: 'abrupt' | 'ignored';
}

const nameOf = (element: ExtendedElement): string | undefined => {
  if ('fitting' in element) return element.fitting;
  return 'valve' in element && typeof element.valve === 'string' ? element.valve : undefined;
};

export const isOneWay = (element: ExtendedElement): boolean => /^(check|foot)-/.test(nameOf(element) ?? '');

const isEnteredStep = (element: ExtendedElement): boolean =>
  element.boreChange === true || /^(reducer|enlargement)/.test(nameOf(element) ?? '');

export const boresOf = (run: readonly ExtendedElement[]): number[] =>
  run.flatMap((element) => pipeBore(element) ?? []);

export function needed(bore: number | undefined): number {
  if (bore === undefined) throw new Error('an element has no bore');
  return bore;
}

/** K on the narrower bore: Crane's contraction, Borda's and Carnot's enlargement. */
export function stepCoefficient(before: number, after: number): number {
  const square = (Math.min(before, after) / Math.max(before, after)) ** 2;
  return after < before ? 0.5 * (1 - square) : (1 - square) ** 2;
}

const stepLoss = (before: number, after: number): Loss =>
  quadratic(quadraticFactor(stepCoefficient(before, after), Math.min(before, after)));

export interface Step {
  /** Index of the later pipe in its run. */
  readonly index: number;
  readonly coefficient: number;
  readonly loss: Loss;
}

/** Steps between consecutive pipes of a run that nobody entered a fitting for. */
export function assumedSteps(run: readonly ExtendedElement[]): readonly Step[] {
  let bore: number | undefined;
  let entered = false;
  return run.flatMap((element, index) => {
    entered ||= isEnteredStep(element);
    const next = pipeBore(element);
    if (next === undefined) return [];
    const [before, charged] = [bore ?? next, !entered && bore !== undefined];
    bore = next;
    entered = false;
    if (!charged || Math.abs(before - next) <= 1e-9) return [];
    return [{ index, coefficient: stepCoefficient(before, next), loss: stepLoss(before, next) }];
  });
}

function lossOf(run: readonly ExtendedElement[], index: number, place: RunPlace): Loss {
  const element = run[index];
  if (element === undefined) throw new Error('no such element');
  const before = boresOf(run.slice(0, index)).at(-1);
  const after = boresOf(run.slice(index + 1))[0];
  const bore = (): number => needed(pipeBore(element) ?? before ?? place.above ?? after ?? place.below());
  const name = nameOf(element);
  if (name === 'reducer' || name === 'enlargement')
    return stepLoss(needed(before ?? place.above), needed(after ?? place.below()));
  const lengths = ONE_WAY_LENGTHS.get(name ?? '');
  if (lengths === undefined) return elementLoss(element, bore, place.viscosity, colebrookByNewton);
  const diameter = ('diameter' in element ? element.diameter : undefined) ?? bore();
  const count = ('count' in element ? element.count : undefined) ?? 1;
  const turbulence = 0.25 / Math.log10(4.57e-5 / (3.7 * diameter)) ** 2;
  return quadratic(quadraticFactor(count * lengths * turbulence, diameter));
}

/** Loss [m] of the whole run at a signed flow. */
export function runLoss(run: readonly ExtendedElement[], place: RunPlace): Loss {
  const elements = run.map((_, index) => lossOf(run, index, place));
  const steps = place.boreChanges === 'ignored' ? [] : assumedSteps(run).map((step) => step.loss);
  const all = [...elements, ...steps];
  return (flow) => place.multiplier * all.reduce((sum, loss) => sum + loss(flow), 0);
}
