/** The question for a design that invented terms ask. */
import type { DesignQuestion } from '../../../models/designs/search-designs.ts';
import { DEFAULT_LIMITS } from '../../../models/loop/limits.ts';
import type { Pump } from '../../../models/pump/pump.ts';
import { fitPump, type PumpModel } from '../../../models/pump/pump-model.ts';
import type { RandomDesign } from '../../random/design-question.ts';
import { pumpOfFigures } from '../../random/pump-figures.ts';
import { type WorkedDesign, prices as workedPrices } from '../../reference/worked-designs.ts';

export function fitted(pump: Pump): PumpModel {
  const fit = fitPump(pump);
  if (!fit.ok) throw new Error(JSON.stringify(fit.failure));
  return { entered: pump, fit: fit.value };
}

/** Costs of failures that none of these pumps states. */
const NO_FAILURES = { labourRate: 30, minutesPerFailure: 60 };

export function questionOf(design: RandomDesign): DesignQuestion {
  const { loop, prices, pumps, pipeVelocity, enforceNpsh, trimPrice, price, hoursPerDay } = design;
  const { years, discountRate, inflation, energyInflation } = design;
  return {
    ...{ loop, prices, pipeVelocity, trimPrice, price, hoursPerDay, elevation: 0 },
    candidates: pumps.map((figures, place) => ({
      pump: fitted(pumpOfFigures(`pump ${place}`, figures)),
      count: figures.count,
    })),
    limits: { ...DEFAULT_LIMITS, enforceNpsh },
    lifeCycle: { years, discountRate, inflation, energyInflation, ...NO_FAILURES },
  };
}

export function workedQuestion({ loop, candidates, terms }: WorkedDesign): DesignQuestion {
  const { years, discountRate, inflation, energyInflation, price, pipeVelocity, trimPrice } = terms;
  return {
    ...{ loop, prices: workedPrices, pipeVelocity, trimPrice, price, hoursPerDay: 24, elevation: 0 },
    candidates: candidates.map(({ pump, count }) => ({ pump: fitted(pump), count })),
    limits: DEFAULT_LIMITS,
    lifeCycle: { years, discountRate, inflation, energyInflation, ...NO_FAILURES },
  };
}
