/** Finds the loss of reducers and enlargements, which follows from the two bores that they join. */
import { kLoss, type Resistance } from './resistance.ts';

/** A row of the table. */
export interface BoreChange {
  readonly name: string;
  readonly kind: 'fitting';
  readonly role: 'bore-change';
  readonly method: 'two-bores';
  readonly towards: 'narrower' | 'wider';
  /** Whole angle of its cone [degrees]; 180 for a step. */
  readonly angle: number;
  readonly description: string;
  readonly source: string;
  readonly fromMemory: boolean;
}

/** The pipes that a fitting joins. */
export interface TwoBores {
  /** Bore of the pipe before the fitting [m]. */
  readonly before: number;
  /** Bore of the pipe after it [m]. */
  readonly after: number;
}

const STEP = 180;
/** A blunter cone is a step to the flow that widens. */
const SLIM = 45;
const ANGLES = [15, 30, 45] as const;

const CRANE = 'Crane Technical Paper 410';
const SOURCES = {
  narrower: `${CRANE}, K = 0.5 (1 - b^2) sqrt(sin(a/2)) of a step or blunt cone, 0.8 (1 - b^2) sin(a/2) up to 45 degrees, on the smaller bore`,
  wider: `Borda and Carnot, K = (1 - b^2)^2 on the smaller bore; ${CRANE}, times 2.6 sin(a/2) for a cone up to 45 degrees`,
} as const;

const row = (towards: BoreChange['towards'], angle: number): BoreChange => {
  const [name, noun] = towards === 'narrower' ? ['reducer', 'Reducer'] : ['enlargement', 'Enlargement'];
  const shape = angle === STEP ? 'a step' : `a cone of ${angle} degrees`;
  return {
    name: angle === STEP ? name : `${name}-taper-${angle}`,
    kind: 'fitting',
    role: 'bore-change',
    method: 'two-bores',
    towards,
    angle,
    description: `${noun} as ${shape} between the bores of the pipes before and after it`,
    source: SOURCES[towards],
    fromMemory: false,
  };
};

/** Every fitting of two bores that a loop may name. */
export const BORE_CHANGES: readonly BoreChange[] = (['narrower', 'wider'] as const).flatMap((towards) =>
  [STEP, ...ANGLES].map((angle) => row(towards, angle)),
);

const BY_NAME: ReadonlyMap<string, BoreChange> = new Map(BORE_CHANGES.map((one) => [one.name, one]));

/** The reducer or enlargement of this exact name, or undefined where the table has none. */
export const findBoreChange = (name: string): BoreChange | undefined => BY_NAME.get(name);

/** Whether the bores [m] differ in the direction that the row is made for. */
export const fits = ({ towards }: BoreChange, { before, after }: TwoBores): boolean =>
  towards === 'narrower' ? after < before : after > before;

/**
 * K [-] of a reducer or enlargement on the velocity in the smaller bore, b = smaller/larger bore, a = angle of the
 * cone.
 *
 * Narrower: K = 0.5 (1 - b^2) sqrt(sin(a/2)), a step being a = 180 degrees; up to 45 degrees 0.8 (1 - b^2) sin(a/2).
 * Wider: K = (1 - b^2)^2; up to 45 degrees times 2.6 sin(a/2).
 * @param change its direction and angle a [degrees].
 * @param bores before and after it [m], above 0.
 * Source: Crane Technical Paper 410; Borda and Carnot.
 */
export function boreChangeLossCoefficient({ towards, angle }: BoreChange, bores: TwoBores): number {
  const areas = 1 - (Math.min(bores.before, bores.after) / Math.max(bores.before, bores.after)) ** 2;
  const sine = Math.sin(((angle / 2) * Math.PI) / 180);
  if (towards === 'wider') return (angle > SLIM ? 1 : 2.6 * sine) * areas ** 2;
  return (angle > SLIM ? 0.5 * Math.sqrt(sine) : 0.8 * sine) * areas;
}

/** Resistance of a row between two bores [m]; water that runs backwards is taken to lose as much. */
export const boreChangeResistance = (change: BoreChange, bores: TwoBores): Resistance =>
  kLoss({
    lossCoefficient: boreChangeLossCoefficient(change, bores),
    diameter: Math.min(bores.before, bores.after),
  });
