/** The cautions about the flows in pipes, splits and intake of a loop whose pipework is known. */

import { at } from '../../curves/at.ts';
import type { ExactDuty } from '../duty/duty-point.ts';
import { minimumSubmergence } from '../intake/submergence.ts';
import type { LoopModel } from '../network/loop-model.ts';
import type { Network, NetworkBranch, PlacedResistance } from '../network/network.ts';
import type { Limits } from '../selection/options.ts';
import { about } from './about.ts';
import { type Caution, caution } from './catalogue.ts';

const LEAST_TEE_SHARE = 0.5;

export function flowCautions(
  { loop, limits }: { readonly loop: LoopModel; readonly limits: Limits },
  { flow, state }: ExactDuty,
): readonly Caution[] {
  const { network } = loop;
  const flows = state?.network?.flows;
  if (network === null || flows === undefined) return [];
  return [
    ...pipeVelocity(network, flows, limits.pipeVelocity),
    ...splits(network, flows),
    ...submergence(loop, network, flow),
  ];
}

const pointer = ({ path }: { readonly path: readonly (string | number)[] }): string => `/${path.join('/')}`;

function pipeVelocity(network: Network, flows: readonly number[], limit: number): readonly Caution[] {
  const isFast = (flow: number) => (element: PlacedResistance) =>
    element.kind === 'pipe' &&
    element.bore !== null &&
    Math.abs(flow) > limit * (Math.PI / 4) * element.bore ** 2;
  const fast = [
    ...network.suction.filter(isFast(at(flows, 0))),
    ...network.branches.flatMap((branch, b) => branch.elements.filter(isFast(at(flows, b)))),
  ];
  return about('pipe-velocity', fast.map(pointer));
}

function splits({ branches }: Network, flows: readonly number[]): readonly Caution[] {
  const hasTee = ({ elements }: NetworkBranch) => elements.some(({ role }) => role === 'tee');
  const childrenOf = (branch: NetworkBranch) =>
    branch.children.flatMap((index) => {
      const child = branches[index];
      return child === undefined ? [] : [{ child, flow: at(flows, index) }];
    });
  const bare = branches.filter(
    (branch) =>
      branch.children.length > 1 &&
      branch.split === null &&
      !childrenOf(branch).some(({ child }) => hasTee(child)),
  );
  const understated = branches.flatMap((branch, b) =>
    childrenOf(branch).filter(
      ({ child, flow }) => hasTee(child) && Math.abs(flow) < LEAST_TEE_SHARE * Math.abs(at(flows, b)),
    ),
  );
  return [
    ...about('split-loss-missing', bare.map(pointer)),
    ...about(
      'tee-understated',
      understated.map(({ child }) => pointer(child)),
    ),
  ];
}

function submergence(
  { loop: { intake } }: LoopModel,
  { intakeBore }: Network,
  flow: number,
): readonly Caution[] {
  if (intake?.depth === undefined || intake.screen !== undefined || intakeBore === null) return [];
  return intake.depth < minimumSubmergence({ flow, diameter: intakeBore }) ? [caution('submergence')] : [];
}
