/** Describes the chart of a day in words. */
import { MS_PER_HOUR } from '../../../models/calendar/zone-offsets.ts';
import type { LegendRow } from '../../drawing/kit/legend.ts';
import { plainName, shortName } from '../../drawing/markup/name-text.ts';
import { say, sayNumber } from '../../wording/numbers-in-words.ts';
import type { DayFigures } from './day.ts';
import { SHORT_LINE } from './day-styles.ts';

const USUAL_HOURS = 24;
const STEPS_IN_WORDS = 12;

const totalWords = ({ energy, cost, currency, system }: DayFigures): string =>
  `${say(energy, 'energy', system)}${cost === null ? '' : ` and ${sayNumber(cost)} ${currency}`}`;

const pumpWords = ({ pumpName, count }: DayFigures, name: (text: string) => string): string =>
  `${count === 1 ? '' : `${count} x `}${name(pumpName)}`;

const isShort = ({ steps }: DayFigures): boolean => steps.some(({ feasible }) => !feasible);

export const daySubtitle = (figures: DayFigures): string =>
  `${pumpWords(figures, shortName)}: ${totalWords(figures)} in the day`;

export const dayLegend = (figures: DayFigures): readonly LegendRow[] =>
  isShort(figures) ? [{ sample: { line: SHORT_LINE }, text: 'no setting is feasible' }] : [];

export function dayNotes(figures: DayFigures): readonly string[] {
  const { from, until, prices } = figures;
  const hours = (until - from) / MS_PER_HOUR;
  return [
    ...(hours === USUAL_HOURS ? [] : [`The clocks change on this day: it has ${sayNumber(hours)} hours.`]),
    ...(prices === null ? ['No price is set.'] : []),
    'Estimates from the entered points and pipework.',
  ];
}

export function dayDescription(figures: DayFigures): string {
  const { steps, loopName, date, timeZone, system } = figures;
  const sentences = steps.slice(0, STEPS_IN_WORDS).map(({ startsAt, setting, flow, power, phase }) => {
    const named = phase === null ? '' : ` (${plainName(phase)})`;
    return `From ${startsAt}${named}: ${sayNumber(setting)} %, ${say(flow, 'flow', system)}, ${say(power, 'power', system)}.`;
  });
  const more = steps.length > STEPS_IN_WORDS ? [`${steps.length - STEPS_IN_WORDS} more steps follow.`] : [];
  const short = isShort(figures) ? ['At some of them no setting is feasible.'] : [];
  return [
    `Setting, flow, electrical power and price of ${plainName(loopName)} through ${date}, ${timeZone}; pump ${pumpWords(figures, plainName)}; ${totalWords(figures)}.`,
    ...sentences,
    ...more,
    ...short,
  ].join(' ');
}
