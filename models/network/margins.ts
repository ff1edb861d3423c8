/** Finds how far each outlet is above its required flow. */
import { at } from '../../curves/at.ts';
import type { SystemOutlet } from './system.ts';

/** What an outlet receives. */
export interface OutletFigures {
  readonly name: string;
  /** [m3/s]; negative where water runs backwards. */
  readonly flow: number;
  /** [m3/s]; null where nothing is required. */
  readonly requiredFlow: number | null;
  /** [m3/s]; null without one. */
  readonly maximumFlow: number | null;
  /** flow/requiredFlow - 1 [-]; null without a requirement above 0. */
  readonly margin: number | null;
  /** Mean velocity of the leaving stream [m/s]; null where no nozzle or pipe is known. */
  readonly velocity: number | null;
}

/** The figures of all outlets at their flows [m3/s], in the order of the loop. */
export function outletFigures(
  outlets: readonly SystemOutlet[],
  flows: readonly number[],
): readonly OutletFigures[] {
  return outlets.map(({ name, requiredFlow, maximumFlow, area }, i) => {
    const flow = at(flows, i);
    const hasRequirement = requiredFlow !== null && requiredFlow > 0;
    return {
      name,
      flow,
      requiredFlow,
      maximumFlow,
      margin: hasRequirement ? flow / requiredFlow - 1 : null,
      velocity: area === null ? null : flow / area,
    };
  });
}

/** Margins this near are one: outlets that are alike differ in their last digits. */
const ALIKE = 1e-9;

/** Name of the outlet with the smallest margin, the first of several alike; null where none has a requirement above 0. */
export function limitingOutlet(outlets: readonly OutletFigures[]): string | null {
  const least = Math.min(...outlets.map(({ margin }) => margin ?? Number.POSITIVE_INFINITY));
  return outlets.find(({ margin }) => margin !== null && margin <= least + ALIKE)?.name ?? null;
}

/** Whether any outlet requires a flow above 0. */
export function hasRequirement(outlets: readonly SystemOutlet[]): boolean {
  return outlets.some(({ requiredFlow }) => requiredFlow !== null && requiredFlow > 0);
}
