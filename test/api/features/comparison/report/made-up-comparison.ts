/** A comparison with plain figures, for the tests of its pages and pictures. */
import type { ComparisonAnswer } from '../../../../../api/features/comparison/report/report-figures.ts';

type Option = ComparisonAnswer['options'][number];

const NOTHING = {
  purchase: 0,
  installation: 0,
  energy: 0,
  operation: 0,
  maintenance: 0,
  downtime: 0,
  environment: 0,
  disposal: 0,
} as const;

function option(
  name: string,
  { first, yearly }: { readonly first: number; readonly yearly: number },
): Option {
  const years = Array.from({ length: 11 }, (_, year) => {
    const total = year === 0 ? first : yearly;
    const elements = { ...NOTHING, ...(year === 0 ? { purchase: first } : { energy: yearly }) };
    return {
      year,
      elements,
      total,
      presentValue: total,
      runningCost: year === 0 ? 0 : yearly,
      cumulativePresentValue: first + year * yearly,
    };
  });
  const presentValue = first + 10 * yearly;
  return {
    name,
    feasible: true,
    presentValue,
    presentValueInterval: { low: presentValue - 30, high: presentValue + 90 },
    elements: { ...NOTHING, purchase: first, energy: 10 * yearly },
    yearByYear: years,
    payback: null,
    breakEvenPrice: null,
    breakEvenValueAtRisk: null,
    annualEnergy: 1000,
    annualCost: yearly,
    upkeep: { pumpCount: 1, annualHours: 1.5, annualCost: 45 },
    annualExpectedLoss: { value: 50, low: 6, high: 170 },
    assemblies: [
      {
        loop: { id: 'loop-1', name: 'Seahorse bank' },
        pump: { id: 'pump-1', name: 'Canister 250' },
        count: 1,
        new: true,
        setting: 53,
        settingFrom: 'recommended',
        feasible: true,
        detail: null,
        power: 40,
        annualEnergy: 350,
        annualCost: 73.5,
        remainingShare: 0,
        failuresPerDeviceYear: { value: 0.07, low: 0.01, high: 0.24 },
        annualUpkeepHours: 1.5,
        purchaseCost: first,
        expectedLifeYears: 8,
        ageYears: 0,
      },
    ],
    cautions: [],
  };
}

/** Nothing down and 400 a year, or 900 down and 100 a year: level after three years, 2100 less over ten. */
export function madeUpComparison(change: Partial<ComparisonAnswer> = {}): ComparisonAnswer {
  return {
    id: 'comparison-1',
    createdAt: '2026-01-15T12:00:00.000Z',
    name: 'Three small pumps or one',
    stale: false,
    currency: 'EUR',
    options: [
      option('Three small', { first: 0, yearly: 400 }),
      { ...option('One large', { first: 900, yearly: 100 }), payback: { simple: 3, discounted: 3 } },
    ],
    cheapest: 1,
    breakEvenPrice: 0.09,
    breakEvenValueAtRisk: 9200,
    sensitivity: [
      {
        input: 'energy-price',
        savingIfLower: 1560,
        savingIfHigher: 2640,
        largestChange: 540,
        changesCheapest: false,
      },
      {
        input: 'purchase-prices',
        savingIfLower: 2280,
        savingIfHigher: 1920,
        largestChange: 180,
        changesCheapest: false,
      },
    ],
    assumptions: {
      years: 10,
      discountRate: 0,
      inflation: 0,
      energyInflation: 0,
      labourRate: 30,
      price: 0.21,
      tariff: null,
      minutesPerFailure: 120,
      notes: ['Canister 250 states no failures: none are expected.'],
    },
    summary: 'One large costs least over 10 years: 1900 EUR against 4000 EUR, back after 3 years.',
    cautions: [
      {
        code: 'electricity-near-water',
        severity: 'warning',
        detail: 'Mains electricity beside water.',
        source: 'common practice',
      },
    ],
    basis: {
      modelVersion: '1',
      loops: [{ id: 'loop-1', version: 2 }],
      pumps: [{ id: 'pump-1', version: 3 }],
      tariffs: [],
      schedules: [],
    },
    ...change,
  };
}
