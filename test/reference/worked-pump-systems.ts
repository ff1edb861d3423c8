/** Published examples of a pump on a system. */
import { ANY_VISCOSITY, fixed, plain, reservoir, type WorkedNetwork } from './worked-network.ts';
import { twoParallel, twoParallelSource } from './worked-two-parallel.ts';

const recirculation = fixed(0.02, 10, 0.1, 44.863 + 1);
const schaschke =
  'C. Schaschke, Fluid Mechanics: Worked Examples for Engineers, Example 9.2 (p. 239), pump H = 12 - 70 Q - 4300 Q^2';
const schaschkePump = { headPolynomial: [12, -70, -4300] };

export const workedPumpSystems: readonly WorkedNetwork[] = [
  {
    title: 'a pump of constant electrical power on two parallel pipes',
    source: `${twoParallelSource}: 8 kW at 70 %`,
    kinematicViscosity: 0.001002 / 998,
    pipework: twoParallel,
    drive: { hydraulicPower: 5600, density: 998 },
    expected: [
      { quantity: 'flow', value: 0.03, tolerance: 0.005 },
      { quantity: 'head', value: 19.1, tolerance: 0.005 },
      { quantity: { outlet: '4 cm' }, value: 0.00415, tolerance: 0.005 },
      { quantity: { outlet: '8 cm' }, value: 0.0259, tolerance: 0.005 },
    ],
  },
  {
    title: 'a pump in a closed loop without static head',
    source: `${schaschke}, part 1: recirculation at 2 m/s (the book finds K 44.863)`,
    kinematicViscosity: ANY_VISCOSITY,
    pipework: {
      ...plain,
      suction: [fixed(0.02, 2, 0.1)],
      discharge: reservoir('return', 0, [recirculation]),
    },
    drive: schaschkePump,
    expected: [
      { quantity: 'flow', value: 2 * (Math.PI / 4) * 0.1 ** 2, tolerance: 0.001 },
      { quantity: 'head', value: 9.8395, tolerance: 0.001 },
    ],
  },
  {
    title: 'the same pump also delivers 7 m up',
    source: `${schaschke}, part 2: transfer line open (book's check 0.011 m3/s, 7.628 m delivered)`,
    kinematicViscosity: ANY_VISCOSITY,
    pipework: {
      ...plain,
      suction: [fixed(0.02, 2, 0.1)],
      discharge: {
        run: [],
        branches: [
          reservoir('return', 0, [recirculation]),
          reservoir('vessel', 7, [fixed(0.02, 20, 0.1, 1)]),
        ],
      },
    },
    drive: schaschkePump,
    expected: [
      { quantity: 'head', value: 7.628, tolerance: 0.01 },
      { quantity: { outlet: 'vessel' }, value: 0.011, tolerance: 0.03, why: 'printed as a check by hand' },
    ],
  },
  {
    title: 'a pump by points on a line with static head',
    source:
      'Brasch and Whyman, Problems in Fluid Flow, Example 6.3 (p. 120); its smooth-pipe law 8 x 0.0396 Re^-1/4 held at the printed duty, Re 338 000',
    kinematicViscosity: 0.001109 / 999,
    pipework: {
      ...plain,
      staticHead: 8.75,
      discharge: reservoir('top', 0, [fixed(8 * 0.0396 * 338_000 ** -0.25, 60, 0.114, 1)]),
    },
    drive: {
      headPoints: [
        { flow: 0, head: 20.63, setting: 100 },
        { flow: 0.01, head: 19.98, setting: 100 },
        { flow: 0.02, head: 17.8, setting: 100 },
        { flow: 0.03, head: 14.46, setting: 100 },
        { flow: 0.04, head: 10.33, setting: 100 },
        { flow: 0.05, head: 5.71, setting: 100 },
      ],
    },
    expected: [
      { quantity: 'flow', value: 0.0336, tolerance: 0.01 },
      { quantity: 'head', value: 13.1, tolerance: 0.01 },
    ],
  },
];
