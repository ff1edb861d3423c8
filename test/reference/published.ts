/** A check value with where it comes from. */

/** `tolerance` is relative unless the table says absolute; `why` justifies one looser than the printed digits. */
export interface Published {
  readonly expected: number;
  readonly tolerance: number;
  readonly source: string;
  readonly why?: string;
}
