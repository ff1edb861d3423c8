/** Head tables that no sum of powers meets, and what a monotone cubic through them gives. Flow L/h, head m, slope m per 1000 L/h. */

const PCHIP =
  'slopes and heads by PchipInterpolator of SciPy 1.17 (Fritsch and Butland 1984) on the same points, apart from this project';

export const KNEED_TABLES = [
  {
    name: 'an invented pump with a late knee',
    points: [
      [0, 8.0],
      [3000, 7.8],
      [6000, 7.3],
      [9000, 6.5],
      [10_500, 5.6],
      [11_500, 4.2],
      [12_000, 2.5],
    ],
    slopes: [-0.0166667, -0.0952381, -0.205128, -0.385714, -0.863014, -2.07961, -4.06667],
    heads: [
      [1500, 7.92946],
      [7500, 6.96772],
      [11_000, 5.05207],
      [11_750, 3.47419],
      // Beyond the last knot, along its slope: 2.5 - 4.06667 x 0.2.
      [12_200, 1.68667],
    ],
    tolerance: 1e-5,
    source: PCHIP,
  },
  {
    name: 'an invented pump whose least flow is not 0',
    points: [
      [2800, 23.2],
      [3900, 21.3],
      [5000, 18.9],
      [5600, 15.2],
      [5900, 11],
    ],
    slopes: [-1.5, -1.928118, -3.381468, -8.948177, -16.61111],
    heads: [
      [4500, 20.2008],
      // Before the first knot: 23.2 + 1.5 (2.8^2 - Q^2)/5.6, level at flow 0.
      [0, 25.3],
      [1400, 24.775],
    ],
    tolerance: 1e-5,
    source: PCHIP,
  },
  {
    name: 'an invented pump with a flat start and a cliff',
    points: [
      [0, 6.2],
      [2500, 6.1],
      [5000, 5.8],
      [7500, 5.3],
      [9000, 4.7],
      [9800, 3.4],
      [10_200, 1.4],
    ],
    slopes: [0, -0.06, -0.15, -0.2742857, -0.6839497, -2.6, -6.125],
    heads: [
      [6000, 5.6358286],
      [9400, 4.241605],
      // 1.4 - 6.125 x 0.1
      [10_300, 0.7875],
    ],
    tolerance: 1e-5,
    source: PCHIP,
  },
  {
    name: 'an invented pump that droops, then falls off a cliff',
    points: [
      [0, 10],
      [1000, 10.6],
      [2000, 10.7],
      [3000, 9.9],
      [4000, 8],
      [4500, 2],
    ],
    slopes: [0.85, 0.1714286, 0, -1.125926, -3.568696, -15.36667],
    heads: [
      [500, 10.384821],
      [1500, 10.671429],
      [2500, 10.440741],
      [4300, 5.0471026],
    ],
    tolerance: 1e-5,
    source: PCHIP,
  },
] as const;

const LSTSQ =
  'least squares by numpy.linalg.lstsq on the sets of powers of the rule, apart from this project';

/** Root mean square residual of the sum of powers with the least error at points left out, as a share of the largest head. */
export const SUMS_OF_POWERS = [
  { points: KNEED_TABLES[0].points, powers: [0, 6], share: 0.0332367, tolerance: 1e-5, source: LSTSQ },
  { points: KNEED_TABLES[1].points, powers: [0, 6], share: 0.0219792, tolerance: 1e-5, source: LSTSQ },
  { points: KNEED_TABLES[2].points, powers: [0, 6], share: 0.0612554, tolerance: 1e-5, source: LSTSQ },
  {
    points: [
      [0, 40],
      [7200, 39.5],
      [14_400, 38],
      [21_600, 35],
      [28_800, 30],
      [36_000, 20],
    ],
    powers: [0, 2, 6],
    share: 0.00116227,
    tolerance: 1e-5,
    source: LSTSQ,
  },
] as const;
