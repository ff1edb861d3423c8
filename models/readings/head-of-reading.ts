/** Finds the head across the pump from a reading. */
import type { Reading } from './reading.ts';

/**
 * The head across the pump [m]: the stated one, else (dischargePressure - suctionPressure)/(rho g) + rise.
 *
 * @param by pressurePerHead rho g [Pa/m]; rise of the velocity head from one gauge to the other [m].
 * @returns undefined where neither was measured.
 */
export function headOfReading(
  { head, suctionPressure, dischargePressure }: Reading,
  { pressurePerHead, rise }: { readonly pressurePerHead: number; readonly rise: number },
): number | undefined {
  if (head !== undefined) return head;
  if (suctionPressure === undefined || dischargePressure === undefined) return undefined;
  return (dischargePressure - suctionPressure) / pressurePerHead + rise;
}
