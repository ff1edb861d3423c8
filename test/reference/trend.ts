/** Published examples of robust trends. */

const SEN_X = [1, 2, 3, 4, 10, 12, 18];
const SEN_Y = [9, 15, 19, 20, 45, 55, 78];

export const SEN = [
  {
    points: SEN_X.map((x, i) => ({ x, y: SEN_Y[i] ?? Number.NaN })),
    /** Two-sided 93 %, for which the paper takes the limits from a table of Kendall's. */
    deviate: 1.8119,
    expected: { slope: 4, low: 26 / 7, high: 35 / 8, intercept: 6 },
    tolerance: 1e-12,
    source:
      "Sen (1968), JASA 63, example of section 6: seven points, slope 4, limits 26/7 and 35/8 (the paper's own list of slopes has slips; the limits are those that statistical packages test against)",
  },
] as const;
