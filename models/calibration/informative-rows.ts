/** As many measured rows as are computed within a bound, those that tell most first. */
import type { Measured } from './measured-rows.ts';

/** Duties are solved for every place, and each takes about as long as this and the branches of the loop: some seconds in all. */
const WORK = { most: 10_000, duty: 40 } as const;

interface Place {
  readonly rows: readonly Measured[];
  readonly readings: number;
  readonly hasHead: boolean;
  readonly isShut: boolean;
}

/** The rows of places, each a setting of one state of the valves: shut outlets, then heads, then those read most often. */
export function tellingRows(rows: readonly Measured[], branches: number): readonly Measured[] {
  const most = Math.max(1, Math.floor(WORK.most / (WORK.duty + branches)));
  const still = rows.filter(({ zeroFlow }) => zeroFlow);
  const places = placesOf(rows.filter(({ zeroFlow }) => !zeroFlow));
  if (places.length <= most) return rows;
  const ranked = places.toSorted(
    (a, b) =>
      Number(b.isShut) - Number(a.isShut) || Number(b.hasHead) - Number(a.hasHead) || b.readings - a.readings,
  );
  return [...still, ...ranked.slice(0, most).flatMap((place) => place.rows)];
}

function placesOf(rows: readonly Measured[]): readonly Place[] {
  const places = new Map<string, Measured[]>();
  for (const row of rows) {
    const key = JSON.stringify([row.setting, row.shut]);
    const known = places.get(key);
    if (known === undefined) places.set(key, [row]);
    else known.push(row);
  }
  return [...places.values()].map((own) => ({
    rows: own,
    readings: Math.max(...own.map(({ count }) => count)),
    hasHead: own.some(({ measure }) => measure === 'head'),
    isShut: own.some(({ shut }) => shut.length > 0),
  }));
}
