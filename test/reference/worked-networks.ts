/** Published examples of pipes in series, in parallel, as trees between reservoirs. */
import type { Branch } from '../../models/loop/loop.ts';
import { ANY_VISCOSITY, fixed, pipe, plain, reservoir, type WorkedNetwork } from './worked-network.ts';
import { workedPumpSystems } from './worked-pump-systems.ts';
import { twoParallel, twoParallelSource } from './worked-two-parallel.ts';

const shower: Branch = reservoir('shower', 2, [
  pipe(0.015, 6, 1.5e-6),
  { lossCoefficient: 24.7, diameter: 0.015 },
]);
const cistern: Branch = reservoir('cistern', 1, [
  pipe(0.015, 1, 1.5e-6),
  { lossCoefficient: 26.9, diameter: 0.015 },
]);
const supplyHead = 200_000 / (998 * 9.81);

const parallelNetworks: readonly WorkedNetwork[] = [
  {
    title: 'a stated total flow divides between two parallel pipes',
    source: twoParallelSource,
    kinematicViscosity: 0.001002 / 998,
    pipework: twoParallel,
    drive: { totalFlow: 0.03 },
    expected: [
      { quantity: 'head', value: 19.1, tolerance: 0.005 },
      { quantity: { outlet: '4 cm' }, value: 0.00415, tolerance: 0.005 },
      { quantity: { outlet: '8 cm' }, value: 0.0259, tolerance: 0.005 },
    ],
  },
  {
    title: 'one supply and two open outlets at unlike heights',
    source: 'Cengel and Cimbala, Example 8-9, both outlets open (printed 0.90 = 0.42 + 0.48 L/s)',
    kinematicViscosity: 0.001002 / 998,
    pipework: { ...plain, discharge: { run: [pipe(0.015, 5, 1.5e-6)], branches: [shower, cistern] } },
    drive: { head: supplyHead },
    expected: [
      { quantity: 'flow', value: 0.0009, tolerance: 0.01 },
      { quantity: { outlet: 'shower' }, value: 0.00042, tolerance: 0.01 },
      { quantity: { outlet: 'cistern' }, value: 0.00048, tolerance: 0.01 },
    ],
  },
  {
    title: 'the same supply with one outlet left out',
    source: 'Cengel and Cimbala, Example 8-9, cistern closed (0.53 L/s from memory, recomputed 0.5269)',
    kinematicViscosity: 0.001002 / 998,
    pipework: { ...plain, discharge: { run: [pipe(0.015, 5, 1.5e-6)], branches: [shower] } },
    drive: { head: supplyHead },
    expected: [{ quantity: 'flow', value: 0.00053, tolerance: 0.01 }],
  },
  {
    title: 'a reservoir feeds two lower ones through equal pipes',
    source: 'Munson, Young and Okiishi, Fundamentals of Fluid Mechanics, Example 8.14 (p. 462)',
    kinematicViscosity: ANY_VISCOSITY,
    pipework: {
      ...plain,
      discharge: {
        run: [fixed(0.02, 304.8, 0.3048)],
        branches: [
          reservoir('B', 6.096, [fixed(0.02, 152.4, 0.3048)]),
          reservoir('C', 0, [fixed(0.02, 121.92, 0.3048)]),
        ],
      },
    },
    drive: { head: 30.48 },
    expected: [
      { quantity: 'flow', value: 0.3539606, tolerance: 0.01 },
      { quantity: { outlet: 'B' }, value: 0.0639961, tolerance: 0.02, why: 'printed by hand iteration' },
      { quantity: { outlet: 'C' }, value: 0.2916635, tolerance: 0.01 },
    ],
  },
  {
    title: 'one tank feeds two through a common pipe',
    source: 'Douglas, Gasiorek and Swaffield, Fluid Mechanics, Example 14.4 (p. 476), Fanning f 0.01',
    kinematicViscosity: ANY_VISCOSITY,
    pipework: {
      ...plain,
      discharge: {
        run: [fixed(0.04, 120, 0.12)],
        branches: [reservoir('B', 8, [fixed(0.04, 60, 0.075)]), reservoir('C', 0, [fixed(0.04, 40, 0.06)])],
      },
    },
    drive: { head: 24 },
    expected: [
      { quantity: 'flow', value: 0.0206, tolerance: 0.005 },
      { quantity: { outlet: 'B' }, value: 0.0105, tolerance: 0.005 },
      { quantity: { outlet: 'C' }, value: 0.0101, tolerance: 0.005 },
    ],
  },
  {
    title: 'a second reservoir at the level of the first flows back into the junction',
    source: 'Daugherty and Franzini, Fluid Mechanics with Engineering Applications, Example 8.9 (p. 252)',
    kinematicViscosity: ANY_VISCOSITY,
    pipework: {
      ...plain,
      discharge: {
        run: [fixed(0.02, 609.6, 0.1524)],
        branches: [
          reservoir('B', 60.96, [fixed(0.032, 487.68, 0.1016)]),
          reservoir('C', 15.24, [fixed(0.024, 1219.2, 0.2032)]),
        ],
      },
    },
    drive: { head: 60.96 },
    expected: [
      { quantity: 'flow', value: 0.04326814, tolerance: 0.003 },
      { quantity: { outlet: 'B' }, value: -0.01387525, tolerance: 0.003 },
      { quantity: { outlet: 'C' }, value: 0.0571434, tolerance: 0.003 },
    ],
  },
  {
    title: 'three reservoirs, the middle one flowing back',
    source:
      'F. M. White, Fluid Mechanics, Example 6.18 (inputs from memory; flows recomputed from the equations)',
    kinematicViscosity: 1.02e-6,
    pipework: {
      ...plain,
      discharge: {
        run: [pipe(0.06, 150, 1.2e-4)],
        branches: [
          reservoir('R1', 20, [pipe(0.08, 100, 2.4e-4)]),
          reservoir('R3', 40, [pipe(0.04, 80, 2e-4)]),
        ],
      },
    },
    drive: { head: 100 },
    expected: [
      { quantity: 'flow', value: 47.00974 / 3600, tolerance: 0.01 },
      { quantity: { outlet: 'R1' }, value: 52.84813 / 3600, tolerance: 0.01 },
      { quantity: { outlet: 'R3' }, value: -5.83839 / 3600, tolerance: 0.02 },
    ],
  },
  {
    title: 'a large flow divides over three cast-iron pipes',
    source: 'I. A. Khan, Fluid Mechanics, Example 9.11 (p. 335)',
    kinematicViscosity: 1.007e-6,
    pipework: {
      ...plain,
      discharge: {
        run: [],
        branches: [
          reservoir('p1', 0, [pipe(0.5, 500, 2.5e-4)]),
          reservoir('p2', 0, [pipe(0.3, 200, 2.5e-4)]),
          reservoir('p3', 0, [pipe(0.15, 300, 2.5e-4)]),
        ],
      },
    },
    drive: { totalFlow: 2 },
    expected: [
      { quantity: { outlet: 'p1' }, value: 1.35, tolerance: 0.01 },
      { quantity: { outlet: 'p2' }, value: 0.566, tolerance: 0.01 },
      {
        quantity: { outlet: 'p3' },
        value: 0.082,
        tolerance: 0.1,
        why: 'the book kept f = 0.020 here by a slip',
      },
      { quantity: 'head', value: 43.5, tolerance: 0.06, why: 'the book reads f off a chart' },
    ],
  },
];

const singleLines: readonly WorkedNetwork[] = [
  {
    title: 'three pipes in series between reservoirs',
    source: 'Daugherty and Franzini, Example 8.8 (p. 250)',
    kinematicViscosity: ANY_VISCOSITY,
    pipework: {
      ...plain,
      discharge: reservoir('B', 0, [fixed(0.019, 300, 0.3), fixed(0.021, 150, 0.2), fixed(0.02, 250, 0.25)]),
    },
    drive: { head: 10 },
    expected: [{ quantity: 'flow', value: 0.084, tolerance: 0.006 }],
  },
  {
    title: 'suction and delivery between two reservoirs',
    source:
      'K. Subramanya, 1000 Solved Problems in Fluid Mechanics, Example 11.31 (p. 260; 4.57 kW hydraulic)',
    kinematicViscosity: ANY_VISCOSITY,
    pipework: {
      ...plain,
      staticHead: 15,
      suction: [fixed(0.02, 20, 0.15, 0.5)],
      discharge: reservoir('upper', 0, [fixed(0.02, 300, 0.12, 1)]),
    },
    drive: { totalFlow: 0.02 },
    expected: [{ quantity: 'head', value: 23.34, tolerance: 0.005 }],
  },
  {
    title: 'a small line with fittings as equivalent length',
    source: 'Coulson and Richardson, Chemical Engineering Vol. 1, Example 3.7 (p. 92; 136.6 W at 60 %)',
    kinematicViscosity: ANY_VISCOSITY,
    pipework: {
      ...plain,
      staticHead: 11.5,
      discharge: reservoir('top', 0, [fixed(0.032, 160 + 260 * 0.04, 0.04)]),
    },
    drive: { totalFlow: 2.27 / 3600 },
    expected: [{ quantity: 'head', value: (136.6 * 0.6) / (1000 * 9.81 * (2.27 / 3600)), tolerance: 0.005 }],
  },
];

export const workedNetworks: readonly WorkedNetwork[] = [
  ...parallelNetworks,
  ...singleLines,
  ...workedPumpSystems,
];
