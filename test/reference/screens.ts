/** Published areas of intake screens, and velocities at part-clogged ones. */
import type { Published } from './published.ts';

const FOOT = 0.3048;
const PUMP_CRITERIA =
  'NMFS addendum on pump intakes: least effective area = flow / approach velocity, 0.4 ft/s active, 0.2 ft/s passive; the area by continuity';

/** Open area [m2] by flow [m3/s] and velocity [m/s]; tolerance relative. */
export const SCREEN_AREAS: readonly (Published & { readonly flow: number; readonly velocity: number })[] = [
  {
    ...{ flow: FOOT ** 3, velocity: 0.33 * FOOT, expected: 3 * FOOT ** 2, tolerance: 0.015 },
    source: 'California fish screening criteria, 19 June 2000: 1.0 ft3/s at 0.33 ft/s',
    why: 'the page rounds 3.03 to 3.0',
  },
  {
    ...{ flow: 10 / 3600, velocity: 0.1524, expected: 0.01823, tolerance: 5e-4 },
    source: '40 CFR 125.84(b)(2), 0.5 ft/s; the area by continuity',
  },
  {
    ...{ flow: 10 / 3600, velocity: 0.1219, expected: 0.02278, tolerance: 5e-4 },
    source: PUMP_CRITERIA,
  },
  {
    ...{ flow: 10 / 3600, velocity: 0.061, expected: 0.04557, tolerance: 1e-3 },
    source: PUMP_CRITERIA,
    why: '0.2 ft/s is 0.06096 m/s, rounded',
  },
];

const cylinder = (diameter: number, length: number, openFraction: number) =>
  ({ shape: 'cylinder', count: 1, diameter, length, openFraction }) as const;

const LITRE_PER_HOUR = 1 / 3.6e6;

/** Velocities [m/s] of a cylinder drawn from one end, mean x y coth y, y by the area that clogging leaves open. */
export const CLOGGED_SCREENS = [
  { screen: cylinder(0.06, 0.5, 0.35), cloggedFraction: 0.5, flow: 7533.14, mean: 0.126872, peak: 0.628045 },
  { screen: cylinder(0.09, 0.2, 0.3), cloggedFraction: 0, flow: 3000, mean: 0.0491219, peak: 0.113584 },
  { screen: cylinder(0.09, 0.2, 0.3), cloggedFraction: 0.5, flow: 3000, mean: 0.0982438, peak: 0.136971 },
  { screen: cylinder(0.11, 0.25, 0.3), cloggedFraction: 0.5, flow: 6000, mean: 0.12861, peak: 0.181459 },
].map(({ flow, ...row }) => ({
  ...row,
  flow: flow * LITRE_PER_HOUR,
  tolerance: 1e-4,
  source: 'figures of a separate calculation, repeated by test/reference/independent-complementarity',
}));
