/** Published life-cycle costs and interest tables. */

const LCC_GUIDE =
  'Pump Life Cycle Costs: A Guide to LCC Analysis, executive summary, DOE/GO-102001-1190 (2001), example of a heat-exchanger circuit; inputs from memory, the totals prove them';

/** Interest 8 %, price rise 4 %, 8 years, 6000 h a year, 0.08 per kWh; a repair of 2500 every second year. */
export const GUIDE_TERMS = { years: 8, discountRate: 0.08, inflation: 0.04, energyInflation: 0.04 } as const;
export const GUIDE_PRICE = 0.08;
export const GUIDE_HOURS = 6000;
export const GUIDE_REPAIR = { cost: 2500, everyYears: 2 } as const;

/** Money; energy in kWh a year as the printed energy cost gives it (11 088 is 23.1 kW, 5568 is 11.6 kW). */
export const GUIDE_OPTIONS = [
  {
    name: 'A: new control valve',
    initial: 5000,
    kilowatts: 23.1,
    maintenance: 500,
    other: 0,
    printed: 91_827,
  },
  { name: 'B: trimmed impeller', initial: 2250, kilowatts: 14, maintenance: 500, other: 0, printed: 59_481 },
  {
    name: 'C: variable speed',
    initial: 21_500,
    kilowatts: 11.6,
    maintenance: 1000,
    other: 0,
    printed: 74_313,
  },
  {
    name: 'D: repair the valve yearly',
    initial: 0,
    kilowatts: 23.1,
    maintenance: 500,
    other: 4000,
    printed: 113_930,
  },
].map((option) => ({ ...option, source: LCC_GUIDE }));

/** Uniform series, present worth: one at the end of each of N years. Compound-interest tables of textbooks, from memory. */
export const ANNUITIES = [
  { discountRate: 0.05, years: 10, expected: 7.7217 },
  { discountRate: 0.08, years: 8, expected: 5.7466 },
  { discountRate: 0.1, years: 5, expected: 3.7908 },
  { discountRate: 0.1, years: 20, expected: 8.5136 },
  { discountRate: 0.2, years: 5, expected: 2.9906 },
].map((row) => ({ ...row, source: 'compound-interest tables, (P/A, i, N); from memory' }));
