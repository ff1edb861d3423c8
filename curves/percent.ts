/** States how many per cent make a whole. */

export const PERCENT = 100;
