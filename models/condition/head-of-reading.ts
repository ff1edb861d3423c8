/** The head across the pump that a reading tells. */
import type { Reading } from './reading.ts';

/** The stated head, else (dischargePressure - suctionPressure)/(rho g) [m]; undefined where neither was measured. */
export function headOfReading(
  { head, suctionPressure, dischargePressure }: Reading,
  pressurePerHead: number,
): number | undefined {
  if (head !== undefined) return head;
  if (suctionPressure === undefined || dischargePressure === undefined) return undefined;
  return (dischargePressure - suctionPressure) / pressurePerHead;
}
