/** Gives the cautions about the flows in pipes and splits of a loop whose pipework is known. */
import { at } from '../../curves/at.ts';
import type { ExactDuty } from '../duty/duty-point.ts';
import { pointerTo } from '../loop/document-path.ts';
import type { Limits } from '../loop/limits.ts';
import type { CompiledLoop } from '../network/compiled-loop.ts';
import type { Network, NetworkBranch, PlacedResistance } from '../network/network.ts';
import { velocityIn } from '../network/velocity-in.ts';
import { type CautionOf, COMMON_PRACTICE, topic } from './topic.ts';

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
  'pipe-velocity-low': {
    severity: 'note',
    sentence:
      'Water runs so slowly in a pipe that dirt settles there. Choose a smaller pipe, or flush it from time to time.',
    source: `${COMMON_PRACTICE}: below 0.3 m/s; not looked up`,
  },
});

type PipeworkCaution = CautionOf<typeof PIPEWORK>;

/** Velocity in a pipe below which dirt settles [m/s]. */
const VELOCITY_LEAST = 0.3;

/** Share of the combined flow below which the fixed K of a tee fitting understates its loss. */
const LEAST_TEE_SHARE = 0.5;

/** Judges the flows of a solved state; `pipeVelocity` [m/s] is the limit for every pipe. */
export function pipeworkCautions(
  { network }: CompiledLoop,
  { pipeVelocity: limit }: Pick<Limits, 'pipeVelocity'>,
  { state, deadHead }: Pick<ExactDuty, 'state' | 'deadHead'>,
): readonly PipeworkCaution[] {
  const flows = state?.network?.flows;
  if (network === null || flows === undefined) return [];
  return [
    ...pipeVelocity(network, flows, limit),
    ...(deadHead ? [] : pipeVelocityLow(network, flows)),
    ...splits(network, flows),
  ];
}

function pipeVelocity(network: Network, flows: readonly number[], limit: number): readonly PipeworkCaution[] {
  const pipes = pipeVelocities(network, flows).filter(({ velocity }) => velocity > limit);
  return PIPEWORK.worst(
    'pipe-velocity',
    pipes.map(({ pointer, velocity }) => ({
      ...{ subject: pointer, pointer, value: velocity, limit, quantity: 'velocity', excess: velocity },
    })),
  );
}

/** Of the pipes that water passes. */
function pipeVelocityLow(network: Network, flows: readonly number[]): readonly PipeworkCaution[] {
  const isSlow = ({ velocity }: PipeVelocity) => velocity > 0 && velocity < VELOCITY_LEAST;
  return PIPEWORK.worst(
    'pipe-velocity-low',
    pipeVelocities(network, flows)
      .filter(isSlow)
      .map(({ pointer, velocity }) => ({
        ...{ subject: pointer, pointer, value: velocity, limit: VELOCITY_LEAST },
        ...{ quantity: 'velocity', excess: -velocity },
      })),
  );
}

interface PipeVelocity {
  readonly pointer: string;
  /** [m/s] */
  readonly velocity: number;
}

/** How fast water runs in each pipe, either way. */
function pipeVelocities(network: Network, flows: readonly number[]): readonly PipeVelocity[] {
  const inRun = (elements: readonly PlacedResistance[], flow: number) =>
    elements.flatMap(({ kind, bore, path }) =>
      kind !== 'pipe' || bore === null
        ? []
        : [{ pointer: pointerTo(path), velocity: velocityIn(bore, flow) }],
    );
  return [
    ...inRun(network.suction, at(flows, 0)),
    ...network.branches.flatMap(({ elements }, b) => inRun(elements, at(flows, b))),
  ];
}

const placeAt = (pointer: string) => ({ subject: pointer, pointer, excess: 0 });

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
    childrenOf(branch).flatMap(({ child, flow }) => {
      const share = Math.abs(flow) / Math.abs(at(flows, b));
      return hasTee(child) && share < LEAST_TEE_SHARE ? [{ pointer: pointerTo(child.path), share }] : [];
    }),
  );
  return [
    ...PIPEWORK.worst(
      'split-loss-missing',
      bare.map(({ path }) => placeAt(pointerTo(path))),
    ),
    ...PIPEWORK.worst(
      'tee-understated',
      understated.map(({ pointer, share }) => ({
        ...{ ...placeAt(pointer), value: share, limit: LEAST_TEE_SHARE, excess: -share },
      })),
    ),
  ];
}
