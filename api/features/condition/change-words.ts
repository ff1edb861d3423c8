/** Puts a change into sentences: what moved, since when, for what cause, and what to read next. */
import type { ConditionReport, NamedCause } from '../../../models/condition/condition-report.ts';
import type { GaugeReport } from '../../../models/condition/gauge-report.ts';
import { isPressure } from '../../../models/readings/measure.ts';
import type { Quantity } from '../../units/table.ts';
import type { UnitSystem } from '../../units/unit-system.ts';
import { say, sayNumber } from '../../wording/numbers-in-words.ts';
import { causeNoun, causeWords, gaugeWords } from './cause-words.ts';
import { asksForCleaning } from './due-for-cleaning.ts';
import { capitalised, dayWords, listed, percent, percentRange } from './figures-in-words.ts';

/** Standard errors of a 95 % interval. */
const DEVIATE = 1.96;
/** Measures and causes that are named; others are in the answer. */
const NAMED_MOST = 4;
const DIGITS = 3;

interface Moved extends GaugeReport {
  readonly change: NonNullable<GaugeReport['change']>;
}

/** The measures that moved beyond their errors, else the one that did most. */
function movedOf({ gauges }: ConditionReport): readonly Moved[] {
  const all = gauges.flatMap((one) => (one.change === null ? [] : [{ ...one, change: one.change }]));
  const errors = ({ change }: Moved) => Math.abs(change.value) / change.standardError;
  const beyond = all.filter((one) => errors(one) > DEVIATE);
  return beyond.length > 0 ? beyond : all.toSorted((a, b) => errors(b) - errors(a)).slice(0, 1);
}

function movedWords({ gauge, change }: Moved, place: number): string {
  const { value, standardError } = change;
  const ofHead = isPressure(gauge.measure) ? ' of the head' : '';
  const words = `${gaugeWords(gauge)} ${place === 0 ? 'is ' : ''}${percent(value)}${ofHead} ${value < 0 ? 'lower' : 'higher'}`;
  if (place > 0) return words;
  const half = DEVIATE * standardError;
  return `${words} (${percentRange(Math.max(0, Math.abs(value) - half), Math.abs(value) + half)})`;
}

/** ` Flow is 11 % lower (8 to 14 %) and power 2 % lower, gradually since about 2026-05-20.` */
export function movementWords(report: ConditionReport, timeZone: string): string {
  const moved = movedOf(report).slice(0, NAMED_MOST).map(movedWords);
  if (moved.length === 0) return '';
  const { course } = report;
  const onset = course === null ? '' : dayWords(timeZone, (course.onset.earliest + course.onset.latest) / 2);
  const since =
    course?.kind === 'gradual'
      ? `, gradually since about ${onset}`
      : course?.kind === 'sudden'
        ? `, suddenly about ${onset}`
        : '';
  return ` ${capitalised(listed(moved, 'and'))}${since}.`;
}

const withProbability = (words: string, { probability }: NamedCause): string =>
  `${words} (${percent(probability)})`;

/** What explains the change, and what to do. */
export function causesWords(report: ConditionReport): string {
  const { verdict, causes, causePairs } = report;
  const [first, ...others] = causes;
  if (verdict === 'unexplained') {
    const [pair] = causePairs;
    const both = pair === undefined ? '' : ` Together ${listed(pair.map(causeNoun), 'and')} would.`;
    return ` No single cause explains it.${both} Check the meters and the entries.`;
  }
  if (first === undefined) return '';
  const { clause, action } = causeWords(first);
  if (others.length === 0) return ` ${capitalised(withProbability(clause, first))}. ${action}`;
  if (verdict !== 'changed') return ` ${capitalised(withProbability(clause, first))}. ${action}`;
  const named = causes.slice(0, NAMED_MOST).map((one) => withProbability(causeWords(one).noun, one));
  const rest = causes.length > NAMED_MOST ? [...named, 'another cause'] : named;
  const what = asksForCleaning(report) ? 'Clean the screen first.' : action;
  return ` Too close to call: ${listed(rest, 'or')}. ${what}`;
}

const QUANTITY_OF = {
  flow: 'flow',
  outletFlow: 'flow',
  power: 'power',
  head: 'head',
  suctionPressure: 'pressure',
  dischargePressure: 'pressure',
} as const satisfies Record<string, Quantity>;

/** ` Read the suction pressure at 80 %: 1.1 kPa if the intake is clogged, else 3.6 kPa.` */
export function nextReadingWords(
  { nextReading, setting, causes }: ConditionReport,
  system: UnitSystem,
): string {
  const [first, other] = nextReading?.expected ?? [];
  const cause = causes.find((one) => one.cause === first?.cause);
  if (nextReading === null || first === undefined || other === undefined || cause === undefined) return '';
  const { gauge } = nextReading;
  const shown = (value: number) => say(value, QUANTITY_OF[gauge.measure], system, DIGITS);
  const valve = gauge.valveClosed ? ' with a valve closed for a few seconds' : '';
  return ` Read the ${gaugeWords(gauge)} at ${sayNumber(setting)} %${valve}: ${shown(first.value)} if ${causeWords(cause).clause}, else ${shown(other.value)}.`;
}
