/** Makes the system of a loop whose pipework is known. */

import { at } from '../../curves/at.ts';
import { inSeries, lossOf } from '../components/loss-terms.ts';
import { lossOver, type Network, type NetworkOutlet } from './network.ts';
import { SolveFailure } from './solve-failure.ts';
import { solveNetwork } from './solve-network.ts';
import { buffersOf } from './solver-buffers.ts';
import type { System, SystemState } from './system.ts';
import { ALLOWED_RESIDUAL, largestResidual } from './verify-solution.ts';

/**
 * The system of a network: suction losses on the total flow in series with the discharge's tree.
 *
 * Errors: its `stateAt` throws `SolveFailure` where the network does not settle, or its solution does not verify to
 *   1e-9.
 */
export function pipeworkSystem(network: Network): System {
  const outletOf = (branch: number): NetworkOutlet => {
    const outlet = network.branches[branch]?.outlet;
    if (outlet === undefined || outlet === null) throw new Error(`branch ${branch} has no outlet`);
    return outlet;
  };
  const suction = inSeries(network.suction.map(({ resistance }) => resistance.terms));
  return {
    outlets: network.outlets.map(outletOf),
    passesWater: network.branches[0]?.shut === false,
    hasKinks: hasKinks(network),
    outletsRise: network.branches.every((branch) => branch.teeLoss === null),
    stateAt: (flow, near) => stateOf(network, flow, near),
    suctionLossAt: (flow) => lossOf(suction, flow).head,
  };
}

function stateOf(network: Network, flow: number, near: SystemState | undefined): SystemState {
  const solved = solveNetwork(network, flow, near?.network ?? undefined);
  if (!solved.ok) throw new SolveFailure(solved.failure);
  const { value: solution } = solved;
  const residual = largestResidual(network, solution);
  if (!(residual <= ALLOWED_RESIDUAL)) {
    throw new SolveFailure({ code: 'network-unsolved', totalFlow: flow, steps: solution.steps, residual });
  }
  const suction = lossOver(network.suction, flow);
  return {
    flow,
    head: suction.head + solution.rootHead,
    slope: suction.slope + solution.rootSlope,
    suctionLoss: suction.head,
    outletFlows: atOutlets(network, solution.flows),
    outletSlopes: atOutlets(network, solution.flowSlopes),
    network: solution,
  };
}

/**
 * By a branch that water passes one way only, by a straight run that loses by what its sides take, and by sides of tees that turn
 * where outlets lie at unlike levels. The root carries the total.
 */
function hasKinks(network: Network): boolean {
  const { hasOneWay, liftRange } = buffersOf(network).tree;
  const tees = network.branches.flatMap(({ teeLoss }) => teeLoss ?? []);
  return hasOneWay || tees.some(({ part }) => part === 'run') || (tees.length > 0 && liftRange > 0);
}

const atOutlets = ({ outlets }: Network, ofBranches: readonly number[]): readonly number[] =>
  outlets.map((branch) => at(ofBranches, branch));
