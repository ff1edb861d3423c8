/** Published losses of fittings and valves. */
import type { Published } from './published.ts';

const CRANE_FT = 'Crane Technical Paper 410, fT of clean Schedule 40 steel, as the table rounds it';

/** Turbulence factor fT [-] by bore [m]; tolerance absolute, the rounding. */
export const TURBULENCE_FACTORS: readonly (Published & { readonly diameter: number })[] = [
  { diameter: 0.0158, expected: 0.026, tolerance: 5e-4, source: CRANE_FT },
  { diameter: 0.02093, expected: 0.024, tolerance: 5e-4, source: CRANE_FT },
  { diameter: 0.02664, expected: 0.022, tolerance: 5e-4, source: CRANE_FT },
  { diameter: 0.03505, expected: 0.021, tolerance: 5e-4, source: CRANE_FT },
  { diameter: 0.04089, expected: 0.02, tolerance: 5e-4, source: CRANE_FT },
  { diameter: 0.0525, expected: 0.019, tolerance: 5e-4, source: CRANE_FT },
  { diameter: 0.07793, expected: 0.017, tolerance: 5e-4, source: CRANE_FT },
  { diameter: 0.10226, expected: 0.016, tolerance: 5e-4, source: CRANE_FT },
];

const CRANE_N = 'Crane Technical Paper 410 (2009), K = n fT';
const OLDER_CRANE = 'Crane Technical Paper 410, editions before 2009, K = n fT, as reprinted tables give it';

/** n of K = n fT. */
export const EQUIVALENT_DIAMETERS = [
  { name: 'elbow-90', diameters: 30, source: CRANE_N },
  { name: 'elbow-45', diameters: 16, source: CRANE_N },
  { name: 'tee-run', diameters: 20, source: OLDER_CRANE },
  { name: 'tee-branch', diameters: 60, source: OLDER_CRANE },
  { name: 'ball', diameters: 3, source: CRANE_N },
  { name: 'gate', diameters: 8, source: CRANE_N },
  { name: 'globe', diameters: 340, source: CRANE_N },
  { name: 'butterfly', diameters: 45, source: CRANE_N },
  { name: 'diaphragm', diameters: 149, source: CRANE_N },
  { name: 'diaphragm-straight', diameters: 39, source: CRANE_N },
  { name: 'check-swing', diameters: 100, source: CRANE_N },
  { name: 'check-swing-clear', diameters: 50, source: CRANE_N },
  { name: 'check-lift', diameters: 600, source: CRANE_N },
  { name: 'check-lift-angle', diameters: 55, source: CRANE_N },
  { name: 'check-tilting-disc', diameters: 40, source: CRANE_N },
  { name: 'foot-poppet', diameters: 420, source: CRANE_N },
  { name: 'foot-hinged', diameters: 75, source: CRANE_N },
  { name: 'plug', diameters: 18, source: CRANE_N },
  { name: 'angle', diameters: 150, source: CRANE_N },
  { name: 'angle-45', diameters: 55, source: CRANE_N },
  { name: 'elbow-90-flanged', diameters: 20, source: CRANE_N },
  { name: 'elbow-90-long-radius', diameters: 14, source: CRANE_N },
  { name: 'elbow-90-mitre', diameters: 60, source: CRANE_N },
  { name: 'elbow-45-mitre', diameters: 15, source: CRANE_N },
  { name: 'return-bend', diameters: 50, source: CRANE_N },
  { name: 'butterfly-double-offset', diameters: 74, source: CRANE_N },
  { name: 'butterfly-triple-offset', diameters: 218, source: CRANE_N },
  { name: 'check-tilting-disc-15', diameters: 120, source: CRANE_N },
] as const;

const MUNSON = 'Munson et al., Fundamentals of Fluid Mechanics, table 8.2';
const ROUNDED = 'the table prints two figures';

/** Loss coefficient [-] of part-open valves by opening [%]; tolerance relative. */
export const PART_OPEN_VALVES: readonly (Published & { readonly name: string; readonly opening: number })[] =
  [
    { name: 'ball', opening: 200 / 3, expected: 5.5, tolerance: 0.02, source: MUNSON, why: ROUNDED },
    { name: 'ball', opening: 100 / 3, expected: 210, tolerance: 0.02, source: MUNSON, why: ROUNDED },
    {
      ...{ name: 'gate', opening: 50, expected: 2.1, tolerance: 0.1, source: MUNSON },
      why: 'the table leaves out the 0.15 that it gives the open gate, and prints two figures',
    },
    {
      ...{ name: 'gate', opening: 25, expected: 17, tolerance: 0.02, source: MUNSON },
      why: 'the table leaves out the 0.15 that it gives the open gate',
    },
  ];

/** Two-K fittings [-]: K at a Reynolds number and a bore of 2 in. */
export const TWO_K = [
  {
    ...{ laminarValue: 1500, value: 4, reynolds: 1e4, diameter: 0.0508, expected: 6.15, tolerance: 1e-12 },
    source: 'Hooper 1981, Chem. Eng. Aug 24: standard globe valve, worked with a general fluids library',
  },
  {
    ...{ laminarValue: 1500, value: 4, reynolds: 100, diameter: 0.0508, expected: 21, tolerance: 1e-12 },
    source: 'Hooper 1981, Chem. Eng. Aug 24: standard globe valve, by hand: 1500/100 + 4 (1 + 1/2)',
  },
] as const;

const DARBY = 'Silverberg and Darby, Chem. Eng., July 1999, worked with a general fluids library';

/** Three-K rows [-]: K at a Reynolds number and a nominal size [in]. */
export const THREE_K = [
  {
    name: 'angle-45',
    method: 'three-k',
    reynolds: 1e4,
    size: 2,
    expected: 1.157252396,
    tolerance: 1e-8,
    source: DARBY,
  },
  {
    name: 'elbow-90',
    method: 'three-k',
    reynolds: 1e5,
    size: 2,
    expected: 0.60286,
    tolerance: 1e-5,
    source: DARBY,
  },
  {
    name: 'ball',
    method: 'three-k',
    reynolds: 5e4,
    size: 1,
    expected: 0.0825,
    tolerance: 1e-5,
    source: DARBY,
  },
] as const;

const HOOPER_ROWS = 'Hooper, Chem. Eng., 24 Aug 1981, coefficients as a general fluids library reprints them';
const DARBY_ROWS =
  'Silverberg and Darby, Chem. Eng., July 1999, coefficients as a general fluids library reprints them';

/** Coefficients [-] of rows by Reynolds number: K1, K, and Kd where there are three. */
export const REYNOLDS_ROWS = [
  { name: 'elbow-90', method: 'two-k', coefficients: [800, 0.4], source: HOOPER_ROWS },
  { name: 'elbow-90-flanged', method: 'two-k', coefficients: [800, 0.25], source: HOOPER_ROWS },
  { name: 'elbow-90-long-radius', method: 'two-k', coefficients: [800, 0.2], source: HOOPER_ROWS },
  { name: 'elbow-45', method: 'two-k', coefficients: [500, 0.2], source: HOOPER_ROWS },
  { name: 'tee-run', method: 'two-k', coefficients: [200, 0.1], source: HOOPER_ROWS },
  { name: 'tee-branch', method: 'two-k', coefficients: [500, 0.7], source: HOOPER_ROWS },
  { name: 'gate', method: 'two-k', coefficients: [300, 0.1], source: HOOPER_ROWS },
  { name: 'ball-reduced', method: 'two-k', coefficients: [500, 0.15], source: HOOPER_ROWS },
  { name: 'check-swing', method: 'two-k', coefficients: [1500, 1.5], source: HOOPER_ROWS },
  { name: 'butterfly', method: 'two-k', coefficients: [800, 0.25], source: HOOPER_ROWS },
  { name: 'elbow-90', method: 'three-k', coefficients: [800, 0.14, 4], source: DARBY_ROWS },
  { name: 'elbow-90-flanged', method: 'three-k', coefficients: [800, 0.091, 4], source: DARBY_ROWS },
  { name: 'elbow-45', method: 'three-k', coefficients: [500, 0.071, 4.2], source: DARBY_ROWS },
  { name: 'tee-run', method: 'three-k', coefficients: [200, 0.091, 4], source: DARBY_ROWS },
  { name: 'tee-branch', method: 'three-k', coefficients: [500, 0.274, 4], source: DARBY_ROWS },
  { name: 'gate', method: 'three-k', coefficients: [300, 0.037, 3.9], source: DARBY_ROWS },
  { name: 'ball', method: 'three-k', coefficients: [300, 0.017, 3.5], source: DARBY_ROWS },
  { name: 'check-swing', method: 'three-k', coefficients: [1500, 0.46, 4], source: DARBY_ROWS },
] as const;

const KV_ROUNDED = 'the handbook rounds the constant in K = 1.6e9 D^4/Kv^2, which is 1.5989e9';

/** K [-] of a valve by its Kv [m3/h] in a bore [m]; tolerance relative. */
export const KV_VALVES: readonly (Published & { readonly kv: number; readonly diameter: number })[] = [
  {
    ...{ kv: 500, diameter: 0.154, expected: 3.6, tolerance: 1e-3, why: KV_ROUNDED },
    source: 'Crane Technical Paper 410M, example 7-2',
  },
  {
    ...{ kv: 2.312, diameter: 0.015, expected: 15.153375, tolerance: 1e-3, why: KV_ROUNDED },
    source: 'IEC 60534-2-1 conversion, worked with a general fluids library',
  },
  {
    ...{ kv: 31.6228, diameter: 0.05, expected: 10, tolerance: 1e-3, why: KV_ROUNDED },
    source: 'IEC 60534-2-1 conversion, worked with a general fluids library',
  },
];
