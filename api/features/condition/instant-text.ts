/** Writes instants that models count in days. */
import { MS_PER_DAY } from '../../../models/calendar/zone-offsets.ts';

/** RFC 3339 in UTC of days since 1970-01-01T00:00Z. */
export const instantText = (days: number): string => new Date(Math.round(days * MS_PER_DAY)).toISOString();
