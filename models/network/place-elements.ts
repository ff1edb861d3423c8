/** Places the resistances of a run's elements, each at the bore it belongs to. */
import { failed, type Result, success } from '../../curves/result.ts';
import { findBoreChange } from '../components/bore-change.ts';
import { findFitting } from '../components/fittings.ts';
import { flowCoefficientValve, kvOfCv } from '../components/flow-coefficient.ts';
import { fittingResistance } from '../components/named-loss.ts';
import { pipeFriction } from '../components/pipe-friction.ts';
import { kLoss, quadraticLoss, scaled } from '../components/resistance.ts';
import { DEFAULT_ROUGHNESS } from '../components/roughness.ts';
import { openingForLoss, type ValveState, valveResistance } from '../components/valve-opening.ts';
import { findCheckValve, findValve } from '../components/valves.ts';
import type { BoreChanges } from '../loop/bore-changes.ts';
import type { DocumentPath } from '../loop/document-path.ts';
import type { RunElement } from '../loop/loop.ts';
import { inheritedBores, pipeBore } from './bores.ts';
import type { PlacedResistance } from './network.ts';
import { type BoreChangeFailure, type Neighbours, neighbours, placeBoreChange } from './place-bore-change.ts';
import { placeStep, stepsOfBore } from './steps-of-bore.ts';

/**
 * What can be wrong with pipework that has the right form; `path` names the member, openings in [%], roughness and
 * bore in [m].
 */
export type NetworkFailure =
  | BoreChangeFailure
  | { readonly code: 'unknown-pipe'; readonly path: DocumentPath; readonly name: string }
  | { readonly code: 'unknown-fitting'; readonly path: DocumentPath; readonly name: string }
  | { readonly code: 'unknown-valve'; readonly path: DocumentPath; readonly name: string }
  | {
      readonly code: 'opening-not-known';
      readonly path: DocumentPath;
      readonly name: string;
      readonly opening: number;
    }
  | {
      readonly code: 'roughness-too-large';
      readonly path: DocumentPath;
      readonly roughness: number;
      readonly bore: number;
    }
  | { readonly code: 'element-without-diameter'; readonly path: DocumentPath };

/** A run whose elements have their bores. */
export interface PlacedRun {
  readonly elements: readonly PlacedResistance[];
  readonly shut: boolean;
  /** Bore of the first element that has one, stated or inherited [m]; null where none has. */
  readonly firstSizedBore: number | null;
}

interface Placing {
  readonly path: DocumentPath;
  readonly bore: number | null;
  /** Looked for by fittings of two bores alone. */
  readonly around: () => Neighbours;
  readonly kinematicViscosity: number;
  readonly multiplier: number;
}

/**
 * Places the elements of a run, their losses and those of its steps of bore times `multiplier`.
 *
 * @param placing the run and its path in the document; upstream and downstream, bores [m] of the pipes before and
 *   beyond it; kinematicViscosity [m2/s] above 0; multiplier [-] above 0; boreChanges, whether steps of bore are
 *   charged.
 * Errors: at the first element whose name is unknown, whose opening no table gives, whose wall is too rough, or whose
 *   bore no pipe gives.
 */
export function placeRun({
  run,
  path,
  upstream,
  downstream,
  kinematicViscosity,
  multiplier,
  boreChanges,
}: {
  readonly run: readonly RunElement[];
  readonly path: DocumentPath;
  readonly upstream: number | null;
  readonly downstream: number | null;
  readonly kinematicViscosity: number;
  readonly multiplier: number;
  readonly boreChanges: BoreChanges;
}): Result<PlacedRun, NetworkFailure> {
  const bores = inheritedBores(run, { upstream, downstream });
  const steps = boreChanges === 'ignored' ? [] : stepsOfBore(run);
  const elements: PlacedResistance[] = [];
  let shut = false;
  for (const [index, element] of run.entries()) {
    const placed = placeElement(element, {
      path: [...path, index],
      bore: bores[index] ?? null,
      around: () => neighbours(run, index, { upstream, downstream }),
      kinematicViscosity,
      multiplier,
    });
    if (!placed.ok) return placed;
    const step = steps.find(({ later }) => later === index);
    if (step !== undefined) elements.push(placeStep(step, { path: [...path, index], multiplier }));
    if (placed.value === 'shut') shut = true;
    else elements.push(placed.value);
  }
  const firstSizedBore = elements.find((element) => element.bore !== null)?.bore ?? null;
  return success({ elements, shut, firstSizedBore });
}

type Placed = Result<PlacedResistance | 'shut', NetworkFailure>;

function placeElement(element: RunElement, placing: Placing): Placed {
  if ('pipe' in element) return placePipe(element, placing);
  if ('loss' in element) {
    const { head, flow } = element.loss;
    return place(placing, {
      kind: 'loss',
      name: null,
      role: null,
      bore: null,
      resistance: quadraticLoss(head / flow ** 2),
    });
  }
  if ('valve' in element) return placeValve(element, placing);
  if ('fitting' in element) return placeFitting(element, placing);
  const bore = element.diameter ?? placing.bore;
  if (bore === null) return withoutDiameter(placing);
  if ('lossCoefficient' in element) {
    const resistance = kLoss({ lossCoefficient: element.lossCoefficient, diameter: bore });
    return place(placing, { kind: 'loss', name: null, role: null, bore, resistance });
  }
  const { kinematicViscosity } = placing;
  const roughness = element.roughness ?? DEFAULT_ROUGHNESS;
  if (isTooRough({ roughness, bore })) return tooRough(['roughness'], placing, { roughness, bore });
  const friction = { diameter: bore, length: element.equivalentLength, roughness, kinematicViscosity };
  return place(placing, { kind: 'loss', name: null, role: null, bore, resistance: pipeFriction(friction) });
}

function placeFitting(element: Extract<RunElement, { fitting: string }>, placing: Placing): Placed {
  const change = findBoreChange(element.fitting);
  if (change !== undefined) {
    const placed = placeBoreChange(change, element, { path: placing.path, around: placing.around() });
    return placed.ok ? place(placing, placed.value) : placed;
  }
  const row = findFitting(element.fitting) ?? findCheckValve(element.fitting);
  if (row === undefined) {
    return failed({ code: 'unknown-fitting', path: [...placing.path, 'fitting'], name: element.fitting });
  }
  const bore = element.diameter ?? placing.bore;
  if (bore === null) return withoutDiameter(placing);
  const one = fittingResistance(row, { diameter: bore, kinematicViscosity: placing.kinematicViscosity });
  const resistance = scaled(one, element.count ?? 1);
  return place(placing, { kind: 'fitting', name: row.name, role: row.role, bore, resistance });
}

function placePipe(element: Extract<RunElement, { pipe: unknown }>, placing: Placing): Placed {
  const size = pipeBore(element.pipe);
  if (size === null) {
    return failed({ code: 'unknown-pipe', path: [...placing.path, 'pipe'], name: String(element.pipe) });
  }
  const { kinematicViscosity } = placing;
  const { bore: diameter, roughness } = size;
  if (isTooRough(size)) return tooRough(['pipe', 'roughness'], placing, size);
  const friction = pipeFriction({ diameter, length: element.length, roughness, kinematicViscosity });
  const name = typeof element.pipe === 'string' ? element.pipe : null;
  return place(placing, { kind: 'pipe', name, role: 'pipe', bore: diameter, resistance: friction });
}

function placeValve(element: Extract<RunElement, { valve: unknown }>, placing: Placing): Placed {
  const { valve, opening = 100 } = element;
  const name = typeof valve === 'string' ? valve : 'kv' in valve ? 'kv' : 'cv';
  const notKnown = failed({
    code: 'opening-not-known',
    path: [...placing.path, 'opening'],
    name,
    opening,
  } as const);
  if (typeof valve !== 'string') {
    const state = flowCoefficientValve({ kv: 'kv' in valve ? valve.kv : kvOfCv(valve.cv), opening });
    return state.ok ? placeValveState(state.value, placing, { name, role: 'valve', bore: null }) : notKnown;
  }
  const row = findValve(valve);
  if (row === undefined) return failed({ code: 'unknown-valve', path: [...placing.path, 'valve'], name });
  const diameter = element.diameter ?? placing.bore;
  if (diameter === null) return withoutDiameter(placing);
  const { kinematicViscosity, multiplier } = placing;
  const state = valveResistance(row, { opening, diameter, kinematicViscosity });
  const velocityHead = kLoss({ lossCoefficient: multiplier, diameter });
  const openingFor: PlacedResistance['openingFor'] = ({ head, flow }) =>
    openingForLoss(row, { lossCoefficient: head / velocityHead.lossAt(flow).head, diameter });
  return state.ok
    ? placeValveState(state.value, placing, { name, role: row.role, bore: diameter, openingFor })
    : notKnown;
}

function placeValveState(
  state: ValveState,
  placing: Placing,
  facts: Pick<PlacedResistance, 'name' | 'role' | 'bore' | 'openingFor'>,
): Placed {
  return state === 'shut' ? success('shut') : place(placing, { kind: 'valve', ...facts, resistance: state });
}

interface Wall {
  readonly roughness: number;
  readonly bore: number;
}

/** The friction law is made for walls rough to a twentieth of the bore; twice that is let pass. */
const ROUGHNESS_SHARE = 0.1;
const isTooRough = ({ roughness, bore }: Wall): boolean => roughness > ROUGHNESS_SHARE * bore;

const tooRough = (member: DocumentPath, { path }: Placing, wall: Wall): Result<never, NetworkFailure> =>
  failed({ code: 'roughness-too-large', path: [...path, ...member], ...wall });

function withoutDiameter({ path }: Placing): Result<never, NetworkFailure> {
  return failed({ code: 'element-without-diameter', path });
}

function place({ path, multiplier }: Placing, element: Omit<PlacedResistance, 'path'>): Placed {
  return success({ ...element, path, resistance: scaled(element.resistance, multiplier) });
}
