/** Losses of fittings, entrances, exits by name. */
import type { NamedLoss } from './named-loss.ts';

const CRANE = 'Crane Technical Paper 410, K = n fT';
const CRANE_MEMORY = `${CRANE} (figure from memory)`;
const ADDITIONAL_LOSS =
  'Table of additional losses in fittings, after Lapple, Chem. Eng. 56 (1949); figure seen in a reprint, attribution from memory';

/** `value` is n of K = n fT. */
const byDiameters = (name: string, value: number, description: string, source: string): NamedLoss => ({
  name,
  kind: 'fitting',
  method: 'equivalent-diameters',
  value,
  description,
  source,
  fromMemory: source === CRANE_MEMORY,
});

/** `value` is K itself. */
const byCoefficient = (name: string, value: number, description: string, source: string): NamedLoss => ({
  name,
  kind: 'fitting',
  method: 'fixed-k',
  value,
  description,
  source,
  fromMemory: source.includes('from memory'),
});

/** Every fitting that a loop may name. */
export const FITTINGS: readonly NamedLoss[] = [
  byDiameters('elbow-90', 30, 'Standard 90 degree elbow', CRANE),
  byDiameters('elbow-45', 16, 'Standard 45 degree elbow', CRANE_MEMORY),
  {
    name: 'elbow-90-long-radius',
    kind: 'fitting',
    method: 'two-k',
    value: 0.2,
    laminarValue: 800,
    description: '90 degree elbow, bend radius 1.5 diameters',
    source: 'Hooper, Chem. Eng., 24 Aug 1981, K = K1/Re + K (1 + 1 in/D)',
    fromMemory: false,
  },
  byDiameters('elbow-90-mitre', 60, '90 degree mitre bend of one joint', CRANE_MEMORY),
  byDiameters('elbow-45-mitre', 15, '45 degree mitre bend of one joint', CRANE_MEMORY),
  byDiameters('return-bend', 50, 'Close 180 degree return bend', CRANE_MEMORY),
  byDiameters('tee-run', 20, 'Tee, flow through the run', CRANE_MEMORY),
  byDiameters('tee-branch', 60, 'Tee, flow through the branch', CRANE_MEMORY),
  byCoefficient('coupling', 0.04, 'Coupling', ADDITIONAL_LOSS),
  byCoefficient('union', 0.04, 'Union', ADDITIONAL_LOSS),
  byCoefficient(
    'entrance-sharp',
    0.5,
    'Sharp-edged entrance flush with the wall',
    'Crane Technical Paper 410',
  ),
  byCoefficient(
    'entrance-bellmouth',
    0.05,
    'Bellmouth entrance',
    'Sanks, Pumping Station Design, table B-6; figure seen in a reprint, attribution from memory',
  ),
  byCoefficient(
    'entrance-projecting',
    0.78,
    'Entrance of a pipe that projects inward',
    'Crane Technical Paper 410 (figure from memory)',
  ),
  byCoefficient('exit', 1, 'Exit of a pipe under water, one velocity head', 'Crane Technical Paper 410'),
];

const BY_NAME: ReadonlyMap<string, NamedLoss> = new Map(FITTINGS.map((row) => [row.name, row]));

/** The fitting of this exact name, or undefined where the table has none. */
export const findFitting = (name: string): NamedLoss | undefined => BY_NAME.get(name);
