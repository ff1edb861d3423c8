/** States the standard acceleration of gravity. */

/** [m/s2], exact by convention (CGPM 1901). */
export const GRAVITY = 9.80665;
