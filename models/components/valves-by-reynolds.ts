/** Valves, fully open, whose loss coefficient depends on Reynolds number and size. */
import type { NamedLoss } from './named-loss.ts';
import { type ThreeKRow, type TwoKRow, threeKRow, twoKRow } from './reynolds-rows.ts';

const TWO_K: readonly TwoKRow[] = [
  ['ball-reduced-two-k', 'valve', 'Ball valve, seat 0.9 of the bore', 500, 0.15],
  ['gate-two-k', 'valve', 'Gate valve of full line size', 300, 0.1],
  ['globe-two-k', 'valve', 'Globe valve', 1500, 4],
  ['angle-two-k', 'valve', 'Angle or Y-type valve', 1000, 2],
  ['diaphragm-two-k', 'valve', 'Diaphragm valve, weir type', 1000, 2],
  ['butterfly-two-k', 'valve', 'Butterfly valve', 800, 0.25],
  ['check-swing-two-k', 'check-valve', 'Swing check valve', 1500, 1.5],
  ['check-lift-two-k', 'check-valve', 'Lift check valve', 2000, 10],
  ['check-tilting-disc-two-k', 'check-valve', 'Tilting-disc check valve', 1000, 0.5],
];

const THREE_K: readonly ThreeKRow[] = [
  ['ball-three-k', 'valve', 'Ball valve of full line size', 300, 0.017, 3.5],
  ['gate-three-k', 'valve', 'Gate valve of full line size', 300, 0.037, 3.9],
  ['globe-three-k', 'valve', 'Globe valve', 1500, 1.7, 3.6],
  ['angle-three-k', 'valve', '90 degree angle valve', 1000, 0.69, 4],
  ['angle-45-three-k', 'valve', '45 degree angle valve', 950, 0.25, 4],
  ['diaphragm-three-k', 'valve', 'Diaphragm valve, weir type', 1000, 0.69, 4.9],
  ['plug-three-k', 'valve', 'Plug valve, straight through', 300, 0.084, 3.9],
  ['check-swing-three-k', 'check-valve', 'Swing check valve', 1500, 0.46, 4],
  ['check-lift-three-k', 'check-valve', 'Lift check valve', 2000, 2.85, 3.8],
];

export const REYNOLDS_VALVES: readonly NamedLoss[] = [
  ...TWO_K.map(twoKRow('valve')),
  ...THREE_K.map(threeKRow('valve')),
];
