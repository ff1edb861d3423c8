/** Small questions for a design that single rules are tried on. */
import type { DesignBranch, DesignElement, DesignLoop } from '../../../models/designs/design-loop.ts';
import { type Designs, designs } from '../../../models/designs/designs.ts';
import type { DesignQuestion } from '../../../models/designs/search-designs.ts';
import { DEFAULT_LIMITS } from '../../../models/loop/limits.ts';
import type { Outlet } from '../../../models/loop/loop.ts';
import type { Pump } from '../../../models/pump/pump.ts';
import { type PumpFigures, pumpOfFigures } from '../../random/pump-figures.ts';
import { fitted } from './question.ts';

export const LITRE_PER_HOUR = 1 / 3.6e6;

/** Bores [mm] of the list of prices, a unit of money a metre for each centimetre. */
const BORES = [20, 25, 32, 40, 50, 63];

export const bore = (millimetres: number) => ({ insideDiameter: millimetres / 1000 });

export const prices = BORES.map((millimetres) => ({ pipe: bore(millimetres), price: millimetres / 10 }));

export const list = (bores: readonly number[], length: number): DesignElement => ({
  ...{ pipes: bores.map(bore), length },
});

export const pipe = (millimetres: number, length: number): DesignElement => ({
  ...{ pipe: bore(millimetres), length },
});

export const outlet = (name: string, litresPerHour: number, facts: Partial<Outlet> = {}): Outlet => ({
  ...{ name, requiredFlow: litresPerHour * LITRE_PER_HOUR },
  ...facts,
});

export const loopOf = (discharge: DesignBranch, facts: Partial<DesignLoop> = {}): DesignLoop => ({
  ...{ name: 'small loop', water: { temperature: 25, salinity: 35 }, pumpElevation: 0, staticHead: 0 },
  ...{ frictionMultiplier: 1, suction: [pipe(63, 1)], discharge, ...facts },
});

/** H = 6 m (1 - 0.7 (Q/9000 L/h)^2), 200 W, price 300. */
export const figures: PumpFigures = {
  ...{ largest: 9000 * LITRE_PER_HOUR, shutoff: 6, head: 1.8, power: 200, standby: 2, price: 300 },
  ...{ lifeYears: 5, least: null, npsh: null, count: 1, settings: { min: 30, max: 100, step: 1 } },
};

export const pumpOf = (facts: Partial<PumpFigures> = {}): Pump =>
  pumpOfFigures('pump', { ...figures, ...facts });

export function questionFor(loop: DesignLoop, facts: Partial<DesignQuestion> = {}): DesignQuestion {
  return {
    ...{ loop, prices, candidates: [{ pump: fitted(pumpOf()), count: 1 }], limits: DEFAULT_LIMITS },
    ...{ pipeVelocity: null, trimPrice: 10, price: 0.2, hoursPerDay: 24, elevation: 0 },
    lifeCycle: {
      ...{ years: 5, discountRate: 0, inflation: 0, energyInflation: 0 },
      ...{ labourRate: 30, minutesPerFailure: 60 },
    },
    ...facts,
  };
}

export function designsOf(loop: DesignLoop, facts: Partial<DesignQuestion> = {}): Designs {
  const found = designs(questionFor(loop, facts));
  if (!found.ok) throw new Error(JSON.stringify(found.failure));
  return found.value;
}
