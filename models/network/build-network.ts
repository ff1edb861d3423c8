/** Compiles a loop's pipework into a network ready to be solved. */
import { failed, type Result, success } from '../../curves/result.ts';
import { flowForReach } from '../components/jet.ts';
import { kLoss } from '../components/resistance.ts';
import { BORE_CHANGES } from '../loop/bore-changes.ts';
import type { DocumentPath } from '../loop/document-path.ts';
import type { Branch, Outlet, PipeworkLoop } from '../loop/loop.ts';
import { exitOf } from '../loop/outlet-exit.ts';
import { roleOf } from '../loop/role-of-element.ts';
import { waterProperties } from '../physics/water.ts';
import { firstBore, firstBoreOfBranch, lastBore } from './bores.ts';
import type { Network, NetworkBranch, NetworkOutlet, PlacedResistance } from './network.ts';
import { type NetworkFailure, placeRun } from './place-elements.ts';
import { type TeeBranchLoss, teeLosses } from './tee-branch-loss.ts';

/** A sharp-edged entrance, where the loop states no other. */
export const INTAKE_LOSS_COEFFICIENT = 0.5;
/** All of the velocity head of a submerged stream. */
export const OUTLET_LOSS_COEFFICIENT = 1;

interface Building {
  readonly loop: PipeworkLoop;
  readonly kinematicViscosity: number;
  readonly branches: NetworkBranch[];
}

interface Position {
  readonly path: DocumentPath;
  readonly parent: number;
  /** Bore at the node that the branch leaves [m]. */
  readonly upstream: number | null;
  readonly teeLoss: TeeBranchLoss | null;
}

/**
 * Compiles the pipework of a loop.
 *
 * Bores are inherited as `inheritedBores` gives them; the discharge's root inherits from the suction. The intake's
 * loss acts on the first suction pipe (none without one), an outlet's whole exit loss on its nozzles, else on the
 * last pipe. `frictionMultiplier` multiplies every element of a run and the losses at tees, not intake or outlets.
 * @returns the network with heads in m, flows in m3/s.
 * Errors: those of `placeRun`; `element-without-diameter` for a tee or an outlet with a loss whose bore no pipe
 *   gives. Each names the place in the document.
 */
export function buildNetwork(loop: PipeworkLoop): Result<Network, NetworkFailure> {
  const { kinematicViscosity } = waterProperties(loop.water);
  const suction = placeRun({
    run: loop.suction,
    path: ['suction'],
    upstream: null,
    downstream: firstBoreOfBranch(loop.discharge),
    kinematicViscosity,
    multiplier: loop.frictionMultiplier,
    boreChanges: loop.boreChanges ?? BORE_CHANGES,
  });
  if (!suction.ok) return suction;
  const building: Building = { loop, kinematicViscosity, branches: [] };
  const root = addBranch(building, loop.discharge, {
    path: ['discharge'],
    parent: -1,
    upstream: lastBore(loop.suction),
    teeLoss: null,
  });
  if (!root.ok) return root;
  const intakeBore = firstBore(loop.suction);
  const branches = suction.value.shut ? building.branches.map(shutOff) : building.branches;
  return success({
    suction: [...intakeLoss(loop, intakeBore), ...suction.value.elements],
    branches,
    outlets: branches.flatMap((branch, index) => (branch.outlet === null ? [] : [index])),
    intakeBore,
    kinematicViscosity,
  });
}

const shutOff = (branch: NetworkBranch): NetworkBranch => ({ ...branch, shut: true });

/** The intake's loss on the first suction pipe, of a bore [m]; nothing without one. */
export function intakeLoss(
  loop: Pick<PipeworkLoop, 'intake'>,
  bore: number | null,
): readonly PlacedResistance[] {
  if (bore === null) return [];
  const lossCoefficient = loop.intake?.lossCoefficient ?? INTAKE_LOSS_COEFFICIENT;
  const resistance = kLoss({ lossCoefficient, diameter: bore });
  return [{ path: ['intake'], kind: 'intake', name: null, role: 'inlet', bore, resistance }];
}

/** Appends a branch and all beyond it in preorder; returns its index. */
function addBranch(building: Building, branch: Branch, at: Position): Result<number, NetworkFailure> {
  const { loop, kinematicViscosity, branches } = building;
  const run = placeRun({
    run: branch.run,
    path: [...at.path, 'run'],
    upstream: at.upstream,
    downstream: firstBoreBeyond(branch),
    kinematicViscosity,
    multiplier: loop.frictionMultiplier,
    boreChanges: loop.boreChanges ?? BORE_CHANGES,
  });
  if (!run.ok) return run;
  const farBore = lastBore(branch.run) ?? at.upstream;
  const exit = placeOutlet(branch, farBore, at.path);
  if (!exit.ok) return exit;
  const index = branches.length;
  const compiled: NetworkBranch = {
    path: at.path,
    parent: at.parent,
    children: [],
    elements: [...run.value.elements, ...exit.value.elements],
    teeLoss: at.teeLoss,
    hasCheckValve: branch.run.some((element) => roleOf(element) === 'check-valve'),
    split: branch.split ?? null,
    outlet: exit.value.outlet,
    lift: loop.staticHead + (branch.outlet?.staticHead ?? 0),
    shut: run.value.shut,
    farBore,
    nearBore: run.value.firstSizedBore ?? at.upstream,
    highestElevation: branch.highestElevation ?? null,
  };
  branches.push(compiled);
  const children = addChildren(building, branch, { index, path: at.path, farBore });
  if (!children.ok) return children;
  const allShut =
    children.value.length > 0 && children.value.every((child) => branches[child]?.shut === true);
  branches[index] = { ...compiled, children: children.value, shut: compiled.shut || allShut };
  return success(index);
}

function addChildren(
  building: Building,
  branch: Branch,
  {
    index,
    path,
    farBore,
  }: { readonly index: number; readonly path: DocumentPath; readonly farBore: number | null },
): Result<readonly number[], NetworkFailure> {
  const children: number[] = [];
  const branchesBeyond = branch.branches ?? [];
  const tees = branch.split === 'tee-90' ? lossesAtTee(building, branchesBeyond, farBore) : NO_TEES;
  if (tees === null) return failed({ code: 'element-without-diameter', path: [...path, 'split'] });
  for (const [place, child] of branchesBeyond.entries()) {
    const added = addBranch(building, child, {
      path: [...path, 'branches', place],
      parent: index,
      upstream: farBore,
      teeLoss: tees[place] ?? null,
    });
    if (!added.ok) return added;
    children.push(added.value);
  }
  return success(children);
}

const NO_TEES: readonly TeeBranchLoss[] = [];

function firstBoreBeyond(branch: Branch): number | null {
  return firstBoreOfBranch({ run: [], branches: branch.branches });
}

/** Of the straight run first, then of the sides; null where no pipe gives the bore of a side. */
function lossesAtTee(
  { loop }: Building,
  branches: readonly Branch[],
  legBore: number | null,
): readonly (TeeBranchLoss | null)[] | null {
  const sideBores: number[] = [];
  for (const { run } of branches.slice(1)) {
    const bore = firstBore(run) ?? legBore;
    if (bore === null) return null;
    sideBores.push(bore);
  }
  return teeLosses({ legBore, sideBores, multiplier: loop.frictionMultiplier });
}

interface PlacedExit {
  readonly elements: readonly PlacedResistance[];
  readonly outlet: NetworkOutlet | null;
}

/** What an outlet loses on its nozzles, else in the bore [m] at its branch's far end, and what it requires. */
export function placeOutlet(
  { outlet }: Pick<Branch, 'outlet'>,
  farBore: number | null,
  branchPath: DocumentPath,
): Result<PlacedExit, NetworkFailure> {
  if (outlet === undefined) return success({ elements: [], outlet: null });
  const path = [...branchPath, 'outlet'];
  const nozzleCount = outlet.nozzleDiameter === undefined ? 1 : (outlet.nozzleCount ?? 1);
  const diameter = outlet.nozzleDiameter ?? farBore;
  const lossCoefficient = outlet.lossCoefficient ?? OUTLET_LOSS_COEFFICIENT;
  if (diameter === null) {
    if (lossCoefficient > 0 || outlet.reach !== undefined)
      return failed({ code: 'element-without-diameter', path });
    return success({ elements: [], outlet: compiledOutlet({ outlet, path, diameter, nozzleCount }) });
  }
  // Equal nozzles side by side act as one of the same total area.
  const resistance = kLoss({ lossCoefficient, diameter: diameter * Math.sqrt(nozzleCount) });
  return success({
    elements: [{ path, kind: 'outlet', name: null, role: 'outlet', bore: diameter, resistance }],
    outlet: compiledOutlet({ outlet, path, diameter, nozzleCount }),
  });
}

function compiledOutlet({
  outlet,
  path,
  diameter,
  nozzleCount,
}: {
  readonly outlet: Outlet;
  readonly path: DocumentPath;
  readonly diameter: number | null;
  readonly nozzleCount: number;
}): NetworkOutlet {
  return {
    name: outlet.name,
    path,
    requiredFlow: requiredFlow(outlet, diameter, nozzleCount),
    maximumFlow: outlet.maximumFlow ?? null,
    area: diameter === null ? null : nozzleCount * (Math.PI / 4) * diameter ** 2,
    nozzleDiameter: diameter,
    nozzleCount,
    reach: outlet.reach ?? null,
    exit: exitOf(outlet),
  };
}

function requiredFlow(outlet: Outlet, diameter: number | null, nozzleCount: number): number | null {
  if (outlet.reach === undefined || diameter === null) return outlet.requiredFlow ?? null;
  const { distance, velocity } = outlet.reach;
  const forReach = flowForReach({ distance, velocity, nozzleDiameter: diameter, nozzleCount });
  return Math.max(outlet.requiredFlow ?? 0, forReach);
}
