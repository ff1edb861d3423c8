/** The head across the pump that a reading tells. */
import type { Reading } from './reading.ts';

/**
 * The stated head, else (dischargePressure - suctionPressure)/(rho g) + rise [m]; undefined where neither was measured.
 *
 * @param pressurePerHead rho g [Pa/m].
 * @param rise of the velocity head from one gauge to the other [m].
 */
export function headOfReading(
  { head, suctionPressure, dischargePressure }: Reading,
  { pressurePerHead, rise }: { readonly pressurePerHead: number; readonly rise: number },
): number | undefined {
  if (head !== undefined) return head;
  if (suctionPressure === undefined || dischargePressure === undefined) return undefined;
  return (dischargePressure - suctionPressure) / pressurePerHead + rise;
}
