/** Published friction factors, Darcy throughout. */
import type { Published } from './published.ts';

type FactorRow = Published & { readonly reynolds: number; readonly relativeRoughness: number };

const POISEUILLE = 'Hagen-Poiseuille, f = 64/Re';

export const LAMINAR_FACTORS: readonly FactorRow[] = [
  { reynolds: 128, relativeRoughness: 0, expected: 0.5, tolerance: 1e-15, source: POISEUILLE },
  { reynolds: 1000, relativeRoughness: 0.01, expected: 0.064, tolerance: 1e-15, source: POISEUILLE },
  { reynolds: 2000, relativeRoughness: 0, expected: 0.032, tolerance: 1e-15, source: POISEUILLE },
];

const COLEBROOK = 'Colebrook 1939, solved with a general fluids library';

/** Tolerance absolute: the digits printed. */
export const COLEBROOK_FACTORS: readonly FactorRow[] = [
  { reynolds: 1e5, relativeRoughness: 1e-4, expected: 0.018513866, tolerance: 1e-8, source: COLEBROOK },
  { reynolds: 1e4, relativeRoughness: 0, expected: 0.030883, tolerance: 1e-6, source: COLEBROOK },
  { reynolds: 1e5, relativeRoughness: 0, expected: 0.0179898, tolerance: 1e-6, source: COLEBROOK },
  { reynolds: 1e6, relativeRoughness: 0, expected: 0.011645, tolerance: 1e-6, source: COLEBROOK },
  { reynolds: 1e5, relativeRoughness: 1e-3, expected: 0.0221745, tolerance: 1e-6, source: COLEBROOK },
  { reynolds: 1e6, relativeRoughness: 1e-4, expected: 0.0134414, tolerance: 1e-6, source: COLEBROOK },
  { reynolds: 1e6, relativeRoughness: 1e-3, expected: 0.0199435, tolerance: 1e-6, source: COLEBROOK },
  { reynolds: 1e6, relativeRoughness: 1e-2, expected: 0.0379647, tolerance: 1e-6, source: COLEBROOK },
  { reynolds: 1e8, relativeRoughness: 1e-3, expected: 0.0196386, tolerance: 1e-6, source: COLEBROOK },
];

const SWAMEE_JAIN = 'Swamee and Jain 1976, explicit formula';
const HAALAND = 'Haaland 1983, explicit formula';
const BLASIUS = 'Blasius 1913, 0.3164 Re^-0.25';
const CHURCHILL = 'Churchill 1977, explicit formula';
const EXPLICIT_WHY = 'an explicit approximation of the same curve, stated to lie within 1 to 3 % of it';
const BLASIUS_WHY =
  'a power law through smooth-pipe measurements, up to 3 % from Colebrook-White below Re 1e5';

/** Other formulas of the same flow; tolerance relative. */
export const OTHER_FORMULAS: readonly FactorRow[] = [
  {
    reynolds: 1e5,
    relativeRoughness: 1e-4,
    expected: 0.0184524,
    tolerance: 0.01,
    source: SWAMEE_JAIN,
    why: EXPLICIT_WHY,
  },
  {
    reynolds: 1e5,
    relativeRoughness: 1e-3,
    expected: 0.0223424,
    tolerance: 0.01,
    source: SWAMEE_JAIN,
    why: EXPLICIT_WHY,
  },
  {
    reynolds: 1e6,
    relativeRoughness: 1e-3,
    expected: 0.0200292,
    tolerance: 0.01,
    source: SWAMEE_JAIN,
    why: EXPLICIT_WHY,
  },
  {
    reynolds: 1e5,
    relativeRoughness: 1e-4,
    expected: 0.0182651,
    tolerance: 0.02,
    source: HAALAND,
    why: EXPLICIT_WHY,
  },
  {
    reynolds: 1e5,
    relativeRoughness: 1e-3,
    expected: 0.0219662,
    tolerance: 0.02,
    source: HAALAND,
    why: EXPLICIT_WHY,
  },
  {
    reynolds: 1e6,
    relativeRoughness: 1e-3,
    expected: 0.0199412,
    tolerance: 0.02,
    source: HAALAND,
    why: EXPLICIT_WHY,
  },
  {
    reynolds: 1000,
    relativeRoughness: 0,
    expected: 0.064,
    tolerance: 0.01,
    source: CHURCHILL,
    why: EXPLICIT_WHY,
  },
  {
    reynolds: 4000,
    relativeRoughness: 0,
    expected: 0.0405897,
    tolerance: 0.03,
    source: CHURCHILL,
    why: EXPLICIT_WHY,
  },
  {
    reynolds: 1e6,
    relativeRoughness: 1e-3,
    expected: 0.020022,
    tolerance: 0.01,
    source: CHURCHILL,
    why: EXPLICIT_WHY,
  },
  {
    reynolds: 4e3,
    relativeRoughness: 0,
    expected: 0.0397852,
    tolerance: 0.03,
    source: BLASIUS,
    why: BLASIUS_WHY,
  },
  {
    reynolds: 1e4,
    relativeRoughness: 0,
    expected: 0.03164,
    tolerance: 0.03,
    source: BLASIUS,
    why: BLASIUS_WHY,
  },
  {
    reynolds: 1e5,
    relativeRoughness: 0,
    expected: 0.0177925,
    tolerance: 0.03,
    source: BLASIUS,
    why: BLASIUS_WHY,
  },
  {
    ...{ reynolds: 100_600, relativeRoughness: 0, expected: 0.0179, tolerance: 0.02 },
    source: 'Crane Technical Paper 410M, example 7-1, smooth pipe',
    why: 'read off a chart',
  },
];
