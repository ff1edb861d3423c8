/** The reference solution against the published networks. */
import { describe, it } from 'vitest';
import { expectClose } from '../../expect-close.ts';
import type { Drive } from '../worked-network.ts';
import { workedNetworks } from '../worked-networks.ts';
import { zeroFrom } from './crossing.ts';
import { systemOf } from './flows.ts';
import { chooseHeadCurve, headAtFullSpeed } from './head-curve.ts';
import { canister250 } from './kelp-flume.ts';
import { circuitOf } from './legs.ts';

/** Head [m] that the drive gives at a flow. */
function driveHead(drive: Exclude<Drive, { totalFlow: number }>): (flow: number) => number {
  if ('head' in drive) return () => drive.head;
  if ('hydraulicPower' in drive) return (flow) => drive.hydraulicPower / (drive.density * 9.80665 * flow);
  if ('headPolynomial' in drive)
    return (flow) => drive.headPolynomial.reduceRight((sum, coefficient) => sum * flow + coefficient, 0);
  const curve = chooseHeadCurve({ ...canister250, headPoints: drive.headPoints });
  if (curve === undefined) throw new Error('the points make no curve');
  return (flow) => headAtFullSpeed(curve, flow);
}

describe.each(workedNetworks)('$title', ({ pipework, kinematicViscosity, drive, expected }) => {
  const system = systemOf(circuitOf({ ...pipework, viscosity: kinematicViscosity }));
  const start = 1e-6;
  const excess = (flow: number): number =>
    'totalFlow' in drive ? flow - drive.totalFlow : system.head(flow) - driveHead(drive)(flow);
  const flow = zeroFrom(excess, [start, excess(start)], 1e-3);
  const outlets = system.outlets(flow);

  it.each(expected)('has the published $quantity', ({ quantity, value, tolerance }) => {
    const named =
      typeof quantity === 'string' ? undefined : outlets.find(({ name }) => name === quantity.outlet)?.flow;
    const actual = quantity === 'flow' ? flow : quantity === 'head' ? system.head(flow) : named;
    expectClose(actual ?? Number.NaN, value, { relative: tolerance });
  });
});
