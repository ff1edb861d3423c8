/** Makes the routine checks that common practice asks of a loop, from what it is made of. */

import { failed, type Result, success } from '../../curves/result.ts';
import { DAYS_PER_YEAR, MONTHS_PER_YEAR } from '../calendar/time-factors.ts';
import type { Caution } from '../cautions/catalogue.ts';
import { starterCautions } from '../cautions/upkeep.ts';
import type { Loop } from '../loop/loop.ts';
import { countOf } from '../loop/role-of-element.ts';
import { runsOfLoop } from '../loop/runs-of-loop.ts';
import type { Pump } from '../pump/pump.ts';
import type { Interval } from './interval.ts';
import type { TaskKind } from './task.ts';

/** More checks than these are not made at once. */
export const STARTER_TASKS_MAX = 500;

/** A check of the set. */
export interface StarterTask {
  readonly title: string;
  readonly kind: TaskKind;
  readonly every: Interval;
  /** Of work each time [min]. */
  readonly minutes: number;
  /** Each time [money]. */
  readonly parts: number;
}

export interface StarterSet {
  readonly tasks: readonly StarterTask[];
  readonly cautions: readonly Caution[];
}

/** More checks than are made at once. */
export interface TooManyTasks {
  readonly code: 'too-many-tasks';
  /** The most [-]. */
  readonly limit: number;
  /** That the loop asks for [-]. */
  readonly actual: number;
}

const TITLE_MAX = 120;
const BULKHEAD_MINUTES = 2;
const UNION_MINUTES = 2;
const SCREEN_MINUTES = 10;
const BUTTON_MINUTES = 2;
/** Where a pump states no service. */
const SERVICE = { everyMonths: 6, minutes: 45, parts: 0 };
const DAYS_PER_MONTH = DAYS_PER_YEAR / MONTHS_PER_YEAR;
const MONTHS_MAX = 120;

const titled = (words: string, pointer: string): string => {
  const whole = `${words} (${pointer})`;
  return whole.length <= TITLE_MAX ? whole : words;
};

const inspection = (number: number, pointer: string): StarterTask => ({
  title: titled(`Inspect bulkhead ${number} for weeping`, pointer),
  kind: 'bulkhead-inspection',
  every: { months: 1 },
  minutes: BULKHEAD_MINUTES,
  parts: 0,
});

const screenCleaning = (screens: number): StarterTask => ({
  title: screens === 1 ? 'Clean the intake screen' : `Clean the ${screens} intake screens`,
  kind: 'screen-cleaning',
  every: { weeks: 1 },
  minutes: SCREEN_MINUTES * screens,
  parts: 0,
});

/** Months that are no whole number become days; ten years are the longest interval. */
const everyMonths = (months: number): Interval =>
  Number.isInteger(months)
    ? { months: Math.min(months, MONTHS_MAX) }
    : { days: Math.max(1, Math.round(Math.min(months, MONTHS_MAX) * DAYS_PER_MONTH)) };

const wetEndService = ({ name, service = SERVICE }: Pump, count: number): StarterTask => ({
  title: `Service the wet end${count === 1 ? '' : ` of ${count} pumps`}: ${name}`.slice(0, TITLE_MAX),
  kind: 'wet-end-service',
  every: everyMonths(service.everyMonths),
  minutes: service.minutes * count,
  parts: service.parts * count,
});

const unionCheck = (unions: number): StarterTask => ({
  title: unions === 1 ? 'Check the union for tightness' : `Check the ${unions} unions for tightness`,
  kind: 'union-check',
  every: { months: 3 },
  minutes: UNION_MINUTES * unions,
  parts: 0,
});

const CURRENT_TEST: StarterTask = {
  title: 'Press the test button of the residual-current device',
  kind: 'residual-current-test',
  every: { months: 1 },
  minutes: BUTTON_MINUTES,
  parts: 0,
};

/**
 * The checks that common practice asks of a loop: one inspection a month for each bulkhead, the intake's screens
 * every week, the wet end of the installed pump by its `service`, the unions every three months, the residual-current
 * device every month.
 *
 * @param pump the installed pump; null without one.
 * Errors: `too-many-tasks`.
 * Source: common practice, from memory: no published table is behind the intervals and minutes.
 */
export function starterSet(loop: Loop, pump: Pump | null): Result<StarterSet, TooManyTasks> {
  const runs = 'discharge' in loop ? runsOfLoop(loop) : [];
  const places = runs.map(({ pointer, run }) => ({ pointer, count: countOf(run, 'bulkhead') }));
  const bulkheads = places.reduce((sum, { count }) => sum + count, 0);
  if (bulkheads > STARTER_TASKS_MAX) {
    return failed({ code: 'too-many-tasks', limit: STARTER_TASKS_MAX, actual: bulkheads });
  }
  const pointers = places.flatMap(({ pointer, count }) => Array.from({ length: count }, () => pointer));
  const unions = runs.reduce((sum, { run }) => sum + countOf(run, 'union'), 0);
  const screens = loop.intake?.screen?.count ?? 0;
  return success({
    tasks: [
      ...pointers.map((pointer, place) => inspection(place + 1, pointer)),
      ...(screens > 0 ? [screenCleaning(screens)] : []),
      ...(pump === null ? [] : [wetEndService(pump, loop.installed?.count ?? 1)]),
      ...(unions > 0 ? [unionCheck(unions)] : []),
      CURRENT_TEST,
    ],
    cautions: starterCautions({
      serviceAssumed: pump !== null && pump.service === undefined,
      pipeworkKnown: 'discharge' in loop,
    }),
  });
}

/**
 * The checks of a set that a loop does not have yet: by their kind, and inspections of bulkheads by their number,
 * too.
 */
export function missingFrom(
  there: readonly Pick<StarterTask, 'title' | 'kind'>[],
  tasks: readonly StarterTask[],
): readonly StarterTask[] {
  const kinds = new Set(there.map(({ kind }) => kind));
  const titles = new Set(there.map(({ title }) => title));
  const isInspection = ({ kind }: Pick<StarterTask, 'kind'>) => kind === 'bulkhead-inspection';
  const inspections = tasks.filter(isInspection);
  const lacking = Math.max(0, inspections.length - there.filter(isInspection).length);
  return [
    ...inspections.filter(({ title }) => !titles.has(title)).slice(0, lacking),
    ...tasks.filter((task) => !isInspection(task) && !kinds.has(task.kind)),
  ];
}
