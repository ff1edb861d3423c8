/** Finds what would be chosen without the limit of the intake screen, and the screen that would allow it. */

import type { SampledLoop } from '../duty/sampled-loop.ts';
import { type ScreenVelocities, screenVelocities } from '../intake/screen.ts';
import { sizeScreen } from '../intake/screen-size.ts';
import type { Limits } from '../loop/limits.ts';
import type { IntakeScreen } from '../loop/loop.ts';
import type { Running } from './options.ts';
import {
  type Candidate,
  type Ranked,
  type Rejected,
  type Selection,
  select,
  type WorstCase,
} from './select.ts';

/** What the limit of the screen rules out. */
export interface WithoutScreenLimit {
  readonly ranked: Ranked;
  /** Through the part-clogged screen as it is [m/s]. */
  readonly velocities: ScreenVelocities;
  /**
   * The least screen of the same kind whose mean and peak velocity are within the limit; null where it takes too
   * many.
   */
  readonly screen: IntakeScreen | null;
}

/**
 * Searches those candidates again that the screen had a part in rejecting, without its limit.
 *
 * Null where the choice stays the same, or no candidate was rejected for the screen.
 */
export function withoutScreenLimit({
  selection,
  ...question
}: {
  readonly selection: Selection;
  readonly sampled: SampledLoop;
  readonly candidates: readonly Candidate[];
  readonly limits: Limits;
  readonly running: Running;
  readonly worstCase?: WorstCase | undefined;
}): WithoutScreenLimit | null {
  const { sampled, candidates, limits } = question;
  const { throughSlotVelocity: limit, cloggedFraction } = limits;
  const screen = sampled.loop.entered.intake?.screen;
  const held = selection.rejected.filter(isHeldByScreen).map(({ candidate }) => candidate);
  if (screen === undefined || limit === null || held.length === 0) return null;
  const chosen = selection.ranking[0]?.candidate;
  const places = chosen === undefined ? held : [...held, chosen].toSorted((a, b) => a - b);
  const again = select({
    ...question,
    candidates: places.flatMap((place) => candidates[place] ?? []),
    limits: { ...limits, throughSlotVelocity: null },
  });
  const [first] = again.ranking;
  const candidate = first === undefined ? undefined : places[first.candidate];
  if (first === undefined || candidate === undefined || candidate === chosen) return null;
  const { flow } = first.duty;
  return {
    ranked: { ...first, candidate },
    velocities: screenVelocities({ screen, flow, cloggedFraction }),
    screen: gentleScreen({ screen, flow, cloggedFraction, limit }),
  };
}

function isHeldByScreen({ outcome: { failing, clash } }: Rejected): boolean {
  return [...failing, ...(clash ?? [])].some(({ reason }) => reason === 'screen-velocity');
}

/** Cylinders as many as it takes, flat screens and boxes as many as there are. */
function gentleScreen({
  screen,
  flow,
  ...need
}: {
  readonly screen: IntakeScreen;
  readonly flow: number;
  readonly cloggedFraction: number;
  readonly limit: number;
}): IntakeScreen | null {
  const sharing = screen.shape === 'cylinder' ? 1 : screen.count;
  const sized = sizeScreen({ ...need, screen, flow: flow / sharing });
  if (!sized.ok) return null;
  return { ...sized.value.screen, count: sized.value.screen.count * sharing };
}
