/** Picks as many rows as are computed within a bound, those that say most first. */
import type { Row } from './row-collector.ts';

/** Duties are solved for every place, and each takes about as long as this and the branches of the loop: some seconds in all. */
const WORK = { most: 10_000, duty: 40 } as const;

/** Places, each a setting of one state of the valves: closed outlets first, then heads, then those read most often. */
export function chosenRows(rows: readonly Row[], branches: number): readonly Row[] {
  const most = Math.max(1, Math.floor(WORK.most / (WORK.duty + branches)));
  const places = new Map<string, Row[]>();
  for (const row of rows) {
    if (row.zeroFlow) continue;
    const key = JSON.stringify([row.setting, row.shut]);
    places.set(key, [...(places.get(key) ?? []), row]);
  }
  if (places.size <= most) return rows;
  const rankOf = (own: readonly Row[]) => [
    Number(own.some(({ shut }) => shut.length > 0)),
    Number(own.some(({ measure }) => measure === 'head')),
    Math.max(...own.map(({ values }) => values.length)),
  ];
  const ranked = [...places.values()].toSorted((a, b) => {
    const [first, second] = [rankOf(a), rankOf(b)];
    return second.map((rank, i) => rank - (first[i] ?? 0)).find((difference) => difference !== 0) ?? 0;
  });
  return [...rows.filter(({ zeroFlow }) => zeroFlow), ...ranked.slice(0, most).flat()];
}
