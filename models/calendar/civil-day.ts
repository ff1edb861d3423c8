/** Numbers the days of the Gregorian calendar from 1970-01-01. */

/** A date of the Gregorian calendar. */
export interface CivilDate {
  /** [year] */
  readonly year: number;
  /** [month] 1..12. */
  readonly month: number;
  /** [day of the month] 1..31. */
  readonly day: number;
}

const DAYS_PER_ERA = 146_097;
const YEARS_PER_ERA = 400;
/** Days from 0000-03-01 to 1970-01-01. */
const EPOCH = 719_468;

/**
 * The number of a day [days], 0 being 1970-01-01. Years are counted from March, so that the leap day comes last.
 *
 * Source: Howard Hinnant, chrono-compatible low-level date algorithms (2013), days_from_civil, from memory; proved by
 *   a walk over 400 years in the test.
 */
export function dayNumber({ year, month, day }: CivilDate): number {
  const marchYear = month <= 2 ? year - 1 : year;
  const era = Math.floor(marchYear / YEARS_PER_ERA);
  const yearOfEra = marchYear - era * YEARS_PER_ERA;
  const dayOfYear = Math.floor((153 * (month > 2 ? month - 3 : month + 9) + 2) / 5) + day - 1;
  const dayOfEra = yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear;
  return era * DAYS_PER_ERA + dayOfEra - EPOCH;
}

/** The date of a day number [days]: the inverse of `dayNumber`. */
export function civilDate(number: number): CivilDate {
  const shifted = number + EPOCH;
  const era = Math.floor(shifted / DAYS_PER_ERA);
  const dayOfEra = shifted - era * DAYS_PER_ERA;
  const yearOfEra = Math.floor(
    (dayOfEra -
      Math.floor(dayOfEra / 1460) +
      Math.floor(dayOfEra / 36_524) -
      Math.floor(dayOfEra / 146_096)) /
      365,
  );
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const marchMonth = Math.floor((5 * dayOfYear + 2) / 153);
  const month = marchMonth < 10 ? marchMonth + 3 : marchMonth - 9;
  return {
    year: yearOfEra + era * YEARS_PER_ERA + (month <= 2 ? 1 : 0),
    month,
    day: dayOfYear - Math.floor((153 * marchMonth + 2) / 5) + 1,
  };
}
