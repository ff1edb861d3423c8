/** The second solution against the published networks, whose authors charge nothing for changes of bore. */
import { describe, it } from 'vitest';
import { expectClose } from '../../expect-close.ts';
import type { ExtendedBranch } from '../../random/extended-loop.ts';
import { crossing } from '../independent/crossing.ts';
import type { Drive } from '../worked-network.ts';
import { workedNetworks } from '../worked-networks.ts';
import { pumpE } from './cases.ts';
import { systemOf } from './flows.ts';
import { headLaw } from './head-law.ts';
import { circuitOf } from './legs.ts';

/** Head [m] that the drive gives at a flow. */
function driveHead(drive: Exclude<Drive, { totalFlow: number }>): (flow: number) => number {
  if ('head' in drive) return () => drive.head;
  if ('hydraulicPower' in drive) return (flow) => drive.hydraulicPower / (drive.density * 9.80665 * flow);
  if ('headPolynomial' in drive)
    return (flow) => drive.headPolynomial.reduceRight((sum, coefficient) => sum * flow + coefficient, 0);
  const law = headLaw({ ...pumpE, headPoints: drive.headPoints });
  if (law === undefined) throw new Error('the points make no curve');
  return law.at;
}

/** A reservoir may be drawn from. */
const submerged = (branch: ExtendedBranch): ExtendedBranch => ({
  ...branch,
  ...(branch.outlet && { outlet: { ...branch.outlet, exit: 'submerged' as const } }),
  ...(branch.branches && { branches: branch.branches.map(submerged) }),
});

const LEAST_FLOW = 1e-6;
const GREATEST_FLOW = 10;

describe.each(workedNetworks)('$title', ({ pipework, kinematicViscosity, drive, expected }) => {
  const discharge = submerged(pipework.discharge);
  const system = systemOf(
    circuitOf({ ...pipework, discharge, boreChanges: 'ignored', viscosity: kinematicViscosity }),
  );
  const excess = (flow: number): number =>
    'totalFlow' in drive ? flow - drive.totalFlow : system.head(flow) - driveHead(drive)(flow);
  const ends = [LEAST_FLOW, GREATEST_FLOW].map((flow) => [flow, excess(flow)] as const);
  const [low = [0, 0], high = [0, 0]] = ends;
  const flow = crossing(excess, low, high);
  const outlets = system.outlets(flow);

  it.each(expected)('has the published $quantity', ({ quantity, value, tolerance }) => {
    const named =
      typeof quantity === 'string' ? undefined : outlets.find(({ name }) => name === quantity.outlet)?.flow;
    const actual = quantity === 'flow' ? flow : quantity === 'head' ? system.head(flow) : named;
    expectClose(actual ?? Number.NaN, value, { relative: tolerance });
  });
});
