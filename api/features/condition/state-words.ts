/** Puts into sentences what holds of a loop whether or not it changed: its baseline, its entries, its meters. */
import type { ConditionReport } from '../../../models/condition/condition-report.ts';
import { shareOf } from '../../../models/condition/gauge-report.ts';
import type { Detectable } from '../../../models/condition/present-state.ts';
import { isPressure } from '../../../models/readings/measure.ts';
import type { UnitSystem } from '../../units/unit-system.ts';
import { say } from '../../wording/numbers-in-words.ts';
import { gaugeWords, slipWords } from './cause-words.ts';
import { capitalised, dayWords, percent } from './figures-in-words.ts';

const DIGITS = { least: 3, most: 6 } as const;
/** Outlets that are named; others are in the answer. */
const NAMED_MOST = 3;

/** `The baseline of loop "Kelp flume" is forming: 5 of 8 days have readings since 2026-04-01.` */
export function formingWords({ baseline }: ConditionReport, name: string, timeZone: string): string {
  if (baseline === null) return '';
  const { from, to, dayCount, requiredDayCount } = baseline;
  const days = `${dayCount} of at least ${requiredDayCount} days have readings since ${dayWords(timeZone, from)}`;
  const end = dayCount >= requiredDayCount ? ` It ends on ${dayWords(timeZone, to)}.` : '';
  return `The baseline of loop "${name}" is forming: ${days}.${end}`;
}

/** ` Since the cleaning of 2026-05-02 flow is 9 % higher, 1 % lower than in the baseline before it.` */
export function cleaningWords({ baseline, cleaningEffect }: ConditionReport, timeZone: string): string {
  const effect = cleaningEffect.find(({ gauge }) => gauge.measure === 'flow') ?? cleaningEffect[0];
  if (effect === undefined || baseline === null) return '';
  const side = (share: number) => `${percent(share)} ${share < 0 ? 'lower' : 'higher'}`;
  const { gauge, wonBack, change } = effect;
  const won = wonBack === null ? '' : `${side(shareOf(gauge, wonBack))}, `;
  const what = baseline.startedBy === 'service' ? 'service' : 'cleaning';
  return ` Since the ${what} of ${dayWords(timeZone, baseline.from)} ${gaugeWords(gauge)} is ${won}${side(shareOf(gauge, change))} than in the baseline before it.`;
}

/** ` Outlet "far end" is below required: 2600 L/h, required 3000 L/h.` */
export const belowRequiredWords = ({ belowRequired }: ConditionReport, system: UnitSystem): string =>
  belowRequired
    .slice(0, NAMED_MOST)
    .map(
      ({ outlet, flow, requiredFlow }) =>
        ` Outlet "${outlet}" is below required: ${apart(flow, requiredFlow, system).join(', required ')}.`,
    )
    .join('');

/** ` The pump has drawn 9 % more than entered since the first reading. ...` */
export function entriesWords({ entries, baseline, isByFormer }: ConditionReport, timeZone: string): string {
  const [greatest] = entries.differences.toSorted((a, b) => Math.abs(b.residual) - Math.abs(a.residual));
  if (greatest === undefined || baseline === null) return '';
  const { gauge, residual } = greatest;
  const isLess = residual < 0;
  const since =
    isByFormer || baseline.startedBy === 'first-reading'
      ? 'the first reading'
      : dayWords(timeZone, baseline.from);
  const size = percent(shareOf(gauge, residual));
  const what =
    gauge.measure === 'power'
      ? `The pump has drawn ${size} ${isLess ? 'less' : 'more'} than entered`
      : `${capitalised(gaugeWords(gauge))} has been ${size}${isPressure(gauge.measure) ? ' of the head' : ''} ${isLess ? 'lower' : 'higher'} than entered`;
  const why =
    entries.slip === null
      ? 'The entries, or a fault older than the readings, explain it: clean the screen, then calibrate.'
      : `It looks like a mix-up of ${slipWords(entries.slip)}: check the unit of the readings.`;
  return ` ${what} since ${since}. ${why}`;
}

/** Two flows with as many digits as separate them. */
function apart(flow: number, requiredFlow: number, system: UnitSystem): readonly string[] {
  for (let digits = DIGITS.least; ; digits += 1) {
    const [one, other] = [flow, requiredFlow].map((value) => say(value, 'flow', system, digits));
    if (one !== undefined && other !== undefined && (one !== other || digits >= DIGITS.most)) {
      return [one, other];
    }
  }
}

const clogIn = (detectable: readonly Detectable[]): Detectable['least'] =>
  detectable.find(({ cause }) => cause === 'clogged-intake')?.least ?? null;

/** ` Only power is read: it shows a clog once the flow is 13 % lower, but not where. A weekly flow reading would show 8 %.` */
export function detectableWords({ gauges, detectable, detectableWithFlow }: ConditionReport): string {
  const [only, ...others] = gauges;
  if (only === undefined) return '';
  const subject =
    others.length === 0 ? `Only ${gaugeWords(only.gauge)} is read: it shows` : 'The readings show';
  const where = gauges.some(({ gauge }) => isPressure(gauge.measure)) ? '' : ', but not where';
  const least = clogIn(detectable);
  const shown =
    least === null ? 'no clog' : `a clog once the flow is ${percent(least.flowChange)} lower${where}`;
  const withFlow = clogIn(detectableWithFlow);
  const isMore = withFlow !== null && (least === null || withFlow.magnitude < least.magnitude);
  const more = isMore ? ` A weekly flow reading would show ${percent(withFlow.flowChange)}.` : '';
  return ` ${subject} ${shown}.${more}`;
}

/** ` 2 values were set aside for a probable mix-up of gallons and litres.` */
export function setAsideWords({ setAside }: ConditionReport): string {
  const last = setAside.at(-1);
  if (last === undefined) return '';
  const [values, were] = setAside.length === 1 ? ['value', 'was'] : ['values', 'were'];
  return ` ${setAside.length} ${values} ${were} set aside for a probable mix-up of ${slipWords(last.slip)}.`;
}
