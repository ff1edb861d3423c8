/** Mean bores of standard plastic pipe from outside diameter and least wall. */

/** ASTM D1785: nominal inches, outside diameter, least wall of schedule 40 and of schedule 80 [in]. */
const INCH_ROWS: readonly (readonly [string, number, number, number])[] = [
  ['1/2', 0.84, 0.109, 0.147],
  ['3/4', 1.05, 0.113, 0.154],
  ['1', 1.315, 0.133, 0.179],
  ['1-1/4', 1.66, 0.14, 0.191],
  ['1-1/2', 1.9, 0.145, 0.2],
  ['2', 2.375, 0.154, 0.218],
  ['2-1/2', 2.875, 0.203, 0.276],
  ['3', 3.5, 0.216, 0.3],
  ['4', 4.5, 0.237, 0.337],
];

/** Allowance over the least wall: 12 %, not under 0.020 in; the mean wall takes half. */
const allowance = (wall: number): number => Math.max(0.02, 0.12 * wall);

const meanBore = (outside: number, wall: number): number => (outside - 2 * wall - allowance(wall)) * 0.0254;

const BORES: ReadonlyMap<string, number> = new Map(
  INCH_ROWS.flatMap(([nominal, outside, wall40, wall80]) => [
    [`sch40 ${nominal}`, meanBore(outside, wall40)] as const,
    [`sch80 ${nominal}`, meanBore(outside, wall80)] as const,
  ]),
);

/** Names that this table holds. */
export const pipeNames: readonly string[] = [...BORES.keys()];

/** Mean bore [m] of a standard pipe. */
export function standardBore(name: string): number {
  const bore = BORES.get(name);
  if (bore === undefined) throw new Error(`no pipe ${name} in the reference table`);
  return bore;
}
