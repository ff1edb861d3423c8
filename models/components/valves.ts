/** Lists the losses of valves by name, fully open or part open. */
import type { NamedLoss } from './named-loss.ts';
import { type ThreeKRow, type TwoKRow, threeKRow, twoKRow } from './reynolds-rows.ts';
import type { Role } from './role.ts';

/** A valve that is part open. */
export interface PartOpening {
  /** [%] */
  readonly opening: number;
  /** Added to the loss coefficient of the valve fully open [-]. */
  readonly addedLossCoefficient: number;
}

/** A valve's row; `partOpenings` from wide to narrow, empty where no table for part opening is known. */
export type ValveRow = NamedLoss & {
  readonly partOpenings: readonly PartOpening[];
  readonly partOpeningSource: string | null;
};

const CRANE = 'Crane Technical Paper 410, K = n fT';

const openOrShut = (
  name: string,
  diameters: number,
  description: string,
  role: Role = 'valve',
): ValveRow => ({
  name,
  kind: 'valve',
  role,
  method: 'equivalent-diameters',
  value: diameters,
  description,
  source: CRANE,
  fromMemory: false,
  partOpenings: [],
  partOpeningSource: null,
});

/** One that closes by itself. */
const checkValve = (name: string, diameters: number, description: string): ValveRow =>
  openOrShut(name, diameters, description, 'check-valve');

const throttling = (
  open: ValveRow,
  partOpenings: readonly PartOpening[],
  partOpeningSource: string,
): ValveRow => ({ ...open, partOpenings, partOpeningSource });

/** Rows of [opening %, added K]. */
const byOpening = (rows: readonly (readonly [number, number])[]): readonly PartOpening[] =>
  rows.map(([opening, addedLossCoefficient]) => ({ opening, addedLossCoefficient }));

/** Rows of [angle from fully open in degrees, added K]; a quarter turn shuts. */
const byAngle = (rows: readonly (readonly [number, number])[]): readonly PartOpening[] =>
  byOpening(rows.map(([angle, added]) => [100 * (1 - angle / 90), added]));

const WEISBACH =
  'Weisbach, Die Experimental-Hydraulik (1855), circular pipe (figures seen in a handbook, attribution from memory)';
const AFTER_LAPPLE =
  'Table of additional losses in valves, after Lapple, Chem. Eng. 56 (1949), less its fully open value; figures seen in a reprint, attribution from memory';

const BALL_ADDED = byAngle([
  [10, 0.29],
  [20, 1.56],
  [30, 5.47],
  [40, 17.3],
  [50, 52.6],
  [60, 206],
  [65, 486],
]);
const GATE_ADDED = byOpening([
  [87.5, 0.07],
  [75, 0.26],
  [62.5, 0.81],
  [50, 2.06],
  [37.5, 5.52],
  [25, 17],
  [12.5, 97.8],
]);
const BUTTERFLY_ADDED = byAngle([
  [10, 0.52],
  [20, 1.54],
  [30, 3.91],
  [40, 10.8],
  [50, 32.6],
  [60, 118],
  [70, 751],
]);
const GLOBE_ADDED = byOpening([
  [75, 13 - 9],
  [50, 36 - 9],
  [25, 112 - 9],
]);
const DIAPHRAGM_ADDED = byOpening([
  [75, 2.6 - 2.3],
  [50, 4.3 - 2.3],
  [25, 21 - 2.3],
]);

/** Name, role, what it is, K1, K of infinite Reynolds number and size; fully open. */
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

/** Name, role, what it is, K1, Ki, Kd; fully open. */
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

const REYNOLDS_VALVES = [...TWO_K.map(twoKRow('valve')), ...THREE_K.map(threeKRow('valve'))];

/** Every valve that a loop may name. */
export const VALVES: readonly ValveRow[] = [
  throttling(
    openOrShut('ball', 3, 'Full-bore ball valve, a quarter turn shuts'),
    BALL_ADDED,
    `${WEISBACH}, plug cock by angle; at a third and two thirds closed these are the ball-valve figures of Munson et al., Fundamentals of Fluid Mechanics, table 8.2`,
  ),
  throttling(
    openOrShut('gate', 8, 'Gate valve, opening by lift of the gate'),
    GATE_ADDED,
    `${WEISBACH}, gate by eighths of the diameter`,
  ),
  throttling(
    openOrShut('butterfly', 45, 'Centric butterfly valve, 2 to 8 in, a quarter turn shuts'),
    BUTTERFLY_ADDED,
    `${WEISBACH}, butterfly by angle, added to the open disc`,
  ),
  throttling(openOrShut('globe', 340, 'Globe valve, opening by lift of the plug'), GLOBE_ADDED, AFTER_LAPPLE),
  throttling(
    openOrShut('diaphragm', 149, 'Diaphragm valve, weir type, opening by lift'),
    DIAPHRAGM_ADDED,
    AFTER_LAPPLE,
  ),
  openOrShut('diaphragm-straight', 39, 'Diaphragm valve, straight-through type'),
  openOrShut('butterfly-double-offset', 74, 'Double-offset butterfly valve, 2 to 8 in'),
  openOrShut('butterfly-triple-offset', 218, 'Triple-offset butterfly valve, 2 to 8 in'),
  openOrShut('plug', 18, 'Plug valve, straight through'),
  openOrShut('angle', 150, 'Angle valve'),
  checkValve('check-swing', 100, 'Swing check valve, angled seat'),
  checkValve('check-swing-clear', 50, 'Swing check valve, clear way'),
  checkValve('check-lift', 600, 'Lift check valve, globe body'),
  checkValve('check-lift-angle', 55, 'Lift check valve, angle body'),
  checkValve('check-tilting-disc', 40, 'Tilting-disc check valve, 5 degree disc, 2 to 8 in'),
  checkValve('check-tilting-disc-15', 120, 'Tilting-disc check valve, 15 degree disc, 2 to 8 in'),
  checkValve('foot-poppet', 420, 'Foot valve with strainer, poppet disc'),
  checkValve('foot-hinged', 75, 'Foot valve with strainer, hinged disc'),
  ...REYNOLDS_VALVES.map((row) => ({ ...row, partOpenings: [], partOpeningSource: null })),
];

const BY_NAME: ReadonlyMap<string, ValveRow> = new Map(VALVES.map((row) => [row.name, row]));

/** The check valve or foot valve of this exact name, which a run may hold as a valve or as a fitting; else undefined. */
export function findCheckValve(name: string): ValveRow | undefined {
  const row = findValve(name);
  return row?.role === 'check-valve' ? row : undefined;
}

/** The valve of this exact name, or undefined where the table has none. */
export const findValve = (name: string): ValveRow | undefined => BY_NAME.get(name);
