/** Names what of a duty could not be judged, since nobody entered what it takes. */
import { findPipe } from '../components/pipe-sizes.ts';
import type { CompiledLoop } from '../network/compiled-loop.ts';
import type { Pump } from '../pump/pump.ts';

/** In the order in which answers list them. */
export const CHECKS = ['npsh', 'motor', 'minimum-flow', 'surge', 'line-pressure'] as const;

export type Check = (typeof CHECKS)[number];

/**
 * The checks that a duty of a pump on a loop has not had: `npsh` without points or with a suction that is not known, `motor`
 * without a rated power, `minimum-flow` without a least flow, `surge` where a discharge pipe has no rating or none is
 * known, `line-pressure` where no run states its highest elevation.
 */
export function notChecked(
  { network }: Pick<CompiledLoop, 'network'>,
  pump: Pick<Pump, 'npshPoints' | 'ratedPower' | 'flowLimits'>,
): readonly Check[] {
  const branches = network?.branches ?? [];
  const pipes = branches.flatMap(({ elements }) => elements.filter(({ kind }) => kind === 'pipe'));
  const isMissing: Readonly<Record<Check, boolean>> = {
    npsh: pump.npshPoints === undefined || network === null,
    motor: pump.ratedPower === undefined,
    'minimum-flow': pump.flowLimits?.min === undefined,
    surge: pipes.length === 0 || pipes.some(({ name }) => name === null || findPipe(name) === undefined),
    'line-pressure': branches.every(({ highestElevation }) => highestElevation === null),
  };
  return CHECKS.filter((check) => isMissing[check]);
}
