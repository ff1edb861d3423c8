/** Finds how much of a screen's face is open. */

/** How holes are arranged in a perforated plate: in rows and columns, or each in the middle between two of the next row. */
export type HolePattern = 'square' | 'staggered';

/** Widths [m]; `pitch` is from the middle of one opening to the middle of the next. */
export type Openings =
  | { readonly slot: number; readonly pitch: number }
  | { readonly hole: number; readonly pitch: number; readonly pattern: HolePattern };

/**
 * Open area over whole area [-] of a regular screen, by plane geometry.
 *
 * Slots: slot/pitch. Round holes: `square` pi d^2/(4 p^2), `staggered` (60 degrees) pi d^2/(2 sqrt3 p^2).
 * @param openings widths above 0 [m], the opening narrower than the pitch.
 */
export function openFraction(openings: Openings): number {
  if ('slot' in openings) return openings.slot / openings.pitch;
  const square = (openings.hole / openings.pitch) ** 2;
  return openings.pattern === 'square' ? (Math.PI / 4) * square : (Math.PI / (2 * Math.sqrt(3))) * square;
}
