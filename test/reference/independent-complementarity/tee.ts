/** The head that the sides and the straight run of a 90 degree tee lose (Crane TP-410, 2009, diverging tee). */

/** Factors of squared flows: velocity head of the whole leg, and of the side in its own bore; ratio of the bores. */
export interface Side {
  readonly whole: number;
  readonly own: number;
  readonly ratio: number;
}

/** Flow [m3/s] of one side, and of the leg that enters the node. */
export interface SideFlows {
  readonly side: number;
  readonly whole: number;
}

const EQUAL = 1 - 1e-9;

/** Share of the whole flow; all of it where nothing enters the node from the leg. */
const shareOf = ({ side, whole }: SideFlows): number => (whole > 0 ? Math.min(side / whole, 1) : 1);

const velocityHead = (factor: number, flow: number): number => factor * Math.max(0, flow) ** 2;

/** What the law adds to v_c^2/2g that grows with the side's own velocity alone. */
export function ownHead({ own, ratio }: Side, side: number): number {
  if (side < 0) return -0.6 * own * side ** 2;
  if (ratio >= EQUAL) return 0.6 * own * side ** 2;
  return (ratio <= 2 / 3 ? 1 : 0.3) * own * side ** 2;
}

/** What the share of the flow multiplies the whole loss by. */
export function gain({ ratio }: Side, flows: SideFlows): number {
  if (ratio >= EQUAL || ratio ** 2 <= 2 / 3 || flows.side <= 0) return 1;
  return 1 + 0.3 * shareOf(flows) ** 2;
}

/** Head [m] from the node to the start of a side's run; at no flow the least that must be overcome to flow out. */
export function sideDrop(side: Side, flows: SideFlows): number {
  if (flows.side < 0) return ownHead(side, flows.side);
  return gain(side, flows) * (velocityHead(side.whole, flows.whole) + ownHead(side, flows.side));
}

interface Run {
  readonly whole: number;
  /** Ratio of the widest side's bore to the leg's. */
  readonly widest: number;
}

/** Head [m] from the node to the straight run when `side` leaves by all sides together; negative is a gain. */
export function runDrop({ whole, widest }: Run, flows: SideFlows): number {
  if (widest >= EQUAL || flows.whole <= 0 || flows.side <= 0) return 0;
  const share = shareOf(flows);
  const factor = widest ** 2 <= 0.4 ? 0.4 : (share <= 0.5 ? 2 : 0.3) * (2 * share - 1);
  return factor * share ** 2 * velocityHead(whole, flows.whole);
}
