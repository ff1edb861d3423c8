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

/** A cost [money] of a year (0 is now), and then every so many years [years]. */
export interface ExtraCost {
  readonly element: CostElement;
  readonly cost: number;
  readonly year: number;
  readonly everyYears?: number | undefined;
}

export interface OptionCosts {
  readonly devices: readonly Ownership[];
  /** [kWh/year] */
  readonly energy: number;
  /** [money/kWh] */
  readonly energyPrice: number;
  /** That people give to its devices, those that failures make among them [h/year]. */
  readonly attentionHours: number;
  /** Of these, those that failures make [h/year]. */
  readonly failureHours: number;
  /** [money/h] */
  readonly labourRate: number;
  /** [money/year] */
  readonly parts: number;
  readonly extras: readonly ExtraCost[];
  /** That one failure may cost at most [money]: expected loss = value x losses. */
  readonly valueAtRisk: number;
  /** [1/year] */
  readonly lossesPerYear: number;
}

/** What every year costs alike. */
export const yearlyCosts = (option: OptionCosts): Pick<ByElement, 'energy' | 'maintenance' | 'downtime'> => ({
  energy: option.energy * option.energyPrice,
  maintenance: option.attentionHours * option.labourRate + option.parts,
  downtime: option.valueAtRisk * option.lossesPerYear,
});
