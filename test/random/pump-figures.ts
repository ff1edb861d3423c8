/** An invented pump of known laws: H = H0 - a Q^2 at full speed and P = standby + W r^3. */
import type { Pump } from '../../models/pump/pump.ts';
import type { Draw } from './draw.ts';

/** Flows m3/s, heads m, powers W, of one pump at full speed. */
export interface PumpFigures {
  readonly largest: number;
  readonly shutoff: number;
  /** Head at the largest flow. */
  readonly head: number;
  readonly power: number;
  readonly standby: number;
  readonly price: number | null;
  readonly lifeYears: number;
  readonly least: number | null;
  readonly npsh: { readonly atRest: number; readonly atLargest: number } | null;
  readonly count: number;
  readonly settings: Pump['settings'];
}

/** About large enough for a flow [m3/s] at a head [m]. */
export function randomPumpFigures(
  draw: Draw,
  { flow, head }: { readonly flow: number; readonly head: number },
) {
  const count = draw.pick([1, 1, 2]);
  const largest = (flow * draw.between(1.05, 2.5)) / count;
  const shutoff = head * draw.between(0.8, 4);
  const figures: PumpFigures = {
    ...{ largest, shutoff, head: shutoff * draw.between(0.1, 0.6), count },
    power: 9.8 * 1020 * largest * shutoff * draw.between(0.7, 1.5),
    standby: draw.pick([0, 3]),
    price: draw.chance(0.1) ? null : Math.round(draw.between(100, 900)),
    lifeYears: draw.whole(3, 12),
    least: draw.chance(0.2) ? largest * draw.between(0.2, 0.7) : null,
    npsh: draw.chance(0.6) ? { atRest: draw.between(1, 4), atLargest: draw.between(5, 9.5) } : null,
    settings: { min: draw.pick([30, 40]), max: 100, step: draw.pick([1, 2, 5]) },
  };
  return figures;
}

const SHARES = [0, 0.2, 0.4, 0.6, 0.8, 1];

/** Entered at points that its laws pass through exactly. */
export const pumpOfFigures = (name: string, figures: PumpFigures): Pump => {
  const { largest, shutoff, head, power, standby, price, lifeYears, least, npsh, settings } = figures;
  return {
    name,
    headPoints: SHARES.map((share) => ({
      flow: share * largest,
      head: shutoff - (shutoff - head) * share ** 2,
      setting: 100,
    })),
    powerPoints: [100, 80, 60, 40].map((setting) => ({
      setting,
      power: standby + power * (setting / 100) ** 3,
    })),
    settings,
    standbyPower: standby,
    expectedLifeYears: lifeYears,
    ...(price === null ? {} : { price }),
    ...(least === null ? {} : { flowLimits: { min: least } }),
    ...(npsh === null
      ? {}
      : { npshPoints: [0, 3].map((share) => ({ flow: share * largest, head: npshAt(npsh, share) })) }),
  };
};

const npshAt = ({ atRest, atLargest }: NonNullable<PumpFigures['npsh']>, share: number): number =>
  atRest + (atLargest - atRest) * share;
