/** Puts the condition of a loop into a few plain sentences. */
import type { ConditionReport } from '../../../models/condition/condition-report.ts';
import type { SiteRecord } from '../../records/site/kind.ts';
import type { UnitSystem } from '../../units/unit-system.ts';
import { sayNumber } from '../../wording/numbers-in-words.ts';
import { causesWords, movementWords, nextReadingWords } from './change-words.ts';
import { dayWords } from './figures-in-words.ts';
import { outlookWords } from './outlook-words.ts';
import {
  belowRequiredWords,
  cleaningWords,
  detectableWords,
  entriesWords,
  formingWords,
  setAsideWords,
} from './state-words.ts';

interface Facts {
  /** Of the loop. */
  readonly name: string;
  readonly site: SiteRecord;
  readonly system: UnitSystem;
}

/** Shown is the last whole day of a baseline, which ends at the time of day at which it began. */
const LAST_DAY = 1;

const TOO_FEW =
  'has too few readings to judge: it takes three days with a flow or a power of the running pump, not long past';

export function conditionSentence(report: ConditionReport, facts: Facts): string {
  const { name, site, system } = facts;
  const { timeZone } = site.document;
  const aside = setAsideWords(report);
  if (report.isStopped) return stoppedWords(report, name);
  switch (report.verdict) {
    case 'not-enough-readings':
      return `Loop "${name}" ${TOO_FEW}.${entriesWords(report, timeZone)}${aside}`;
    case 'baseline-forming':
      return `${formingWords(report, name, timeZone)}${belowRequiredWords(report, system)}${entriesWords(report, timeZone)}${aside}`;
    case 'as-expected': {
      const since = report.isByFormer ? 'the baseline before its last cleaning' : 'its baseline';
      return `Loop "${name}" has not changed since ${since}.${belowRequiredWords(report, system)}${cleaningWords(report, timeZone)}${detectableWords(report)}${entriesWords(report, timeZone)}${aside}`;
    }
    default:
      return `${changedWords(report, facts)}${belowRequiredWords(report, system)}${aside}`;
  }
}

const stoppedWords = ({ setting }: ConditionReport, name: string): string =>
  `Danger: The pump on loop "${name}" is set to ${sayNumber(setting)} % and moves no water. Check its power supply, its controller and its impeller at once.`;

function changedWords(report: ConditionReport, { name, site, system }: Facts): string {
  const { timeZone, currency } = site.document;
  if (report.provisional) {
    return `Loop "${name}" has changed: power or flow is over 30 % off its first days. ${formingWords(report, name, timeZone)}`;
  }
  const headline = `Loop "${name}" has changed since ${baselineWords(report, timeZone)}.`;
  const outlook = outlookWords(report, { timeZone, currency });
  return `${headline}${movementWords(report, timeZone)}${causesWords(report)}${nextReadingWords(report, system)}${outlook}`;
}

function baselineWords({ baseline, isByFormer }: ConditionReport, timeZone: string): string {
  if (isByFormer || baseline === null) return 'the baseline before its last cleaning';
  return `its baseline (${dayWords(timeZone, baseline.from)} to ${dayWords(timeZone, baseline.to - LAST_DAY)})`;
}
