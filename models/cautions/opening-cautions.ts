/** The caution about animals that the openings of a screen let through. */
import { type Caution, caution } from './catalogue.ts';

/** Compares slots or holes [m] with the width of the smallest animal [m]; one that just fits is caught by them. */
export function openingCautions(
  { slot, hole }: { readonly slot?: number | undefined; readonly hole?: number | undefined },
  smallestAnimal: number | undefined,
): readonly Caution[] {
  if (smallestAnimal === undefined) return [];
  const opening = slot ?? hole;
  if (opening === undefined) return [caution('animal-not-checked')];
  return opening >= smallestAnimal ? [caution('animal-fits-opening')] : [];
}
