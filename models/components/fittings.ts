/** Lists the losses of fittings, entrances and exits of one bore by name, each by one method or several. */
import { PERCENT } from '../../curves/percent.ts';
import { type ByMethod, byMethods, equivalentDiameters, fixedK, threeK, twoK } from './loss-methods.ts';
import { byName, type LossMethod, type NamedLoss, rowOf } from './named-loss.ts';
import type { Role } from './role.ts';
import { roundedEntranceLoss } from './rounded-entrance.ts';

const CRANE_FIXED = 'Crane Technical Paper 410 (2009), as open references reprint it';
const OLDER_CRANE =
  'Crane Technical Paper 410, editions before 2009, K = n fT, as reprinted tables give it (the 2009 edition gives tees by the split of flow)';
const ADDITIONAL_LOSS =
  "Perry's Chemical Engineers' Handbook, table 6-4 (additional frictional loss), as reprinted";

/** The rows of a fitting; the first method is its default. */
const fitting = (
  name: string,
  role: Role,
  description: string,
  ...methods: readonly ByMethod[]
): readonly NamedLoss[] => byMethods({ name, kind: 'fitting', role, description }, methods);

/** An entrance rounded by a share [%] of the bore. */
const roundedEntrance = (share: number): readonly NamedLoss[] =>
  fitting(
    `entrance-rounded-${share}`,
    'inlet',
    `Entrance flush with the wall, rounded to a radius of ${share} % of the bore`,
    fixedK(
      roundedEntranceLoss(share / PERCENT),
      'Rennels and Hudson, Pipe Flow (2012), rounded entrance flush with a wall',
    ),
  );

const BENDS = [
  fitting(
    'elbow-90',
    'bend',
    '90 degree elbow, bend radius 1 diameter, threaded',
    equivalentDiameters(30),
    twoK(800, 0.4),
    threeK(800, 0.14, 4),
  ),
  fitting(
    'elbow-90-flanged',
    'bend',
    '90 degree elbow, bend radius 1 diameter, flanged or welded',
    twoK(800, 0.25),
    equivalentDiameters(20),
    threeK(800, 0.091, 4),
  ),
  fitting(
    'elbow-90-long-radius',
    'bend',
    '90 degree elbow, bend radius 1.5 diameters',
    twoK(800, 0.2),
    equivalentDiameters(14),
    threeK(800, 0.071, 4.2, '; for a threaded elbow'),
  ),
  fitting(
    'elbow-90-mitre',
    'bend',
    '90 degree mitre bend of one joint',
    equivalentDiameters(60),
    twoK(1000, 1.15),
    threeK(1000, 0.27, 4),
  ),
  fitting(
    'elbow-45',
    'bend',
    '45 degree elbow, bend radius 1 diameter, threaded',
    equivalentDiameters(16),
    twoK(500, 0.2),
    threeK(500, 0.071, 4.2),
  ),
  fitting(
    'elbow-45-long-radius',
    'bend',
    '45 degree elbow, bend radius 1.5 diameters',
    twoK(500, 0.15),
    threeK(500, 0.052, 4),
  ),
  fitting(
    'elbow-45-mitre',
    'bend',
    '45 degree mitre bend of one joint',
    equivalentDiameters(15),
    twoK(500, 0.25),
    threeK(500, 0.086, 4),
  ),
  fitting(
    'return-bend',
    'bend',
    'Close 180 degree return bend, threaded',
    equivalentDiameters(50),
    threeK(1000, 0.23, 4),
  ),
  fitting(
    'return-bend-flanged',
    'bend',
    '180 degree return bend, bend radius 1 diameter, flanged or welded',
    twoK(1000, 0.35),
    threeK(1000, 0.12, 4),
  ),
  fitting(
    'return-bend-long-radius',
    'bend',
    '180 degree return bend, bend radius 1.5 diameters',
    twoK(1000, 0.3),
    threeK(1000, 0.1, 4),
  ),
];

const TEES = [
  fitting(
    'tee-run',
    'tee',
    'Tee, flow through the run, threaded',
    equivalentDiameters(20, OLDER_CRANE),
    twoK(200, 0.1),
    threeK(200, 0.091, 4),
  ),
  fitting(
    'tee-run-flanged',
    'tee',
    'Tee, flow through the run, flanged or welded',
    twoK(150, 0.05),
    threeK(150, 0.05, 4),
  ),
  fitting(
    'tee-branch',
    'tee',
    'Tee, flow through the branch, threaded',
    equivalentDiameters(60, OLDER_CRANE),
    twoK(500, 0.7),
    threeK(500, 0.274, 4),
  ),
  fitting(
    'tee-branch-flanged',
    'tee',
    'Tee, flow through the branch, flanged or welded',
    twoK(800, 0.8),
    threeK(800, 0.28, 4),
  ),
];

const IN_LINE = [
  fitting('coupling', 'coupling', 'Coupling', fixedK(0.04, ADDITIONAL_LOSS)),
  fitting(
    'union',
    'union',
    'Union',
    fixedK(0.04, `${ADDITIONAL_LOSS}; threaded unions reach 0.08 in Munson et al., table 8.2`),
  ),
  fitting(
    'bulkhead',
    'bulkhead',
    'Bulkhead fitting through a wall, without its entrance or exit at the wall',
    fixedK(0.08, 'Common practice, taken as two couplings; no published figure was found', false),
  ),
  fitting(
    'strainer',
    'strainer',
    'Clean mesh strainer in the line; dirty ones reach 4 to 10',
    fixedK(
      1.5,
      "Typical figure of teaching tables on minor losses, which differ widely; a maker's Kv is better",
      false,
    ),
  ),
];

const ENDS = [
  fitting('entrance-sharp', 'inlet', 'Sharp-edged entrance flush with the wall', fixedK(0.5, CRANE_FIXED)),
  fitting(
    'entrance-bellmouth',
    'inlet',
    'Bellmouth entrance',
    fixedK(0.05, 'Sanks (ed.), Pumping Station Design, 2nd edition (1998), table B-6, as reprinted'),
  ),
  fitting(
    'entrance-projecting',
    'inlet',
    'Entrance of a pipe that projects inward',
    fixedK(0.78, CRANE_FIXED),
  ),
  ...[5, 10, 15, 20, 30].map(roundedEntrance),
  fitting(
    'exit',
    'outlet',
    'Exit of a pipe under water, sharp, rounded or projecting: one velocity head',
    fixedK(1, CRANE_FIXED),
  ),
];

/** Every fitting of one bore that a loop may name, by each of its methods; the first of a name is its default. */
export const FITTINGS: readonly NamedLoss[] = [BENDS, TEES, IN_LINE, ENDS].flat(2);

const BY_NAME = byName(FITTINGS);

/** The fitting of this exact name by a method, else by its default; undefined where the table has no such row. */
export const findFitting = (name: string, method?: LossMethod): NamedLoss | undefined =>
  rowOf(BY_NAME.get(name), method);

/** The methods that the table has for a fitting, its default first; empty for a name that it does not have. */
export const methodsOfFitting = (name: string): readonly LossMethod[] =>
  (BY_NAME.get(name) ?? []).map(({ method }) => method);
