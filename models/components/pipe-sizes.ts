/** Lists standard plastic pipe sizes by name. */
import { INCH } from '../physics/unit-factors.ts';

/** A row of the table. */
export interface PipeSize {
  readonly name: string;
  readonly standard: string;
  readonly nominal: string;
  /** [m] */
  readonly outsideDiameter: number;
  /** [m] */
  readonly minimumWall: number;
  /** Mean bore [m], computed from the standard's minimum wall and wall tolerance. */
  readonly insideDiameter: number;
  readonly source: string;
}

const MILLIMETRE = 1e-3;

/** Nominal size, outside diameter, minimum wall of Schedule 40 and of Schedule 80 [in]: ASTM D1785. */
const INCH_SIZES = [
  ['1/2', 0.84, 0.109, 0.147],
  ['3/4', 1.05, 0.113, 0.154],
  ['1', 1.315, 0.133, 0.179],
  ['1-1/4', 1.66, 0.14, 0.191],
  ['1-1/2', 1.9, 0.145, 0.2],
  ['2', 2.375, 0.154, 0.218],
  ['2-1/2', 2.875, 0.203, 0.276],
  ['3', 3.5, 0.216, 0.3],
  ['4', 4.5, 0.237, 0.337],
] as const;

/** Outside diameter, minimum wall [mm]: EN ISO 1452-2, SDR 21 to 90 mm, SDR 26 at 110 mm. */
const PN10_SIZES = [
  [32, 1.6],
  [40, 1.9],
  [50, 2.4],
  [63, 3.0],
  [75, 3.6],
  [90, 4.3],
  [110, 4.2],
] as const;

/** Outside diameter, minimum wall [mm]: EN ISO 1452-2, SDR 13.6 to 90 mm, SDR 17 at 110 mm. */
const PN16_SIZES = [
  [20, 1.5],
  [25, 1.9],
  [32, 2.4],
  [40, 3.0],
  [50, 3.7],
  [63, 4.7],
  [75, 5.6],
  [90, 6.7],
  [110, 6.6],
] as const;

const INCH_SOURCE =
  'ASTM D1785 outside diameter and minimum wall; mean bore = OD - 2 (wall + half tolerance), tolerance the greater of 12 % of the wall and 0.020 in (tolerance from memory)';
const METRIC_SOURCE =
  'EN ISO 1452-2 minimum wall (from memory); mean bore = OD - 2 (wall + half tolerance), tolerance 0.1 wall + 0.2 mm (from memory), OD nominal';

/** Wall tolerance [in] over the minimum wall [in]: 12 %, not under 0.020 in. */
const inchTolerance = (wall: number) => Math.max(0.12 * wall, 0.02);
/** Wall tolerance [mm] over the minimum wall [mm]: a tenth and 0.2 mm. */
const metricTolerance = (wall: number) => 0.1 * wall + 0.2;

interface SizeInItsUnit {
  readonly series: string;
  readonly nominal: string;
  readonly outside: number;
  readonly wall: number;
}

/** The size in metres; `tolerance` is the wall's, in the same `unit` [m] as outside diameter and wall. */
function inMetres({ series, nominal, outside, wall }: SizeInItsUnit, unit: number, tolerance: number) {
  return {
    name: `${series} ${nominal}`,
    nominal,
    outsideDiameter: outside * unit,
    minimumWall: wall * unit,
    insideDiameter: (outside - 2 * wall - tolerance) * unit,
  };
}

const inchSize = (size: SizeInItsUnit): PipeSize => ({
  ...inMetres(size, INCH, inchTolerance(size.wall)),
  standard: 'ASTM D1785',
  source: INCH_SOURCE,
});

const metricSize = (size: SizeInItsUnit): PipeSize => ({
  ...inMetres(size, MILLIMETRE, metricTolerance(size.wall)),
  standard: 'EN ISO 1452-2',
  source: METRIC_SOURCE,
});

const metricSeries = (series: string, sizes: readonly (readonly [number, number])[]) =>
  sizes.map(([outside, wall]) => metricSize({ series, nominal: String(outside), outside, wall }));

/** Every size that a loop may name, within a series from small to large. */
export const PIPE_SIZES: readonly PipeSize[] = [
  ...INCH_SIZES.map(([nominal, outside, wall]) => inchSize({ series: 'sch40', nominal, outside, wall })),
  ...INCH_SIZES.map(([nominal, outside, , wall]) => inchSize({ series: 'sch80', nominal, outside, wall })),
  ...metricSeries('pn10', PN10_SIZES),
  ...metricSeries('pn16', PN16_SIZES),
];

const BY_NAME: ReadonlyMap<string, PipeSize> = new Map(PIPE_SIZES.map((size) => [size.name, size]));

/** The size of this exact name (`sch80 1-1/2`, `pn10 63`), or undefined where the table has none. */
export const findPipe = (name: string): PipeSize | undefined => BY_NAME.get(name);

/** The series that a size belongs to by its name: `sch40`, `sch80`, `pn10`, `pn16`. */
export const seriesOf = (name: string): string => name.slice(0, name.indexOf(' '));
