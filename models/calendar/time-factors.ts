/** States how many of one unit of time make another. */

export const SECONDS_PER_MINUTE = 60;
export const MINUTES_PER_HOUR = 60;
export const SECONDS_PER_HOUR = 3600;
export const HOURS_PER_DAY = 24;
export const MINUTES_PER_DAY = 1440;
export const SECONDS_PER_DAY = 86_400;
export const DAYS_PER_WEEK = 7;
export const MONTHS_PER_YEAR = 12;

/** Days of the year that energy, works and rates of failure are counted by. */
export const DAYS_PER_YEAR = 365;
/** Days of the mean year of the Julian calendar, by which ages and slopes over instants are counted. */
export const DAYS_PER_MEAN_YEAR = 365.25;
