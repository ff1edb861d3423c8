/** Finds where a pump curve crosses a system curve. */

import { type CurveAt, type Gap, gapBetween, hiddenExtreme } from './curve-gap.ts';
import { findRoot, type RootFailure } from './find-root.ts';
import { failed, type Result, success } from './result.ts';

export interface Intersection {
  /** [m3/s], above 0. */
  readonly flow: number;
  /** [m] */
  readonly head: number;
  /** The pump exceeds the system before and falls short after: a disturbed flow returns. */
  readonly stable: boolean;
}

/** Why no crossing was found: the flow [m3/s] that the search reached after its doublings [-]. */
export type IntersectionsFailure =
  | RootFailure
  | { readonly code: 'no-end'; readonly flow: number; readonly doublings: number };

export interface IntersectionsQuestion {
  /** Head [m] and slope [m/(m3/s)] of the pump at a flow [m3/s]; must fall for good in the end. */
  readonly pumpHead: CurveAt;
  /** Of the system: strictly rising. It may be costly. */
  readonly systemHead: CurveAt;
  /** Flows [m3/s] at which the pump curve turns, ascending, at the speed asked about. */
  readonly turningFlows: readonly number[];
  /** The largest flow of the pump's data [m3/s] at that speed: the first try for the end of the search. */
  readonly flowScale: number;
  /** Where a crossing is expected [m3/s]. */
  readonly guess?: number | undefined;
}

/** Where the pump rises, the difference may cross zero more than once: it is looked at in this many pieces. */
const RISING_PIECES = 32;
const DOUBLING_LIMIT = 64;

/**
 * All flows above 0 at which a pump curve meets a strictly rising system curve, ascending, each with its head and
 * stability.
 *
 * Where the pump falls, the difference of heads falls strictly: one bracketed root at most a piece, five to eight
 * evaluations of the system. Where it rises, the piece is scanned in 32 steps, and a step whose slopes show an extreme
 * is looked into as well. The last piece ends where the pump is below the system, found by doubling from `flowScale`.
 * Flows to 1e-12 relative. A curve that starts at or below the system may still cross it later.
 *
 * Errors: `no-end` when 64 doublings do not bring the pump below the system; those of `findRoot`.
 */
export function intersections(
  question: IntersectionsQuestion,
): Result<readonly Intersection[], IntersectionsFailure> {
  const gapAt = gapBetween(question);
  const gaps = [gapAt(0)];
  for (const flow of question.turningFlows) gaps.push(...gapsUpTo(flow, { known: gaps, question }));
  const end = lastGap(gaps, question);
  if (!end.ok) return end;

  const nodes = [...gaps, end.value];
  const crossings: Intersection[] = [];
  for (const [index, high] of nodes.entries()) {
    const low = index === 0 ? undefined : nodes[index - 1];
    if (low === undefined || low.difference > 0 === high.difference > 0) continue;
    const root = findRoot({
      evaluate: (flow) => {
        const gap = gapAt(flow);
        return { value: gap.difference, slope: gap.slope };
      },
      low: low.flow,
      high: high.flow,
      lowValue: low.difference,
      highValue: high.difference,
      guess: isInside(question.guess, { low, high }) ? question.guess : parabolicFlow({ low, high }),
    });
    if (!root.ok) return root;
    const flow = root.value.root;
    if (flow > 0) crossings.push({ flow, head: question.pumpHead(flow).head, stable: low.difference > 0 });
  }
  return success(crossings);
}

/** The gaps to look at after the last known one, up to a turning flow. */
function gapsUpTo(
  flow: number,
  { known, question }: { readonly known: readonly Gap[]; readonly question: IntersectionsQuestion },
): readonly Gap[] {
  const gapAt = gapBetween(question);
  const from = known.at(-1) ?? gapAt(0);
  if (question.pumpHead((from.flow + flow) / 2).slope <= 0) return [gapAt(flow)];
  const gaps: Gap[] = [];
  let low = from;
  for (let piece = 1; piece <= RISING_PIECES; piece += 1) {
    const high = gapAt(from.flow + ((flow - from.flow) * piece) / RISING_PIECES);
    gaps.push(...hiddenExtreme(gapAt, { low, high }), high);
    low = high;
  }
  return gaps;
}

/** A gap past every crossing. */
function lastGap(gaps: readonly Gap[], question: IntersectionsQuestion): Result<Gap, IntersectionsFailure> {
  const gapAt = gapBetween(question);
  const start = gaps.at(-1) ?? gapAt(0);
  if (start.difference <= 0) return success(start);
  let flow = Math.max(question.flowScale, 2 * start.flow);
  for (let doublings = 0; doublings < DOUBLING_LIMIT; doublings += 1) {
    const gap = gapAt(flow);
    if (gap.difference <= 0) return success(gap);
    flow *= 2;
  }
  return failed({ code: 'no-end', flow, doublings: DOUBLING_LIMIT });
}

/** Both curves are near parabolas in flow, so their difference crosses zero near where a parabola through the ends does. */
const parabolicFlow = ({ low, high }: { readonly low: Gap; readonly high: Gap }): number =>
  Math.sqrt(
    low.flow ** 2 + ((high.flow ** 2 - low.flow ** 2) * low.difference) / (low.difference - high.difference),
  );

const isInside = (
  flow: number | undefined,
  { low, high }: { readonly low: Gap; readonly high: Gap },
): flow is number => flow !== undefined && flow > low.flow && flow < high.flow;
