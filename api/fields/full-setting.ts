/** A pump runs at full speed at the highest setting of its controller [%]. */
export const FULL_SETTING = 100;
