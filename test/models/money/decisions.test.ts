/** Paybacks, break-even figures, sensitivities, expected losses and attention. */
import { describe, expect, it } from 'vitest';
import { breakEvenPrice, breakEvenValueAtRisk } from '../../../models/money/break-even.ts';
import { deviceAttention } from '../../../models/money/device-attention.ts';
import { lossesPerYear } from '../../../models/money/expected-loss.ts';
import { lifeCycle } from '../../../models/money/life-cycle.ts';
import type { OptionCosts } from '../../../models/money/option-costs.ts';
import { payback } from '../../../models/money/payback.ts';
import { sensitivity } from '../../../models/money/sensitivity.ts';
import { expectClose } from '../../expect-close.ts';
import { mulberry32 } from '../../random/draw.ts';

const NOTHING: OptionCosts = {
  devices: [],
  energy: 0,
  energyPrice: 0.2,
  attentionHours: 0,
  failureHours: 0,
  labourRate: 30,
  parts: 0,
  extras: [],
  valueAtRisk: 0,
  lossesPerYear: 0,
};
const EXTRAS = [{ element: 'operation', cost: 2500, year: 2, everyYears: 2 }] as const;
const TERMS = { years: 10, discountRate: 0.05, inflation: 0, energyInflation: 0 };
const OLD = { ...NOTHING, energy: 2000 };
/** 600 now, and 200 a year less than the 400 of the old one. */
const NEW: OptionCosts = {
  ...NOTHING,
  energy: 1000,
  devices: [{ price: 600, lifeYears: null, isNew: true, ageYears: 0 }],
};

const paybackOf = (option: OptionCosts, reference = OLD, terms = TERMS) =>
  payback(lifeCycle(option, terms), lifeCycle(reference, terms));

describe('a payback', () => {
  it('is cost over yearly saving; discounted, n = -ln(1 - C i/S)/ln(1 + i)', () => {
    // Closed form of a uniform series; between the ends of years the service draws lines, within 0.02 years of it.
    const found = paybackOf(NEW);
    expectClose(found?.simple ?? Number.NaN, 3, { relative: 1e-12 });
    expectClose(found?.discounted ?? Number.NaN, -Math.log(1 - (600 * 0.05) / 200) / Math.log(1.05), {
      absolute: 0.02,
    });
  });

  it('counts what is paid at the end of a year no sooner', () => {
    // 600 more now and 150 a year less to run; the old one is bought anew for 400 at the end of year 2: 300 are back
    // when it comes, and then 700. A line through the ends of years would say 1 + 450/550.
    const worn = {
      ...OLD,
      energy: 1750,
      devices: [{ price: 400, lifeYears: 10, isNew: false, ageYears: 8 }],
    };
    const found = paybackOf(NEW, worn);
    expectClose(found?.simple ?? Number.NaN, 2, { relative: 1e-12 });
    // Of six months more at 400 a year than the lump leaves open: 900 - 150 - 150 - 400 = 200, and 200/150 of year 3 on.
    const dear = { ...NEW, devices: [{ price: 900, lifeYears: null, isNew: true, ageYears: 0 }] };
    expectClose(paybackOf(dear, worn)?.simple ?? Number.NaN, 2 + 200 / 150, { relative: 1e-12 });
  });

  it('counts what is paid later too', () => {
    // 1500 at the end of year 2 and 200 a year less: 200, 400 - 1500 = -1100, and 0 again after 2 + 5.5 years.
    const later = {
      ...NOTHING,
      energy: 1000,
      extras: [{ element: 'installation' as const, cost: 1500, year: 2 }],
    };
    expectClose(paybackOf(later)?.simple ?? Number.NaN, 7.5, { relative: 1e-12 });
  });

  it('takes extras of every year as running', () => {
    const cared = { ...OLD, extras: [{ element: 'operation' as const, cost: 100, year: 1, everyYears: 1 }] };
    expectClose(paybackOf(NEW, cared)?.simple ?? Number.NaN, 2, { relative: 1e-12 });
  });

  it('falls inside a year by a line', () => {
    expectClose(
      paybackOf({ ...NEW, devices: [{ price: 500, lifeYears: null, isNew: true, ageYears: 0 }] })?.simple ??
        0,
      2.5,
      { relative: 1e-12 },
    );
  });

  it('is at once where the option is cheaper from the start, never where it only costs', () => {
    expect(paybackOf({ ...NOTHING, energy: 1000 })).toEqual({ simple: 0, discounted: 0 });
    expect(paybackOf({ ...NEW, energy: 3000 })).toEqual({ simple: null, discounted: null });
  });

  it('may exist simply and not by present values', () => {
    const dear = { ...NEW, devices: [{ price: 1800, lifeYears: null, isNew: true, ageYears: 0 }] };
    const found = paybackOf(dear);
    expectClose(found?.simple ?? 0, 9, { relative: 1e-12 });
    expect(found?.discounted).toBeNull();
  });

  it('does not exist for what is cheaper at first and dearer in all', () => {
    const cheap = { ...NOTHING, energy: 3000 };
    expect(paybackOf(cheap, NEW)).toEqual({ simple: null, discounted: null });
  });

  it('does not exist between equals', () => {
    expect(paybackOf(OLD)).toBeNull();
  });
});

describe('a break-even', () => {
  it('price makes both present values equal: 600 = 1000 kWh x p x 7.72173', () => {
    // (P/A, 5 %, 10) = 7.7217 of compound-interest tables.
    const price = breakEvenPrice({ option: NEW, reference: OLD }, TERMS);
    expectClose(price ?? Number.NaN, 600 / 1000 / 7.72173, { relative: 1e-5 });
    const at = (one: OptionCosts) => lifeCycle({ ...one, energyPrice: price ?? 0 }, TERMS).presentValue;
    expectClose(at(NEW), at(OLD), { relative: 1e-12 });
  });

  it('price is null where none makes up for the rest', () => {
    expect(breakEvenPrice({ option: { ...NEW, energy: 3000 }, reference: OLD }, TERMS)).toBeNull();
    expect(breakEvenPrice({ option: OLD, reference: OLD }, TERMS)).toBeNull();
  });

  it('price is null between equal energies that differ by rounding alone', () => {
    // 3 x 0.1 is not 0.3.
    const rival = { option: { ...OLD, energy: 3 * 0.1, parts: 10 }, reference: { ...OLD, energy: 0.3 } };
    expect(breakEvenPrice(rival, TERMS)).toBeNull();
  });

  it('value at risk is where more failures cost as much as the option saves', () => {
    const frail = { ...NEW, lossesPerYear: 0.1 };
    const sound = { ...OLD, lossesPerYear: 0.02 };
    const value = breakEvenValueAtRisk({ option: frail, reference: sound }, TERMS);
    // (200 - 600/7.72173) a year over 0.08 losses a year.
    expectClose(value ?? Number.NaN, (200 - 600 / 7.721735) / 0.08, { relative: 1e-6 });
  });
});

describe('sensitivities', () => {
  it('are sorted by effect, each the saving with its input 20 % off', () => {
    const found = sensitivity({ option: NEW, reference: OLD }, TERMS);
    expect(found.map(({ input }) => input)).toEqual([
      'energy-price',
      'energy-of-option',
      'purchase-prices',
      'discount-rate',
    ]);
    const effects = found.map(({ largestChange: effect }) => effect);
    expect(effects).toEqual(effects.toSorted((a, b) => b - a));
    // 1000 kWh less at 0.24 instead of 0.2, ten years at 5 %.
    const price = found.find(({ input }) => input === 'energy-price');
    expectClose(price?.savingIfHigher ?? 0, 1000 * 0.24 * 7.721735 - 600, { relative: 1e-6 });
  });

  it('leave out what changes by rounding alone', () => {
    // Both have the same parts, which rise by inflation; the difference is in energy.
    const terms = { ...TERMS, inflation: 0.04, energyInflation: 0.04 };
    const found = sensitivity(
      {
        option: { ...NEW, devices: [], parts: 1234.56, extras: EXTRAS },
        reference: { ...OLD, parts: 1234.56, extras: EXTRAS },
      },
      terms,
    );
    expect(found.map(({ input }) => input)).not.toContain('inflation');
  });

  it('count the work of failures with failures, pipework with purchase', () => {
    const failing = {
      ...NEW,
      attentionHours: 5,
      failureHours: 4,
      extras: [{ element: 'purchase' as const, cost: 100, year: 0 }],
    };
    const found = sensitivity({ option: failing, reference: OLD }, TERMS);
    const effect = (input: string) => found.find((one) => one.input === input)?.largestChange ?? Number.NaN;
    // A fifth of 4 h at 30 in ten years at 5 %; a fifth of 600 and 100.
    expectClose(effect('failures'), 0.2 * 4 * 30 * 7.721735, { relative: 1e-6 });
    expectClose(effect('purchase-prices'), 140, { relative: 1e-9 });
  });

  it('say where the cheaper of the two changes', () => {
    const close = { ...NEW, devices: [{ price: 1400, lifeYears: null, isNew: true, ageYears: 0 }] };
    const found = sensitivity({ option: close, reference: OLD }, TERMS);
    expect(found.find(({ input }) => input === 'energy-price')?.changesCheapest).toBe(true);
    expect(found.find(({ input }) => input === 'discount-rate')?.changesCheapest).toBe(false);
  });
});

describe('the expected loss', () => {
  const terms = { survivalHours: 6, meanRestoreHours: 8, requiredShare: 0.5 };

  it('is rate x exp(-survival/restore) of the modes that leave too little', () => {
    const modes = [
      { rate: 0.2, servedShare: 0 },
      { rate: 0.3, servedShare: 0.4 },
      { rate: 5, servedShare: 0.5 },
    ];
    expectClose(lossesPerYear(modes, terms), 0.5 * Math.exp(-0.75), { relative: 1e-12 });
  });

  it('is nothing where repair is at once', () => {
    expect(lossesPerYear([{ rate: 1, servedShare: 0 }], { ...terms, meanRestoreHours: 0 })).toBe(0);
  });

  it('is that of a simulation of failures and repairs, within four of its standard errors', () => {
    const random = mulberry32(7);
    const exponential = (mean: number) => -mean * Math.log(1 - random());
    const modes = [
      { rate: 0.4, servedShare: 0 },
      { rate: 0.9, servedShare: 0.3 },
      { rate: 2, servedShare: 0.8 },
    ];
    const YEARS = 200_000;
    let losses = 0;
    for (const { rate, servedShare } of modes) {
      for (let time = exponential(1 / rate); time < YEARS; time += exponential(1 / rate)) {
        const restore = exponential(terms.meanRestoreHours);
        if (servedShare < terms.requiredShare && restore > terms.survivalHours) losses += 1;
      }
    }
    const expected = lossesPerYear(modes, terms);
    expect(Math.abs(losses / YEARS - expected)).toBeLessThan(4 * Math.sqrt(expected / YEARS));
  });
});

describe('the attention of devices', () => {
  it('is service and failures, by hand', () => {
    // Three devices: 2 services of 45 min and 0.2 failures of 120 min each = 3 x 114/60 h; parts 3 x 2 x 20.
    const service = { everyMonths: 6, minutes: 45, parts: 20 };
    const { hours, parts } = deviceAttention({ devices: 3, service, failures: 0.2, minutesPerFailure: 120 });
    expectClose(hours, 5.7, { relative: 1e-12 });
    expect(parts).toBe(120);
  });

  it('of devices without a known service is that of their failures', () => {
    expect(deviceAttention({ devices: 2, service: null, failures: 0.5, minutesPerFailure: 60 })).toEqual({
      hours: 1,
      failureHours: 1,
      parts: 0,
    });
  });
});
