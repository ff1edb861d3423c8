/** The flow of every run when each outlet gets exactly what it requires. */
import { failed, type Result, success } from '../../curves/result.ts';
import type { DocumentPath } from '../loop/document-path.ts';
import type { Outlet } from '../loop/loop.ts';
import { pipeBore } from '../network/bores.ts';
import { placeOutlet } from '../network/build-network.ts';
import type { DesignFailure } from './design-failure.ts';
import type { DesignBranch, DesignElement, Pipe } from './design-loop.ts';

/** Flow [m3/s] into a branch, and into those beyond it. */
export interface BranchFlow {
  readonly flow: number;
  readonly beyond: readonly BranchFlow[];
}

/** Every bore [m] that the last pipe before a place can have; one null where there is no pipe. */
type Bores = readonly (number | null)[];

const pipesOf = (element: DesignElement): readonly Pipe[] => {
  if ('pipes' in element) return element.pipes;
  return 'pipe' in element ? [element.pipe] : [];
};

/** Of the last pipe of a run, else those upstream. */
export function lastBores(run: readonly DesignElement[], upstream: Bores): Bores {
  const pipes = run.map(pipesOf).findLast(({ length }) => length > 0);
  return pipes === undefined ? upstream : pipes.map((pipe) => pipeBore(pipe)?.bore ?? null);
}

/** Flows add up from the outlets to the pump. Fails at the first outlet without a requirement. */
export function requiredFlows(
  branch: DesignBranch,
  { path, upstream }: { readonly path: DocumentPath; readonly upstream: Bores },
): Result<BranchFlow, DesignFailure> {
  const bores = lastBores(branch.run, upstream);
  if (branch.outlet !== undefined) return ofOutlet(branch.outlet, path, bores);
  const beyond: BranchFlow[] = [];
  for (const [place, child] of (branch.branches ?? []).entries()) {
    const flows = requiredFlows(child, { path: [...path, 'branches', place], upstream: bores });
    if (!flows.ok) return flows;
    beyond.push(flows.value);
  }
  return success({ flow: beyond.reduce((sum, { flow }) => sum + flow, 0), beyond });
}

/** Whether two flows are one but for rounding. */
const SAME_FLOW = 1e-12;

function ofOutlet(outlet: Outlet, branch: DocumentPath, bores: Bores): Result<BranchFlow, DesignFailure> {
  const path = [...branch, 'outlet'];
  const flows: number[] = [];
  for (const bore of bores) {
    const placed = placeOutlet({ outlet }, bore, branch);
    if (!placed.ok) return placed;
    const flow = placed.value.outlet?.requiredFlow ?? null;
    if (flow === null) return failed({ code: 'requirement-missing', path, outlet: outlet.name });
    flows.push(flow);
  }
  const [least, most] = [Math.min(...flows), Math.max(...flows)];
  if (most - least > SAME_FLOW * most) {
    return failed({ code: 'requirement-by-size', path: [...path, 'reach'], outlet: outlet.name });
  }
  return success({ flow: least, beyond: [] });
}
