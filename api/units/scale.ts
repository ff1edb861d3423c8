/** Describes how a unit relates to the unit that is kept inside. */

/** inside = (value + shift) x factor */
export interface Scale {
  readonly factor: number;
  readonly shift?: number;
}

export const toInside = (value: number, { factor, shift = 0 }: Scale): number => (value + shift) * factor;

export const fromInside = (value: number, { factor, shift = 0 }: Scale): number => value / factor - shift;
