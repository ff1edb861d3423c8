/** Names a pump, or several alike, in a few words. */

/** `2 x Canister 120`. */
export const pumpWords = ({
  pump,
  count,
}: {
  readonly pump: { readonly name: string };
  readonly count: number;
}): string => (count === 1 ? pump.name : `${count} x ${pump.name}`);
