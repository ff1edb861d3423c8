/** Why a candidate has no design. */
import { CRITERION_REASONS, type CriterionReason } from '../selection/criterion.ts';
import type { PipeworkCosts } from './pipework-costs.ts';
import type { Offer } from './pump-offers.ts';

/** In the order in which they are reported. */
export const DESIGN_REASONS = ['no-price', 'pipe-velocity', ...CRITERION_REASONS, 'no-setting'] as const;

export type DesignReason = (typeof DESIGN_REASONS)[number];

/** A condition where it comes nearest to holding, in the unit of what it judges. */
export interface Shortcoming {
  readonly reason: CriterionReason;
  /** The outlet that decides, where one does. */
  readonly outlet: string | null;
  /** [%] */
  readonly setting: number;
  /** [as judged] */
  readonly value: number;
  /** [as value] */
  readonly limit: number;
}

export interface DesignRejection {
  /** [-] */
  readonly candidate: number;
  readonly reasons: readonly DesignReason[];
  readonly shortcomings: readonly Shortcoming[];
}

interface Nearest extends Shortcoming {
  readonly clearance: number;
}

/**
 * Each condition that holds at no setting of a candidate, by its place [-], where it comes nearest. `not-enough-head` compares the head given with the least
 * that any pipework requires, `npsh` the head that is to spare with the least that any suction loses.
 */
export function rejectionOf(
  candidate: number,
  offers: readonly Offer[],
  { frontier, leastSuctionLoss }: Pick<PipeworkCosts, 'frontier' | 'leastSuctionLoss'>,
): DesignRejection {
  const leastHead = frontier.heads[0] ?? Number.POSITIVE_INFINITY;
  const nearest = new Map<CriterionReason, Nearest>();
  const judge = (judged: Nearest): void => {
    const before = nearest.get(judged.reason);
    if (before === undefined || judged.clearance > before.clearance) nearest.set(judged.reason, judged);
  };
  for (const { pump, head, suctionLoss, judgements } of offers) {
    const { setting } = pump;
    for (const judgement of judgements) judge({ ...judgement, setting });
    judge({ ...atLeast(head, leastHead), reason: 'not-enough-head', setting, outlet: null });
    if (suctionLoss < Number.POSITIVE_INFINITY) {
      judge({ ...atLeast(suctionLoss, leastSuctionLoss), reason: 'npsh', setting, outlet: null });
    }
  }
  const shortcomings = CRITERION_REASONS.flatMap((reason) => {
    const one = nearest.get(reason);
    return one === undefined || one.clearance >= 0 ? [] : [one];
  });
  const reasons = shortcomings.map(({ reason }) => reason);
  return { candidate, reasons: reasons.length > 0 ? reasons : ['no-setting'], shortcomings };
}

const atLeast = (value: number, limit: number) => ({ value, limit, clearance: value - limit });
