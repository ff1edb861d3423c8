/** Published properties of fresh water and seawater at one atmosphere. */
import type { Published } from './published.ts';

type WaterRow = Published & { readonly temperature: number; readonly salinity: number };

const UNESCO = 'Fofonoff and Millard 1983, UNESCO Tech. Pap. Mar. Sci. 44, check values at p = 0';
const UNESCO_GRID = 'EOS-80 polynomial evaluated apart from this project';
const IAPWS = 'IAPWS-95 at 101.325 kPa, computed with a general fluids library';
const SHARQAWY = 'Sharqawy et al. 2010, Desal. Water Treat. 16, eq. 22-23, evaluated apart from this project';
const FIT_TO_TRUTH =
  'EOS-80 is a fit; its stated standard error is 0.0036 kg/m3 and its temperature scale IPTS-68';

/** Density [kg/m3]; tolerance absolute. */
export const DENSITIES: readonly WaterRow[] = [
  { temperature: 25, salinity: 35, expected: 1023.34306, tolerance: 1e-5, source: UNESCO },
  { temperature: 5, salinity: 35, expected: 1027.67547, tolerance: 1e-5, source: UNESCO },
  { temperature: 0, salinity: 35, expected: 1028.106, tolerance: 1e-3, source: UNESCO },
  { temperature: 5, salinity: 0, expected: 999.96675, tolerance: 1e-5, source: UNESCO },
  { temperature: 15, salinity: 35, expected: 1025.9728, tolerance: 1e-3, source: UNESCO_GRID },
  { temperature: 20, salinity: 35, expected: 1024.763, tolerance: 1e-3, source: UNESCO_GRID },
  { temperature: 24, salinity: 35, expected: 1023.6431, tolerance: 1e-3, source: UNESCO_GRID },
  { temperature: 26, salinity: 35, expected: 1023.0353, tolerance: 1e-3, source: UNESCO_GRID },
  { temperature: 28, salinity: 35, expected: 1022.3968, tolerance: 1e-3, source: UNESCO_GRID },
  { temperature: 30, salinity: 35, expected: 1021.7286, tolerance: 1e-3, source: UNESCO_GRID },
  { temperature: 10, salinity: 0, expected: 999.7025, tolerance: 5e-3, source: IAPWS, why: FIT_TO_TRUTH },
  { temperature: 20, salinity: 0, expected: 998.2072, tolerance: 5e-3, source: IAPWS, why: FIT_TO_TRUTH },
  { temperature: 25, salinity: 0, expected: 997.0476, tolerance: 5e-3, source: IAPWS, why: FIT_TO_TRUTH },
  { temperature: 30, salinity: 0, expected: 995.6495, tolerance: 5e-3, source: IAPWS, why: FIT_TO_TRUTH },
  { temperature: 40, salinity: 0, expected: 992.2164, tolerance: 6e-3, source: IAPWS, why: FIT_TO_TRUTH },
];

const FRESH_VISCOSITY_WHY = 'the correlation follows IAPWS within 0.05 %, as its authors state';
const OTHER_CORRELATION = {
  tolerance: 2e-3,
  source: 'reference test of an oceanographic package, Millero-type correlation',
  why: 'another correlation of the same measurements, 0.1 % higher',
};

/** Dynamic viscosity [Pa s]; tolerance relative. */
export const VISCOSITIES: readonly WaterRow[] = [
  { temperature: 10, salinity: 35, expected: 1.39677e-3, tolerance: 1e-4, source: SHARQAWY },
  { temperature: 15, salinity: 35, expected: 1.21987e-3, tolerance: 1e-4, source: SHARQAWY },
  { temperature: 20, salinity: 35, expected: 1.07663e-3, tolerance: 1e-4, source: SHARQAWY },
  { temperature: 24, salinity: 35, expected: 0.98066e-3, tolerance: 1e-4, source: SHARQAWY },
  { temperature: 25, salinity: 35, expected: 0.958828e-3, tolerance: 1e-4, source: SHARQAWY },
  { temperature: 26, salinity: 35, expected: 0.937777e-3, tolerance: 1e-4, source: SHARQAWY },
  { temperature: 28, salinity: 35, expected: 0.897865e-3, tolerance: 1e-4, source: SHARQAWY },
  { temperature: 30, salinity: 35, expected: 0.860649e-3, tolerance: 1e-4, source: SHARQAWY },
  { temperature: 20, salinity: 0, expected: 1.00176e-3, tolerance: 1e-4, source: SHARQAWY },
  { temperature: 25, salinity: 0, expected: 0.890154e-3, tolerance: 1e-4, source: SHARQAWY },
  {
    temperature: 10,
    salinity: 0,
    expected: 1.3059e-3,
    tolerance: 1e-3,
    source: IAPWS,
    why: FRESH_VISCOSITY_WHY,
  },
  {
    temperature: 15,
    salinity: 0,
    expected: 1.13757e-3,
    tolerance: 1e-3,
    source: IAPWS,
    why: FRESH_VISCOSITY_WHY,
  },
  {
    temperature: 20,
    salinity: 0,
    expected: 1.0016e-3,
    tolerance: 1e-3,
    source: IAPWS,
    why: FRESH_VISCOSITY_WHY,
  },
  {
    temperature: 26,
    salinity: 0,
    expected: 0.870109e-3,
    tolerance: 1e-3,
    source: IAPWS,
    why: FRESH_VISCOSITY_WHY,
  },
  {
    temperature: 30,
    salinity: 0,
    expected: 0.797222e-3,
    tolerance: 1e-3,
    source: IAPWS,
    why: FRESH_VISCOSITY_WHY,
  },
  { temperature: 10, salinity: 30, expected: 1.383779e-3, ...OTHER_CORRELATION },
];

const ITTC = 'ITTC 7.5-02-01-03 (2011), fresh and sea water at 15 degC (from memory)';

/** Kinematic viscosity [m2/s]; tolerance relative. */
export const KINEMATIC_VISCOSITIES: readonly WaterRow[] = [
  {
    temperature: 25,
    salinity: 35,
    expected: 9.37e-7,
    tolerance: 5e-3,
    source: 'the two rows of this table combined',
  },
  { temperature: 15, salinity: 0, expected: 1.1386e-6, tolerance: 1e-3, source: ITTC },
  { temperature: 15, salinity: 35.165, expected: 1.1892e-6, tolerance: 1e-3, source: ITTC },
];
