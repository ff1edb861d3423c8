/** States what an option costs, in today's money, before time is taken into account. */
import type { Ownership } from './ownership.ts';

/** The cost elements of the life-cycle cost method, by its names. */
export const COST_ELEMENTS = [
  'purchase',
  'installation',
  'energy',
  'operation',
  'maintenance',
  'downtime',
  'environment',
  'disposal',
] as const;

export type CostElement = (typeof COST_ELEMENTS)[number];

export type ByElement = Readonly<Record<CostElement, number>>;

/** A cost of `year` (0 is now), and then every so many years. */
export interface ExtraCost {
  readonly element: CostElement;
  readonly cost: number;
  readonly year: number;
  readonly everyYears?: number | undefined;
}

export interface OptionCosts {
  readonly devices: readonly Ownership[];
  /** kWh a year, and money per kWh of them. */
  readonly energy: number;
  readonly energyPrice: number;
  /** Hours that people give to its devices in a year, those that failures make among them; money an hour. */
  readonly attentionHours: number;
  readonly failureHours: number;
  readonly labourRate: number;
  /** Money of parts a year. */
  readonly parts: number;
  readonly extras: readonly ExtraCost[];
  /** Money that one failure may cost at most, and how often a year it does: expected loss = value x losses. */
  readonly valueAtRisk: number;
  readonly lossesPerYear: number;
}

/** What every year costs alike. */
export const yearlyCosts = (option: OptionCosts): Pick<ByElement, 'energy' | 'maintenance' | 'downtime'> => ({
  energy: option.energy * option.energyPrice,
  maintenance: option.attentionHours * option.labourRate + option.parts,
  downtime: option.valueAtRisk * option.lossesPerYear,
});
