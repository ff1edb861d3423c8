/** A loop's pipework as a tree of legs: losses, one-way runs, levels of the outlets, laws of the tees. */
import type { ExtendedBranch, ExtendedLoop, ExtendedOutlet } from '../../random/extended-loop.ts';
import { isShut, type Loss, quadratic, quadraticFactor } from '../independent/losses.ts';
import { boresOf, isOneWay, needed, type RunPlace, runLoss } from './runs.ts';
import type { Side } from './tee.ts';

/** What of a loop the hydraulics depends on; viscosity [m2/s]. */
export type Pipework = Pick<
  ExtendedLoop,
  'staticHead' | 'suction' | 'discharge' | 'intake' | 'frictionMultiplier' | 'boreChanges'
> & { readonly viscosity: number };

export interface End {
  readonly outlet: ExtendedOutlet;
  readonly exit: Loss;
  /** Above the surface drawn from [m]. */
  readonly level: number;
  readonly free: boolean;
  readonly bore: number | undefined;
}

export interface Leg {
  readonly loss: Loss;
  readonly shut: boolean;
  readonly oneWay: boolean;
  readonly elevation: number | undefined;
  /** Where this is a side of a tee. */
  readonly side: Side | undefined;
  /** Where the leg ends in a tee: velocity-head factor of the leg and ratio of its widest side. */
  readonly tee: { readonly whole: number; readonly widest: number } | undefined;
  readonly children: readonly Leg[];
  readonly end: End | undefined;
}

export interface Circuit {
  readonly suction: Loss;
  readonly root: Leg;
}

interface Above extends Omit<RunPlace, 'below'> {
  readonly staticHead: number;
  /** Bore of the leg where this is a side of a tee. */
  readonly teeBore?: number | undefined;
}

/** The first pipe met walking down from a branch's own run, first branch first. */
function firstBoreBelow(branch: ExtendedBranch): number | undefined {
  const own = boresOf(branch.run)[0];
  if (own !== undefined) return own;
  return (branch.branches ?? []).map(firstBoreBelow).find((bore) => bore !== undefined);
}

function endOf(outlet: ExtendedOutlet, bore: number | undefined, staticHead: number): End {
  const coefficient = outlet.lossCoefficient ?? 1;
  const { nozzleDiameter, nozzleCount = 1 } = outlet;
  const raised = outlet.staticHead ?? 0;
  const common = {
    outlet,
    bore,
    level: staticHead + raised,
    free: (outlet.exit ?? (raised > 0 ? 'free' : 'submerged')) === 'free',
  };
  if (nozzleDiameter === undefined && coefficient === 0) return { ...common, exit: () => 0 };
  const factor =
    nozzleDiameter === undefined
      ? quadraticFactor(coefficient, needed(bore))
      : quadraticFactor(coefficient, nozzleDiameter, nozzleCount);
  return { ...common, exit: quadratic(factor) };
}

function sideOf(own: number | undefined, { teeBore, multiplier }: Above): Side | undefined {
  if (teeBore === undefined) return undefined;
  const bore = own ?? teeBore;
  const factor = (of: number): number => multiplier * quadraticFactor(1, of);
  return { whole: factor(teeBore), own: factor(bore), ratio: bore / teeBore };
}

function legOf(branch: ExtendedBranch, above: Above): Leg {
  const below = (): number | undefined =>
    (branch.branches ?? []).map(firstBoreBelow).find((bore) => bore !== undefined);
  const own = boresOf(branch.run);
  const last = own.at(-1) ?? above.above;
  const teeBore = branch.split === 'tee-90' ? needed(last ?? below()) : undefined;
  const children = (branch.branches ?? []).map((child, index) =>
    legOf(child, { ...above, above: last, teeBore: index === 0 ? undefined : teeBore }),
  );
  const widest = Math.max(...children.map((child) => child.side?.ratio ?? 0));
  const closed = branch.run.some(isShut);
  return {
    loss: runLoss(branch.run, { ...above, below }),
    shut: closed || (branch.outlet === undefined && children.every((child) => child.shut)),
    oneWay: branch.run.some(isOneWay),
    elevation: branch.highestElevation,
    side: sideOf(own[0], above),
    tee:
      teeBore === undefined ? undefined : { whole: above.multiplier * quadraticFactor(1, teeBore), widest },
    children,
    end: branch.outlet && endOf(branch.outlet, last, above.staticHead),
  };
}

/** The whole circuit; the intake's coefficient acts on the first suction pipe and is not multiplied. */
export function circuitOf(pipework: Pipework): Circuit {
  const { viscosity, frictionMultiplier: multiplier, suction, discharge, intake, staticHead } = pipework;
  const context = { viscosity, multiplier, boreChanges: pipework.boreChanges ?? 'abrupt' };
  const run = runLoss(suction, { ...context, above: undefined, below: () => firstBoreBelow(discharge) });
  const pipes = boresOf(suction);
  const [first] = pipes;
  const entry =
    first === undefined || intake === undefined
      ? () => 0
      : quadratic(quadraticFactor(intake.lossCoefficient, first));
  const root = legOf(discharge, { ...context, staticHead, above: pipes.at(-1) });
  return { suction: (flow) => run(flow) + entry(flow), root };
}
