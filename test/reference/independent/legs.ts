/** A loop's pipework as a tree of legs, each with the loss of its run as a function of flow. */
import type { Branch, Outlet, PipeworkLoop, RunElement } from '../../../models/loop/loop.ts';
import { elementLoss, isShut, type Loss, pipeBore, quadratic, quadraticFactor } from './losses.ts';

/** What of a loop the hydraulics depends on; viscosity [m2/s]. */
export type Pipework = Pick<
  PipeworkLoop,
  'staticHead' | 'suction' | 'discharge' | 'intake' | 'frictionMultiplier'
> & { readonly viscosity: number };

/** `loss` holds the run and, for a side branch of a tee, its 0.6 v_b^2/2g; `combined` is c of a tee's v_c^2/2g = c Q^2. */
export interface Leg {
  readonly loss: Loss;
  readonly shut: boolean;
  readonly side: boolean;
  readonly combined: number;
  readonly children: readonly Leg[];
  readonly end?: { readonly outlet: Outlet; readonly exit: Loss; readonly bore: number | undefined };
}

export interface Circuit {
  readonly suction: Loss;
  readonly staticHead: number;
  readonly root: Leg;
}

interface Above {
  /** Bore of the nearest pipe upstream. */
  readonly bore: number | undefined;
  /** Bore of the combined leg where this is a side branch of a tee. */
  readonly teeBore?: number | undefined;
  readonly viscosity: number;
  readonly multiplier: number;
}

const bores = (run: readonly RunElement[]): number[] =>
  run.flatMap((element) => {
    const bore = pipeBore(element);
    return bore === undefined ? [] : [bore];
  });

/** The first pipe met walking down from a branch's own run, first branch first. */
function firstBoreBelow(branch: Branch): number | undefined {
  const own = bores(branch.run)[0];
  if (own !== undefined) return own;
  for (const child of branch.branches ?? []) {
    const below = firstBoreBelow(child);
    if (below !== undefined) return below;
  }
  return undefined;
}

function needed(bore: number | undefined): number {
  if (bore === undefined) throw new Error('an element has no bore');
  return bore;
}

/** Losses of a run; an element without a diameter takes the pipe before it, upstream, or after it. */
function runLoss(run: readonly RunElement[], above: Above, below: () => number | undefined): Loss {
  const losses = run.map((element, index) => {
    const bore = (): number =>
      needed(
        pipeBore(element) ??
          bores(run.slice(0, index)).at(-1) ??
          above.bore ??
          bores(run.slice(index + 1))[0] ??
          below(),
      );
    return elementLoss(element, bore, above.viscosity);
  });
  return (flow) => above.multiplier * losses.reduce((sum, loss) => sum + loss(flow), 0);
}

function exitOf(outlet: Outlet, bore: number | undefined): Loss {
  const coefficient = outlet.lossCoefficient ?? 1;
  if (outlet.nozzleDiameter !== undefined)
    return quadratic(quadraticFactor(coefficient, outlet.nozzleDiameter, outlet.nozzleCount ?? 1));
  return coefficient === 0 ? () => 0 : quadratic(quadraticFactor(coefficient, needed(bore)));
}

function legOf(branch: Branch, above: Above): Leg {
  const childPipe = (): number | undefined =>
    (branch.branches ?? []).map(firstBoreBelow).find((bore) => bore !== undefined);
  const run = runLoss(branch.run, above, childPipe);
  const own = bores(branch.run);
  const end = own.at(-1) ?? above.bore;
  const sideBore = own[0] ?? above.teeBore;
  const sideFactor =
    above.teeBore === undefined ? 0 : above.multiplier * quadraticFactor(0.6, needed(sideBore));
  const loss: Loss = (flow) => run(flow) + sideFactor * flow * Math.abs(flow);
  const closed = branch.run.some(isShut);
  const common = { loss, side: above.teeBore !== undefined };
  if (branch.outlet !== undefined) {
    const outlet = { outlet: branch.outlet, exit: exitOf(branch.outlet, end), bore: end };
    return { ...common, shut: closed, combined: 0, children: [], end: outlet };
  }
  const tee = branch.split === 'tee-90';
  const combinedBore = tee ? needed(end ?? childPipe()) : undefined;
  const children = (branch.branches ?? []).map((child, index) =>
    legOf(child, { ...above, bore: end, teeBore: index === 0 ? undefined : combinedBore }),
  );
  const combined = combinedBore === undefined ? 0 : above.multiplier * quadraticFactor(1, combinedBore);
  return { ...common, shut: closed || children.every((child) => child.shut), combined, children };
}

/** The whole circuit; the intake's coefficient acts on the first suction pipe and is not multiplied. */
export function circuitOf(pipework: Pipework): Circuit {
  const { viscosity, frictionMultiplier: multiplier, suction, discharge, intake, staticHead } = pipework;
  const context = { viscosity, multiplier };
  const run = runLoss(suction, { ...context, bore: undefined }, () => firstBoreBelow(discharge));
  const pipes = bores(suction);
  const entryBore = pipes[0];
  const entry =
    entryBore === undefined || intake === undefined
      ? () => 0
      : quadratic(quadraticFactor(intake.lossCoefficient, entryBore));
  const root = legOf(discharge, { ...context, bore: pipes.at(-1) });
  return { suction: (flow) => run(flow) + entry(flow), staticHead, root };
}
