/** Lists the losses of valves by name, fully open or part open, each by one method or several. */
import { type ByMethod, byMethods, equivalentDiameters, threeK, twoK } from './loss-methods.ts';
import { byName, type LossMethod, type NamedLoss, rowOf } from './named-loss.ts';
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

/** The rows of a valve fully open; the first method is its default. */
const valve = (
  name: string,
  description: string,
  methods: readonly ByMethod[],
  role: Role = 'valve',
): readonly ValveRow[] =>
  byMethods({ name, kind: 'valve', role, description }, methods).map((row) => ({
    ...row,
    partOpenings: [],
    partOpeningSource: null,
  }));

/** One that closes by itself. */
const checkValve = (name: string, description: string, methods: readonly ByMethod[]): readonly ValveRow[] =>
  valve(name, description, methods, 'check-valve');

/** What is added part open belongs to K by equivalent diameters; K by Reynolds number is known fully open alone. */
const throttling = (
  rows: readonly ValveRow[],
  partOpenings: readonly PartOpening[],
  partOpeningSource: string,
): readonly ValveRow[] =>
  rows.map((row) =>
    row.method === 'equivalent-diameters' ? { ...row, partOpenings, partOpeningSource } : row,
  );

/** Rows of [opening %, added K]. */
const byOpening = (rows: readonly (readonly [number, number])[]): readonly PartOpening[] =>
  rows.map(([opening, addedLossCoefficient]) => ({ opening, addedLossCoefficient }));

/** Rows of [angle from fully open in degrees, added K]; a quarter turn closes. */
const byAngle = (rows: readonly (readonly [number, number])[]): readonly PartOpening[] =>
  byOpening(rows.map(([angle, added]) => [100 * (1 - angle / 90), added]));

const WEISBACH =
  'Weisbach\'s results as W. C. Unwin gives them, "Hydraulics", Encyclopaedia Britannica, 11th edition, vol. 14, section 83';
const PERRY = "Perry's Chemical Engineers' Handbook, table 6-4";
const LESS_OPEN = 'less its fully open value, as reprinted';

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

/** Every valve that a loop may name, by each of its methods; the first of a name is its default. */
export const VALVES: readonly ValveRow[] = [
  throttling(
    valve('ball', 'Full-bore ball valve; a quarter turn closes it', [
      equivalentDiameters(3),
      threeK(300, 0.017, 3.5, '; one prints 0.015 for 0.017'),
    ]),
    BALL_ADDED,
    `${WEISBACH}, cock, closed at 82 degrees; at a third and two thirds closed these are the ball-valve figures of Munson et al., table 8.2`,
  ),
  valve('ball-reduced', 'Ball valve, seat 0.9 of the bore', [twoK(500, 0.15)]),
  throttling(
    valve('gate', 'Gate valve of full line size, opening by lift of the gate', [
      ...[equivalentDiameters(8), twoK(300, 0.1), threeK(300, 0.037, 3.9)],
    ]),
    GATE_ADDED,
    `${WEISBACH}, sluice, by eighths of the diameter`,
  ),
  throttling(
    valve('butterfly', 'Centric butterfly valve, 2 to 8 in; a quarter turn closes it', [
      ...[equivalentDiameters(45), twoK(800, 0.25)],
    ]),
    BUTTERFLY_ADDED,
    `${WEISBACH}, throttle valve, by angle, added to the open disc`,
  ),
  throttling(
    valve('globe', 'Globe valve, opening by lift of the plug', [
      ...[equivalentDiameters(340), twoK(1500, 4), threeK(1500, 1.7, 3.6)],
    ]),
    GLOBE_ADDED,
    `${PERRY} (globe valve with plug disc), ${LESS_OPEN}`,
  ),
  throttling(
    valve('diaphragm', 'Diaphragm valve, weir type, opening by lift', [
      ...[equivalentDiameters(149), twoK(1000, 2), threeK(1000, 0.69, 4.9)],
    ]),
    DIAPHRAGM_ADDED,
    `${PERRY} (diaphragm valve), ${LESS_OPEN}`,
  ),
  valve('diaphragm-straight', 'Diaphragm valve, straight-through type', [equivalentDiameters(39)]),
  valve('butterfly-double-offset', 'Double-offset butterfly valve, 2 to 8 in', [equivalentDiameters(74)]),
  valve('butterfly-triple-offset', 'Triple-offset butterfly valve, 2 to 8 in', [equivalentDiameters(218)]),
  valve('plug', 'Plug valve, straight through', [equivalentDiameters(18), threeK(300, 0.084, 3.9)]),
  valve('angle', '90 degree angle valve or Y-type valve', [
    ...[equivalentDiameters(150), twoK(1000, 2), threeK(1000, 0.69, 4)],
  ]),
  valve('angle-45', '45 degree angle valve', [threeK(950, 0.25, 4), equivalentDiameters(55)]),
  checkValve('check-swing', 'Swing check valve, angled seat', [
    ...[equivalentDiameters(100), twoK(1500, 1.5), threeK(1500, 0.46, 4)],
  ]),
  checkValve('check-swing-clear', 'Swing check valve, clear way', [equivalentDiameters(50)]),
  checkValve('check-lift', 'Lift check valve, globe body', [
    ...[equivalentDiameters(600), twoK(2000, 10), threeK(2000, 2.85, 3.8)],
  ]),
  checkValve('check-lift-angle', 'Lift check valve, angle body', [equivalentDiameters(55)]),
  checkValve('check-tilting-disc', 'Tilting-disc check valve, 5 degree disc, 2 to 8 in', [
    ...[equivalentDiameters(40), twoK(1000, 0.5)],
  ]),
  checkValve('check-tilting-disc-15', 'Tilting-disc check valve, 15 degree disc, 2 to 8 in', [
    equivalentDiameters(120),
  ]),
  checkValve('foot-poppet', 'Foot valve with strainer, poppet disc', [equivalentDiameters(420)]),
  checkValve('foot-hinged', 'Foot valve with strainer, hinged disc', [equivalentDiameters(75)]),
].flat();

const BY_NAME = byName(VALVES);

/** The check valve or foot valve of this exact name, which a run may hold as a valve or as a fitting; else undefined. */
export function findCheckValve(name: string, method?: LossMethod): ValveRow | undefined {
  const row = findValve(name, method);
  return row?.role === 'check-valve' ? row : undefined;
}

/** The valve of this exact name by a method, else by its default; undefined where the table has no such row. */
export const findValve = (name: string, method?: LossMethod): ValveRow | undefined =>
  rowOf(BY_NAME.get(name), method);

/** The methods that the table has for a valve, its default first; empty for a name that it does not have. */
export const methodsOfValve = (name: string): readonly LossMethod[] =>
  (BY_NAME.get(name) ?? []).map(({ method }) => method);
