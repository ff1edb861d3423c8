/** Lists the losses of fittings, entrances and exits of one bore by name. */
import { PERCENT } from '../../curves/percent.ts';
import type { NamedLoss } from './named-loss.ts';
import { type ThreeKRow, type TwoKRow, threeKRow, twoKRow } from './reynolds-rows.ts';
import type { Role } from './role.ts';
import { roundedEntranceLoss } from './rounded-entrance.ts';

const CRANE = 'Crane Technical Paper 410, K = n fT';
const CRANE_MEMORY = `${CRANE} (figure from memory)`;
const ADDITIONAL_LOSS =
  'Table of additional losses in fittings, after Lapple, Chem. Eng. 56 (1949); figure seen in a reprint, attribution from memory';

/** `value` is n of K = n fT. */
const byDiameters = (
  name: string,
  role: Role,
  value: number,
  description: string,
  source: string,
): NamedLoss => ({
  name,
  kind: 'fitting',
  role,
  method: 'equivalent-diameters',
  value,
  description,
  source,
  fromMemory: source === CRANE_MEMORY,
});

/** `value` is K itself. */
const byCoefficient = (
  name: string,
  role: Role,
  value: number,
  description: string,
  source: string,
): NamedLoss => ({
  name,
  kind: 'fitting',
  role,
  method: 'fixed-k',
  value,
  description,
  source,
  fromMemory: source.includes('from memory'),
});

/** An entrance rounded by a share [%] of the bore. */
const roundedEntrance = (share: number): NamedLoss =>
  byCoefficient(
    `entrance-rounded-${share}`,
    'inlet',
    roundedEntranceLoss(share / PERCENT),
    `Entrance flush with the wall, rounded to a radius of ${share} % of the bore`,
    'Rennels and Hudson, Pipe Flow (2012), rounded entrance flush with a wall',
  );

/** Name, role, what it is, K1, K of infinite Reynolds number and size. */
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

/** Name, role, what it is, K1, Ki, Kd. */
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

/** Every fitting of one bore that a loop may name. */
export const FITTINGS: readonly NamedLoss[] = [
  byDiameters('elbow-90', 'bend', 30, 'Standard 90 degree elbow', CRANE),
  byDiameters('elbow-45', 'bend', 16, 'Standard 45 degree elbow', CRANE_MEMORY),
  byDiameters('elbow-90-mitre', 'bend', 60, '90 degree mitre bend of one joint', CRANE_MEMORY),
  byDiameters('elbow-45-mitre', 'bend', 15, '45 degree mitre bend of one joint', CRANE_MEMORY),
  byDiameters('return-bend', 'bend', 50, 'Close 180 degree return bend', CRANE_MEMORY),
  byDiameters('tee-run', 'tee', 20, 'Tee, flow through the run', CRANE_MEMORY),
  byDiameters('tee-branch', 'tee', 60, 'Tee, flow through the branch', CRANE_MEMORY),
  byCoefficient('coupling', 'coupling', 0.04, 'Coupling', ADDITIONAL_LOSS),
  byCoefficient('union', 'union', 0.04, 'Union', ADDITIONAL_LOSS),
  byCoefficient(
    'bulkhead',
    'bulkhead',
    0.08,
    'Bulkhead fitting through a wall; entrance or exit at the wall apart',
    'Common practice, taken as two couplings; no published figure was found (from memory)',
  ),
  byCoefficient(
    'strainer',
    'strainer',
    1.5,
    'Clean mesh strainer in the line; dirty ones reach 4 to 10',
    "Typical figure of teaching tables on minor losses, which differ widely; a maker's Kv is better",
  ),
  byCoefficient(
    'entrance-sharp',
    'inlet',
    0.5,
    'Sharp-edged entrance flush with the wall',
    'Crane Technical Paper 410',
  ),
  byCoefficient(
    'entrance-bellmouth',
    'inlet',
    0.05,
    'Bellmouth entrance',
    'Sanks, Pumping Station Design, table B-6; figure seen in a reprint, attribution from memory',
  ),
  byCoefficient(
    'entrance-projecting',
    'inlet',
    0.78,
    'Entrance of a pipe that projects inward',
    'Crane Technical Paper 410 (figure from memory)',
  ),
  ...[5, 10, 15, 20, 30].map(roundedEntrance),
  byCoefficient(
    'exit',
    'outlet',
    1,
    'Exit of a pipe under water, sharp, rounded or projecting: one velocity head',
    'Crane Technical Paper 410',
  ),
  ...TWO_K.map(twoKRow('fitting')),
  ...THREE_K.map(threeKRow('fitting')),
];

const BY_NAME: ReadonlyMap<string, NamedLoss> = new Map(FITTINGS.map((row) => [row.name, row]));

/** The fitting of this exact name, or undefined where the table has none. */
export const findFitting = (name: string): NamedLoss | undefined => BY_NAME.get(name);
