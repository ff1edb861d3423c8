/** Published networks, solved as the duty of whatever drives them. */
import { describe, it } from 'vitest';
import { findRoot } from '../../../curves/find-root.ts';
import { dutyPoint } from '../../../models/duty/duty-point.ts';
import { GRAVITY } from '../../../models/physics/gravity.ts';
import { waterProperties } from '../../../models/physics/water.ts';
import { pumpAtSetting } from '../../../models/pump/pump-at-setting.ts';
import { expectClose } from '../../expect-close.ts';
import type { Drive, WorkedNetwork } from '../../reference/worked-network.ts';
import { workedNetworks } from '../../reference/worked-networks.ts';
import { canister, loopOf, modelOf, pumpByLaw, pumpModelOf } from '../example-loops.ts';

/** Temperature [degC] at which fresh water has a viscosity [m2/s]. */
function temperatureOf(kinematicViscosity: number): number {
  const root = findRoot({
    evaluate: (temperature) => ({
      value: waterProperties({ temperature, salinity: 0 }).kinematicViscosity - kinematicViscosity,
    }),
    low: 0,
    high: 45,
  });
  if (!root.ok) throw new Error(`no water has the viscosity ${kinematicViscosity}`);
  return root.value.root;
}

function pumpOf(drive: Exclude<Drive, { totalFlow: number }>) {
  if ('head' in drive) return pumpByLaw(() => ({ head: drive.head, slope: 0 }));
  if ('headPoints' in drive) {
    const model = pumpModelOf({ ...canister, headPoints: drive.headPoints });
    return pumpAtSetting(model, { setting: 100, count: 1 });
  }
  if ('headPolynomial' in drive) {
    const [a = 0, b = 0, c = 0] = drive.headPolynomial;
    return pumpByLaw((flow) => ({ head: a + b * flow + c * flow ** 2, slope: b + 2 * c * flow }));
  }
  // Constant power has no shutoff head: below 0.1 L/s the head is held.
  return pumpByLaw((flow) => {
    const head = drive.hydraulicPower / (drive.density * GRAVITY * Math.max(flow, 1e-4));
    return { head, slope: flow > 1e-4 ? -head / flow : 0 };
  });
}

function stateOf({ pipework, kinematicViscosity, drive }: WorkedNetwork) {
  const water = { temperature: temperatureOf(kinematicViscosity), salinity: 0 };
  const model = modelOf(loopOf(pipework.discharge, { ...pipework, water }));
  const state =
    'totalFlow' in drive ? model.system.stateAt(drive.totalFlow) : dutyPoint(model, pumpOf(drive));
  const outlets = model.system.outlets.map(({ name }, i) => ({ name, flow: state.outletFlows[i] }));
  return { flow: state.flow, head: state.head, outlets };
}

describe.each(workedNetworks)('$title ($source)', (example) => {
  const state = stateOf(example);

  it.each(example.expected)('has the published $quantity', ({ quantity, value, tolerance }) => {
    const actual =
      typeof quantity === 'string'
        ? state[quantity]
        : state.outlets.find(({ name }) => name === quantity.outlet)?.flow;
    expectClose(actual ?? Number.NaN, value, { relative: tolerance });
  });
});
