/** Names a pump, or several alike, in a few words. */
import { quoted } from '../../wording/quoted.ts';

/** `pump "Canister 250"`, `2 x pump "Canister 120"`. */
export const pumpWords = ({
  pump,
  count,
}: {
  readonly pump: { readonly name: string };
  readonly count: number;
}): string => `${count === 1 ? '' : `${count} x `}pump ${quoted(pump.name)}`;
