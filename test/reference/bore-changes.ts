/** Published losses of reducers, enlargements and rounded entrances. */
import type { Published } from './published.ts';

interface BoreChangeRow extends Published {
  readonly name: string;
  readonly before: number;
  readonly after: number;
}

const INCH = 0.0254;

/** K [-] on the smaller of two bores [m]; tolerance relative. */
export const BORE_CHANGE_COEFFICIENTS: readonly BoreChangeRow[] = [
  {
    ...{ name: 'enlargement', before: 0.5, after: 1, expected: 0.5625, tolerance: 1e-12 },
    source: 'Borda and Carnot, as Rennels and Hudson (2012) give it',
  },
  {
    ...{ name: 'reducer', before: 3 * INCH, after: 2 * INCH, expected: 0.2777777778, tolerance: 1e-9 },
    source: 'Crane Technical Paper 410, sudden contraction 3 to 2 in',
  },
  {
    ...{ name: 'reducer', before: 0.0779, after: 0.0525, expected: 0.2729017979998056, tolerance: 1e-9 },
    source: 'Crane Technical Paper 410M (2009), sudden contraction, worked with a general fluids library',
  },
];

/** Head [m] lost in an enlargement at a flow [m3/s]; tolerance relative. */
export const ENLARGEMENT_HEAD = {
  ...{ before: 0.04, after: 0.05, flow: 7.2 / 3600, expected: 0.0167, tolerance: 0.005 },
  source: 'Coulson and Richardson, Chemical Engineering vol. 1, example 3.6',
} as const;

/** K [-] of a rounded entrance by the radius as a share of the bore; tolerance absolute. */
export const ROUNDED_ENTRANCES: readonly (Published & { readonly ratio: number })[] = [
  {
    ...{ ratio: 0.235, expected: 0.0984, tolerance: 1e-4 },
    source: 'Rennels and Hudson, Pipe Flow (2012), worked with a general fluids library',
  },
  {
    ...{ ratio: 0, expected: 0.57, tolerance: 0.005 },
    source: 'Rennels and Hudson, Pipe Flow (2012): K of a sharp edge, which the formula meets at no radius',
    why: 'the book prints two figures',
  },
];
