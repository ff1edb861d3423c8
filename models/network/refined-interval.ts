/** Halves intervals of a sampled system until states between follow from those at the ends. */
import { at } from '../../curves/at.ts';
import { cubic, type Interval, type Sloping } from './interval.ts';
import type { System, SystemState } from './system.ts';

/** An interval, and its two halves once its middle was looked at; it is its own only part where it is smooth. */
export interface RefinedInterval extends Interval {
  /** Made so far [-]. */
  readonly halvings: number;
  parts(): readonly [RefinedInterval, RefinedInterval] | 'smooth';
}

/** A kink that is left after so many halvings lies within 2e-5 of its flow. */
const MOST_HALVINGS = 12;
/** What interpolation may be off by, as shares of a flow, of the total flow, of slope x flow for a head, of a head. */
const OFF = { ofFlow: 1e-5, ofTotal: 1e-9, ofRise: 1e-5, ofHead: 1e-12 } as const;
/** A cubic whose slope is wrong in its middle is off by this share of slope x width at most. */
const OFF_BY_SLOPE = 1 / 8;

/**
 * An interval of a system with kinks, after a number of halvings [-]: where a valve opens or an outlet begins to flow,
 * slopes change at once, which no cubic from sample to sample follows. It counts as smooth where the exact state in its
 * middle has the interpolated flows, heads and slopes.
 */
export function refinedInterval(system: System, { lower, upper }: Interval, halvings = 0): RefinedInterval {
  let known: readonly [RefinedInterval, RefinedInterval] | 'smooth' | undefined;
  return {
    lower,
    upper,
    halvings,
    parts() {
      if (known !== undefined) return known;
      const middle = system.stateAt((lower.flow + upper.flow) / 2, lower);
      known = isSmooth({ lower, upper }, middle)
        ? 'smooth'
        : [
            refinedInterval(system, { lower, upper: middle }, halvings + 1),
            refinedInterval(system, { lower: middle, upper }, halvings + 1),
          ];
      return known;
    },
  };
}

/** The smooth part around a flow [m3/s]; null where even the smallest part has a kink. */
export function smoothPart(interval: RefinedInterval, flow: number): Interval | null {
  let part = interval;
  while (part.halvings < MOST_HALVINGS) {
    const parts = part.parts();
    if (parts === 'smooth') return part;
    part = flow < parts[0].upper.flow ? parts[0] : parts[1];
  }
  return null;
}

/** The states at the ends of all smooth parts of an interval, and of those parts that are not halved any more. */
export function statesOf(interval: RefinedInterval): readonly SystemState[] {
  const parts = interval.halvings < MOST_HALVINGS ? interval.parts() : 'smooth';
  return parts === 'smooth' ? [interval.lower, interval.upper] : parts.flatMap(statesOf);
}

function isSmooth({ lower, upper }: Interval, middle: SystemState): boolean {
  const width = upper.flow - lower.flow;
  const isNear = (of: (state: SystemState) => Sloping, allowed: number): boolean => {
    const exact = of(middle);
    const { value, slope } = cubic({ from: of(lower), to: of(upper), width }, 1 / 2);
    const bySlope = OFF_BY_SLOPE * width * Math.abs(slope - exact.slope);
    return Math.max(Math.abs(value - exact.value), bySlope) <= allowed;
  };
  const { flow, head, slope, outletFlows } = middle;
  const isHeadNear = isNear(
    (state) => ({ value: state.head, slope: state.slope }),
    OFF.ofRise * flow * Math.abs(slope) + OFF.ofHead * Math.abs(head),
  );
  return (
    isHeadNear &&
    outletFlows.every((own, i) =>
      isNear(
        (state) => ({ value: at(state.outletFlows, i), slope: at(state.outletSlopes, i) }),
        OFF.ofFlow * Math.abs(own) + OFF.ofTotal * flow,
      ),
    )
  );
}
