/** Rates of what is said of cleanings, stopped pumps, next readings and entries. */
import type { Fault } from '../../models/condition/metered-loop.ts';
import type { Reading } from '../../models/readings/reading.ts';
import { atLeast, atMost, quantile, type RateRow, type Size, seeds, stated } from './row.ts';
import { BANK, FLUME, metered, PAIR } from './stations.ts';
import { answerOn, type Case, isReport, readingsOf } from './year.ts';

const growing = (day: number): number => Math.max(0, day - 28) * (0.1 / 30);

/** A screen cleaned on a day, wholly or by half; said of it four weeks later. */
export function cleaningRows(size: Size): readonly RateRow[] {
  const CLEANED = 90;
  const told = (left: number) =>
    seeds(size).map((seed) => {
      const magnitude = (day: number) => (day < CLEANED ? growing(day) : left * growing(CLEANED));
      const one: Case = {
        site: FLUME,
        noise: { flow: 0.03, power: 0.01 },
        fault: { cause: 'clogged-intake' },
        magnitude,
        days: 125,
      };
      const readings = readingsOf(one, seed);
      const events = [{ time: CLEANED - 0.5, startedBy: 'cleaning' as const }];
      const answer = answerOn(one, readings, { day: 122, events });
      const effect = answer.cleaningEffect.find(({ gauge }) => gauge.measure === 'flow');
      // Over the thirty days before, the flow was down by its mean.
      const before = Array.from({ length: 30 }, (_, i) => Math.log1p(-growing(CLEANED - 1 - i)));
      const truth = Math.log1p(-left * growing(CLEANED)) - before.reduce((sum, one) => sum + one, 0) / 30;
      const lost = Math.log1p(-left * growing(CLEANED));
      return {
        wonBack: (effect?.wonBack ?? 0) - truth,
        change: (effect?.change ?? 0) - lost,
        isReported: isReport(answer),
      };
    });
  const [whole, half] = [told(0), told(0.5)];
  return [
    atLeast(
      'flow won back by a cleaning, within 3 %',
      [...whole, ...half].map(({ wonBack }) => Math.abs(wonBack) < 0.03),
      0.95,
    ),
    atLeast(
      'what a cleaning left, within 3 %',
      [...whole, ...half].map(({ change }) => Math.abs(change) < 0.03),
      0.95,
    ),
    atMost(
      'change reported after a whole cleaning',
      whole.map(({ isReported }) => isReported),
      0.05,
    ),
  ];
}

/** One of two pumps stops, and a pump that is alone. */
export function stoppedRows(size: Size): readonly RateRow[] {
  const STOPS = 60;
  const one: Case = {
    site: PAIR,
    noise: { flow: 0.05, power: 0.01 },
    days: 91,
    running: (day) => (day < STOPS ? 2 : 1),
  };
  const verdicts = seeds(size).map((seed) => {
    const { verdict, causes } = answerOn(one, readingsOf(one, seed), { day: STOPS + 7 });
    return verdict === 'pump-stopped' && causes[0]?.signature.pumpsRunning === 1;
  });
  const alone: Case = { site: FLUME, noise: { flow: 0.05, power: 0.01 }, days: 21 };
  const stopped = seeds(size).map((seed) => {
    const readings = readingsOf(alone, seed);
    const last = readings.at(-1);
    if (last === undefined) return false;
    const still: Reading = { ...last, time: last.time + 1000, flow: 0, power: 3 };
    const answer = answerOn(alone, [...readings, still], { day: 21 });
    return answer.verdict === 'pump-stopped' && answer.isStopped;
  });
  return [
    atLeast('one of two pumps stopped, called so after a week', verdicts, 0.9),
    atLeast('a stopped pump, called so at its first reading', stopped, 1),
  ];
}

/** What the reading that was asked for brings, taken on three days. */
export function nextReadingRows(size: Size): readonly RateRow[] {
  const FAULTS: readonly Fault[] = [
    { cause: 'clogged-intake' },
    { cause: 'clogged-discharge' },
    { cause: 'worn-pump' },
  ];
  const found = FAULTS.flatMap((fault) =>
    seeds(size).flatMap((seed) => {
      const one: Case = {
        site: FLUME,
        noise: { flow: 0.03, power: 0.01 },
        fault,
        magnitude: growing,
        days: 80,
      };
      const readings = readingsOf(one, seed);
      const before = answerOn(one, readings, { day: 70 });
      const next = before.nextReading;
      const all = readingsOf(
        { ...one, noise: { flow: 0.03, power: 0.01, head: 0.02, pressures: 0.02 } },
        seed,
      );
      if (next === null) return [];
      const { measure, valveClosed } = next.gauge;
      const closedHead = (reading: Reading): Reading => ({
        ...reading,
        flow: 0,
        head: metered(FLUME).shownAt(80)?.shutoffHead,
      });
      const taken = all.slice(70, 73).map((reading) => {
        const { time, setting } = reading;
        return valveClosed
          ? closedHead({ time: time + 60_000, setting })
          : { time: time + 60_000, setting, [measure]: reading[measure === 'outletFlow' ? 'flow' : measure] };
      });
      const rest = readings.filter(({ time }) => time < (all[73]?.time ?? 0));
      const merged = [...rest, ...taken].toSorted((a, b) => a.time - b.time);
      const after = answerOn(one, merged, { day: 73 });
      const ofTruth = ({ causes }: typeof after) =>
        causes.find(({ signature }) => signature.cause === fault.cause)?.probability ?? 0;
      return [{ before: ofTruth(before), after: ofTruth(after) }];
    }),
  );
  const middle = (pick: (one: (typeof found)[number]) => number) =>
    Math.round(100 * quantile(found.map(pick), 0.5));
  return [
    atLeast(
      'next reading makes the true cause likelier',
      found.map(({ before, after }) => after > before),
      0.85,
    ),
    stated(
      'probability of the true cause before and after it, median',
      `${middle(({ before }) => before)}; ${middle(({ after }) => after)} %`,
    ),
  ];
}

/** A head entered a quarter too high, and one that is right. */
export function entriesRows(size: Size): readonly RateRow[] {
  const noise = { flow: 0.03, power: 0.01, head: 0.02 };
  const verdicts = (head: number) =>
    seeds(size).flatMap((seed) =>
      [FLUME, BANK].map((site) => {
        const one: Case = { site, noise, days: 36, actual: () => ({ head }) };
        return answerOn(one, readingsOf(one, seed), { day: 35 }).entries.verdict;
      }),
    );
  return [
    atLeast(
      'entries differ, head 20 % below that entered',
      verdicts(0.8).map((verdict) => verdict === 'differ'),
      0.8,
    ),
    atMost(
      'entries differ, head as entered, meters 2 % off',
      verdicts(1).map((verdict) => verdict === 'differ'),
      0.1,
    ),
  ];
}
