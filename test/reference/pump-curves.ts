/** Published pump tables, pump curves and speed changes. Flow m3/s, head m, power W unless the row says otherwise. */

/** Six points of a centrifugal pump with its overall efficiency, and where it meets a pipeline of 8.75 m static head. */
export const BRASCH_WHYMAN_PUMP = {
  points: [
    { flow: 0, head: 20.63, efficiency: 0 },
    { flow: 0.01, head: 19.98, efficiency: 0.361 },
    { flow: 0.02, head: 17.8, efficiency: 0.56 },
    { flow: 0.03, head: 14.46, efficiency: 0.61 },
    { flow: 0.04, head: 10.33, efficiency: 0.541 },
    { flow: 0.05, head: 5.71, efficiency: 0.37 },
  ],
  gravity: 9.81,
  density: 999,
  /** H = staticHead + 8 Q^2/(pi^2 d^4 g) (1 + 8 (L/d) 0.0396 Re^-0.25) */
  system: { staticHead: 8.75, diameter: 0.114, length: 60, viscosity: 0.001109 },
  expected: { flow: 0.0336, head: 13.1, power: 7200 },
  tolerance: { flow: 0.01, head: 0.01, power: 0.015 },
  source: 'Brasch & Whyman, Problems in Fluid Flow, Example 6.3 (p. 120)',
  why: 'The printed answer is read off a hand-drawn chart.',
};

/** H = 12 - 70 Q - 4300 Q^2 in a closed recirculation loop without static head, at 2 m/s in a 0.1 m pipe. */
export const SCHASCHKE_PUMP = {
  coefficients: [12, -70, -4300],
  expected: { flow: 0.015708, head: 9.8395 },
  tolerance: 0.001,
  source: 'Schaschke, Fluid Mechanics: Worked Examples for Engineers, Example 9.2 (p. 239)',
  why: 'Curve and velocity are printed; flow and head follow from them by hand, to five figures.',
};

/** Speed changes; flow in US gpm, head in ft: the laws are ratios. */
export const SPEED_CHANGES = [
  {
    speeds: { from: 3500, to: 1700 },
    flow: 400,
    head: 126,
    expected: { flow: 194.2857, head: 29.72571 },
    tolerance: 1e-4,
    source: 'Crane TP-410 (2009), Example 7-33',
  },
  {
    speeds: { from: 1170, to: 1750 },
    flow: 300,
    head: 21.9,
    expected: { flow: 448.72, head: 48.995 },
    tolerance: 1e-4,
    source: 'Fox & McDonald, Introduction to Fluid Mechanics, Example 10.7 (p. 522), best-efficiency point',
    why: 'Inputs printed, results by the affinity laws.',
  },
  {
    speeds: { from: 1170, to: 1750 },
    flow: 0,
    head: 25,
    expected: { flow: 0, head: 55.93 },
    tolerance: 1e-4,
    source: 'Fox & McDonald, Introduction to Fluid Mechanics, Example 10.7 (p. 522), shutoff',
    why: 'Inputs printed, results by the affinity laws.',
  },
];

/** Power by the cube law from one point at full speed, standby 0. */
export const CUBE_LAW = [
  {
    fullPower: 17.5,
    speedRatio: 1700 / 3500,
    expected: 2.0053061,
    tolerance: 1e-4,
    source: 'Crane TP-410 (2009), Example 7-33 (hp)',
  },
  {
    fullPower: 1,
    speedRatio: 2,
    expected: 8,
    tolerance: 1e-12,
    source: 'Cengel & Cimbala, Fluid Mechanics, Example 14-10 (p. 804): doubling the speed',
  },
  {
    fullPower: 1,
    speedRatio: 0.8,
    expected: 0.512,
    tolerance: 1e-12,
    source: 'US DOE Motor Systems Tip Sheet 11: a 20 % cut in speed about halves the power',
  },
  {
    fullPower: 400,
    speedRatio: 0.4,
    expected: 26,
    tolerance: 0.02,
    source: 'common practice: a 400 W pump at 40 % draws about 26 W',
    why: 'Rounded to the watt in use.',
  },
];
