/** Says whether a step of bore between two pipes of a run costs head where no element is entered for it. */

/** `abrupt`: as a step without any fitting; `ignored`: nothing. */
export type BoreChanges = 'abrupt' | 'ignored';

/** What holds for a loop that does not say. */
export const BORE_CHANGES: BoreChanges = 'abrupt';
