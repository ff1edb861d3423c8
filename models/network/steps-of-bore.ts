/** Finds the steps of bore in a run that no element is entered for, and what they cost. */
import { type BoreChange, boreChangeLossCoefficient, findBoreChange } from '../components/bore-change.ts';
import { kLoss, scaled } from '../components/resistance.ts';
import type { DocumentPath } from '../loop/document-path.ts';
import type { RunElement } from '../loop/loop.ts';
import { roleOf } from '../loop/role-of-element.ts';
import { pipeBore } from './bores.ts';
import type { PlacedResistance } from './network.ts';

/** Bores [m] of two pipes that follow each other in a run, and the place [-] of the later one. */
export interface StepOfBore {
  readonly later: number;
  readonly before: number;
  readonly after: number;
}

/** Bores count as unlike beyond this share of the larger. */
const SAME_BORE = 1e-9;

/** A reducer, an enlargement, or a loss that is said to be that of the step. */
const joinsBores = (element: RunElement): boolean =>
  roleOf(element) === 'bore-change' || ('boreChange' in element && element.boreChange === true);

/** The steps of a run in its order. Pipes follow each other whatever else lies between. */
export function stepsOfBore(run: readonly RunElement[]): readonly StepOfBore[] {
  const steps: StepOfBore[] = [];
  let before: number | null = null;
  let joined = false;
  for (const [later, element] of run.entries()) {
    if (joinsBores(element)) joined = true;
    const after = 'pipe' in element ? (pipeBore(element.pipe)?.bore ?? null) : null;
    if (after === null) continue;
    if (before !== null && !joined && isStep(before, after)) steps.push({ later, before, after });
    before = after;
    joined = false;
  }
  return steps;
}

const isStep = (before: number, after: number): boolean =>
  Math.abs(before - after) > SAME_BORE * Math.max(before, after);

function abrupt(name: 'reducer' | 'enlargement'): BoreChange {
  const row = findBoreChange(name);
  if (row === undefined) throw new Error(`the table of bore changes has no ${name}`);
  return row;
}

const NARROWER = abrupt('reducer');
const WIDER = abrupt('enlargement');

/** The loss of an abrupt step between bores [m], at the place of the later pipe, times a multiplier [-]; backward flow loses as much. */
export function placeStep(
  { before, after }: StepOfBore,
  { path, multiplier }: { readonly path: DocumentPath; readonly multiplier: number },
): PlacedResistance {
  const lossCoefficient = boreChangeLossCoefficient(after < before ? NARROWER : WIDER, { before, after });
  const bore = Math.min(before, after);
  const resistance = scaled(kLoss({ lossCoefficient, diameter: bore }), multiplier);
  return { path, kind: 'bore-change', name: null, role: 'bore-change', bore, resistance, lossCoefficient };
}
