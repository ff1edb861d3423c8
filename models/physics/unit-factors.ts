/** States how much of an SI unit makes another unit that data and the trade use. */

/** [m] of an inch, exact by the international agreement of 1959. */
export const INCH = 0.0254;
/** [Pa] of a bar. */
export const BAR = 1e5;
/** [W] of a kilowatt, so also Wh of a kWh. */
export const WATTS_PER_KILOWATT = 1000;
