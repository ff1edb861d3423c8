/** Describes an axis of instants, by the calendar of UTC. */

import { scaleUtc } from 'd3-scale';
import { MS_PER_DAY } from '../../../models/calendar/zone-offsets.ts';
import type { Axis } from './axis.ts';

const TICKS = 6;
/** Within fewer days the hours are shown too. */
const FEW_DAYS = 4;

/** `2026-01-15`, or `01-15 06:00` where few days are shown. */
function dateLabel(instant: number, hasHours: boolean): string {
  const text = new Date(instant).toISOString();
  return hasHours ? `${text.slice(5, 10)} ${text.slice(11, 16)}` : text.slice(0, 10);
}

/** In ms since 1970-01-01T00:00Z; a single instant gets a day around it. */
export function dateAxis(interval: { readonly from: number; readonly until: number }): Axis {
  const isInstant = interval.until <= interval.from;
  const from = isInstant ? interval.from - MS_PER_DAY / 2 : interval.from;
  const until = isInstant ? interval.from + MS_PER_DAY / 2 : interval.until;
  const hasHours = until - from < FEW_DAYS * MS_PER_DAY;
  const ticks = scaleUtc([from, until], [0, 1]).ticks(TICKS);
  return {
    name: 'time, UTC',
    from,
    until,
    ticks: ticks.map((tick) => ({ value: tick.getTime(), label: dateLabel(tick.getTime(), hasHours) })),
  };
}
