/** Writes routine checks as a calendar (RFC 5545) that other calendars subscribe to. */

import ical, { type ICalCalendar, ICalEventTransparency } from 'ical-generator';
import { civilDate } from '../../../models/calendar/civil-day.ts';
import { textOfDate } from '../../../models/calendar/civil-text.ts';
import { SECONDS_PER_HOUR } from '../../../models/calendar/time-factors.ts';
import type { MaintenanceTaskRecord } from '../../records/task/contract.ts';
import { plainDecimal } from '../../wording/plain-decimal.ts';
import { foldedLine } from './folded-line.ts';
import { recurrenceLines } from './recurrence-rule.ts';

export interface NamedTask {
  readonly record: MaintenanceTaskRecord;
  /** The loop or the pump that it is of. */
  readonly of: string;
}

interface CalendarFacts {
  readonly name: string;
  readonly currency: string;
  readonly tasks: readonly NamedTask[];
}

const LINE_END = '\r\n';
/** How often a subscriber should look again. */
const REFRESH_HOURS = 6;

/** Control characters have no place in a text of a calendar, line ends and tabs aside. */
const printable = (text: string): string => text.replace(/\r\n?/g, '\n').replace(/[^\P{Cc}\n\t]/gu, ' ');

/** As a value of type TEXT (3.3.11): the library escapes those of events, not the name of a calendar. */
const escaped = (text: string): string =>
  printable(text)
    .replace(/[\\;,]/g, (mark) => `\\${mark}`)
    .replace(/\n/g, '\\n');

function eventOf(calendar: ICalCalendar, { record, of }: NamedTask, currency: string): string {
  const { document, progress } = record;
  const changed = new Date(progress.changedAt);
  const parts = document.parts > 0 ? `, parts ${plainDecimal(document.parts)} ${currency}` : '';
  const event = calendar.createEvent({
    id: `${record.id}@loopwright`,
    summary: printable(`${document.title} (${of})`),
    description: `About ${plainDecimal(document.minutes)} min${parts}. Entering a completion moves it on.`,
    start: textOfDate(civilDate(progress.nextDue)),
    allDay: true,
    repeating: recurrenceLines(document.every, progress.nextDue).join('\r\n'),
    // Of the record, never of the moment: the same checks make the same calendar.
    stamp: changed,
    lastModified: changed,
    created: new Date(record.createdAt),
    sequence: progress.changes,
    transparency: ICalEventTransparency.TRANSPARENT,
  });
  event.createCategory({ name: document.kind });
  return event.toString();
}

/** Properties that only some programs know are left to them, but for the name, which most read by no other. */
const isCommon = (line: string): boolean => !line.startsWith('X-') || line.startsWith('X-WR-CALNAME');

const linesOf = (text: string): readonly string[] => text.split(LINE_END).filter((line) => line !== '');

/**
 * One event a check, on the day that it is due next and on by its interval, all day, in no zone of time. Lines are folded
 * here: the library takes a measure of each character, which for many events is ten times the rest of the work.
 */
export function maintenanceCalendar({ name, currency, tasks }: CalendarFacts): string {
  const calendar = ical({
    name: escaped(name),
    prodId: { company: 'loopwright', product: 'maintenance', language: 'EN' },
    ttl: REFRESH_HOURS * SECONDS_PER_HOUR,
  });
  const lines = linesOf(calendar.toString());
  const events = tasks.flatMap((task) => linesOf(eventOf(calendar, task, currency)).map(foldedLine));
  return [...lines.slice(0, -1), ...events, ...lines.slice(-1)]
    .filter(isCommon)
    .map((line) => `${line}${LINE_END}`)
    .join('');
}
