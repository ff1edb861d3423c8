/** Gives the cautions about the flows in pipes and splits of a loop whose pipework is known. */
import { at } from '../../curves/at.ts';
import type { ExactDuty } from '../duty/duty-point.ts';
import type { CompiledLoop } from '../network/compiled-loop.ts';
import type { Network, NetworkBranch, PlacedResistance } from '../network/network.ts';
import type { Limits } from '../selection/options.ts';
import { type CautionOf, topic } from './topic.ts';

export const PIPEWORK = topic({
  'split-loss-missing': {
    severity: 'note',
    sentence: 'A split has neither a tee fitting nor a stated split loss: its loss is left out.',
    source: 'pipework as entered',
  },
  'tee-understated': {
    severity: 'note',
    sentence:
      'A tee fitting carries under half of the combined flow: its fixed K on the branch flow understates the loss; state the split instead.',
    source: 'diverging tees, Crane TP-410 (2009)',
  },
  'pipe-velocity': {
    severity: 'warning',
    sentence: 'Water runs faster than the velocity limit in a pipe.',
    source:
      'limit as stated; 1.5 m/s (5 ft/s) for plastic pipe with fast valves, technical notes of pipe makers',
  },
});

type PipeworkCaution = CautionOf<typeof PIPEWORK>;

/** Share of the combined flow below which the fixed K of a tee fitting understates its loss. */
const LEAST_TEE_SHARE = 0.5;

/** Judges the flows of a solved state; `pipeVelocity` [m/s] is the limit for every pipe. */
export function pipeworkCautions(
  { network }: CompiledLoop,
  { pipeVelocity: limit }: Pick<Limits, 'pipeVelocity'>,
  { state }: Pick<ExactDuty, 'state'>,
): readonly PipeworkCaution[] {
  const flows = state?.network?.flows;
  if (network === null || flows === undefined) return [];
  return [...pipeVelocity(network, flows, limit), ...splits(network, flows)];
}

const pointer = ({ path }: { readonly path: readonly (string | number)[] }): string => `/${path.join('/')}`;

function pipeVelocity(network: Network, flows: readonly number[], limit: number): readonly PipeworkCaution[] {
  const isFast = (flow: number) => (element: PlacedResistance) =>
    element.kind === 'pipe' &&
    element.bore !== null &&
    Math.abs(flow) > limit * (Math.PI / 4) * element.bore ** 2;
  const fast = [
    ...network.suction.filter(isFast(at(flows, 0))),
    ...network.branches.flatMap((branch, b) => branch.elements.filter(isFast(at(flows, b)))),
  ];
  return PIPEWORK.about('pipe-velocity', fast.map(pointer));
}

function splits({ branches }: Network, flows: readonly number[]): readonly PipeworkCaution[] {
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
    ...PIPEWORK.about('split-loss-missing', bare.map(pointer)),
    ...PIPEWORK.about(
      'tee-understated',
      understated.map(({ child }) => pointer(child)),
    ),
  ];
}
