/** Fittings whose loss coefficient depends on Reynolds number and size. */
import type { NamedLoss } from './named-loss.ts';
import { type ThreeKRow, type TwoKRow, threeKRow, twoKRow } from './reynolds-rows.ts';

const TWO_K: readonly TwoKRow[] = [
  ['elbow-90-long-radius', 'bend', '90 degree elbow, bend radius 1.5 diameters', 800, 0.2],
  ['elbow-90-two-k', 'bend', '90 degree elbow, bend radius 1 diameter, screwed', 800, 0.4],
  ['elbow-90-flanged-two-k', 'bend', '90 degree elbow, bend radius 1 diameter, flanged or welded', 800, 0.25],
  ['elbow-90-mitre-two-k', 'bend', '90 degree mitre bend of one joint', 1000, 1.15],
  ['elbow-45-two-k', 'bend', '45 degree elbow, bend radius 1 diameter', 500, 0.2],
  ['elbow-45-long-radius', 'bend', '45 degree elbow, bend radius 1.5 diameters', 500, 0.15],
  ['elbow-45-mitre-two-k', 'bend', '45 degree mitre bend of one joint', 500, 0.25],
  [
    'return-bend-two-k',
    'bend',
    '180 degree return bend, bend radius 1 diameter, flanged or welded',
    1000,
    0.35,
  ],
  ['return-bend-long-radius', 'bend', '180 degree return bend, bend radius 1.5 diameters', 1000, 0.3],
  ['tee-run-two-k', 'tee', 'Tee, flow through the run, screwed', 200, 0.1],
  ['tee-run-flanged-two-k', 'tee', 'Tee, flow through the run, flanged or welded', 150, 0.05],
  ['tee-branch-two-k', 'tee', 'Tee, flow through the branch, screwed', 500, 0.7],
  ['tee-branch-flanged-two-k', 'tee', 'Tee, flow through the branch, flanged or welded', 800, 0.8],
];

const THREE_K: readonly ThreeKRow[] = [
  ['elbow-90-three-k', 'bend', '90 degree elbow, bend radius 1 diameter, threaded', 800, 0.14, 4],
  [
    'elbow-90-flanged-three-k',
    'bend',
    '90 degree elbow, bend radius 1 diameter, flanged or welded',
    800,
    0.091,
    4,
  ],
  [
    'elbow-90-long-radius-three-k',
    'bend',
    '90 degree elbow, bend radius 1.5 diameters, threaded',
    800,
    0.071,
    4.2,
  ],
  ['elbow-90-mitre-three-k', 'bend', '90 degree mitre bend of one joint', 1000, 0.27, 4],
  ['elbow-45-three-k', 'bend', '45 degree elbow, bend radius 1 diameter, threaded', 500, 0.071, 4.2],
  ['elbow-45-long-radius-three-k', 'bend', '45 degree elbow, bend radius 1.5 diameters', 500, 0.052, 4],
  ['elbow-45-mitre-three-k', 'bend', '45 degree mitre bend of one joint', 500, 0.086, 4],
  ['return-bend-three-k', 'bend', 'Close 180 degree return bend, threaded', 1000, 0.23, 4],
  ['tee-run-three-k', 'tee', 'Tee, flow through the run, threaded', 200, 0.091, 4],
  ['tee-run-flanged-three-k', 'tee', 'Tee, flow through the run, flanged or welded', 150, 0.05, 4],
  ['tee-branch-three-k', 'tee', 'Tee, flow through the branch, threaded', 500, 0.274, 4],
  ['tee-branch-flanged-three-k', 'tee', 'Tee, flow through the branch, flanged or welded', 800, 0.28, 4],
];

export const REYNOLDS_FITTINGS: readonly NamedLoss[] = [
  ...TWO_K.map(twoKRow('fitting')),
  ...THREE_K.map(threeKRow('fitting')),
];
