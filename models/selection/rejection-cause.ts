/** Finds why a candidate fails, where that lies in the loop or in the pump's shutoff head rather than in its settings. */

import type { SampledLoop } from '../duty/sampled-loop.ts';
import type { DocumentPath } from '../loop/document-path.ts';
import { type ShutValve, shutValves } from '../loop/shut-valves.ts';
import { type PumpAtSetting, pumpAtSetting } from '../pump/pump-at-setting.ts';
import type { Judgement } from './criterion.ts';
import type { Candidate } from './select.ts';

/** Why a candidate fails; heads [m], setting [% of full]. */
export type RejectionCause =
  | { readonly code: 'shut-valve'; readonly path: DocumentPath; readonly outlet: string }
  /** The head that the loop needs before any water moves, against the most that the pump gives at no flow. */
  | {
      readonly code: 'lift-above-shutoff';
      readonly lift: number;
      readonly shutoff: number;
      readonly setting: number;
    }
  /** As above, although the drooping curve reaches the lift at a flow that the pump does not come to from rest. */
  | {
      readonly code: 'does-not-start';
      readonly lift: number;
      readonly shutoff: number;
      readonly summit: number;
      readonly setting: number;
    }
  /** The water falls to its outlets: `fall` is the head that is there without a pump. */
  | { readonly code: 'runs-by-itself'; readonly fall: number };

/**
 * The cause that lies in the loop or in the shutoff head of the pump; null where settings and limits are all there
 * is.
 */
export function rejectionCause(
  { loop, atRest }: Pick<SampledLoop, 'loop' | 'atRest'>,
  { pump, count }: Candidate,
  failing: readonly Judgement[],
): RejectionCause | null {
  const short = failing.find(({ reason }) => reason === 'not-enough-head');
  if (short !== undefined) {
    const shut = shutValves(loop.entered).find(({ outlets }) => isBefore(outlets, short.outlet));
    if (shut !== undefined) return named(shut, short.outlet);
    const { setting } = short;
    return atRest === null ? null : underLift(pumpAtSetting(pump, { setting, count }), atRest.head);
  }
  return atRest !== null && atRest.head < 0 ? { code: 'runs-by-itself', fall: -atRest.head } : null;
}

const isBefore = (outlets: readonly string[], outlet: string | null): boolean =>
  outlet !== null && outlets.includes(outlet);

const named = ({ path, outlets }: ShutValve, outlet: string | null): RejectionCause => ({
  code: 'shut-valve',
  path,
  outlet: outlet ?? outlets.join(', '),
});

function underLift(pump: PumpAtSetting, lift: number): RejectionCause | null {
  const { setting } = pump;
  const shutoff = pump.headAt(0).head;
  if (shutoff > lift) return null;
  const summit = Math.max(shutoff, ...pump.turningFlows.map((flow) => pump.headAt(flow).head));
  return summit > lift
    ? { code: 'does-not-start', lift, shutoff, summit, setting }
    : { code: 'lift-above-shutoff', lift, shutoff, setting };
}
