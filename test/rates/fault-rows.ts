/** Rates at which faults are found, and called by their name. */
import { CLOGS, type Fault } from '../../models/condition/metered-loop.ts';
import { atLeast, atMost, quantile, type RateRow, type Size, seeds, stated } from './row.ts';
import { BANK, FLUME, LIFTED, type Site } from './stations.ts';
import { answerOn, type Case, firstReport, isReport, type Noise, readingsOf, YEAR_DAYS } from './year.ts';

/** Shares of the flow a month, from the 28th day on. */
const RATES = [0.01, 0.02, 0.05, 0.1, 0.2] as const;
const BEGINS = 28;
const MONTH = 30;
const MOST = 0.5;

const growing =
  (rate: number, most = MOST) =>
  (day: number) =>
    Math.min(most, (Math.max(0, day - BEGINS) * rate) / MONTH);

/** By when four in five must be found, of each rate; null: no limit. */
interface Detection {
  readonly name: string;
  readonly site: Site;
  readonly noise: Noise;
  readonly phi?: number;
  readonly within: readonly (number | null)[];
}

const DETECTIONS: readonly Detection[] = [
  {
    name: 'flow 2 %, power',
    site: FLUME,
    noise: { flow: 0.02, power: 0.01 },
    within: [189, 119, null, null, null],
  },
  {
    name: 'flow 5 %, power',
    site: FLUME,
    noise: { flow: 0.05, power: 0.01 },
    within: [null, null, 105, 77, 63],
  },
  {
    ...{ name: 'flow 3 %, pressures', site: FLUME, within: [null, 84, 63, null, null] },
    noise: { flow: 0.03, power: 0.01, pressures: 0.03 },
  },
  {
    ...{ name: 'flow 3 %, power, AR 0.8', site: FLUME, phi: 0.8, within: [null, null, null, null, null] },
    noise: { flow: 0.03, power: 0.01 },
  },
  {
    name: 'static head, flow 2 %, power',
    site: LIFTED,
    noise: { flow: 0.02, power: 0.01 },
    within: [189, 119, null, null, null],
  },
  {
    name: 'four outlets, flow 2 %, power',
    site: BANK,
    noise: { flow: 0.02, power: 0.01 },
    within: [189, 119, null, null, null],
  },
];

export function detectionRows(size: Size): readonly RateRow[] {
  return DETECTIONS.map(({ name, within, ...one }) => {
    const days = RATES.map((rate) =>
      seeds(size).map((seed) => {
        const found = firstReport(
          { ...one, fault: { cause: 'clogged-intake' }, magnitude: growing(rate) },
          seed,
        );
        return found?.day ?? Number.POSITIVE_INFINITY;
      }),
    );
    const late = days.filter((own, i) => quantile(own, 0.8) > (within[i] ?? Number.POSITIVE_INFINITY));
    return {
      name: `clog 1/2/5/10/20 % a month, ${name}: median day; 80 % by`,
      figure: `${days.map((own) => quantile(own, 0.5)).join('/')}; ${days.map((own) => quantile(own, 0.8)).join('/')}`,
      limit: within.every((day) => day === null)
        ? '-'
        : `80 % by ${within.map((day) => day ?? '-').join('/')}`,
      holds: late.length === 0,
    };
  });
}

const SIMULATED: readonly { readonly fault: Fault; readonly site: Site }[] = [
  { site: FLUME, fault: { cause: 'clogged-intake' } },
  { site: FLUME, fault: { cause: 'clogged-discharge' } },
  { site: FLUME, fault: { cause: 'worn-pump' } },
  { site: FLUME, fault: { cause: 'speed-low' } },
  { site: FLUME, fault: { cause: 'draws-more' } },
  { site: LIFTED, fault: { cause: 'clogged-intake' } },
  { site: LIFTED, fault: { cause: 'worn-pump' } },
  { site: BANK, fault: { cause: 'clogged-discharge' } },
];

/** Found on a day by which the fault has grown to 12 %, at 10 % a month. */
const JUDGED_ON = 63;

export function causeRows(size: Size): readonly RateRow[] {
  const answers = (noise: Noise) =>
    SIMULATED.flatMap(({ site, fault }) =>
      seeds(size).map((seed) => {
        const one: Case = { site, noise, fault, days: JUDGED_ON + 1, magnitude: growing(0.1) };
        const answer = answerOn(one, readingsOf(one, seed), { day: JUDGED_ON });
        return { fault, answer, isReported: isReport(answer) };
      }),
    );
  const pressures = answers({ flow: 0.03, power: 0.01, pressures: 0.03 }).filter(
    ({ isReported }) => isReported,
  );
  const plain = answers({ flow: 0.03, power: 0.01 }).filter(({ isReported }) => isReported);
  return [
    atLeast(
      'true cause first, flow 3 %, pressures',
      pressures.map(({ fault, answer }) => answer.causes[0]?.signature.cause === fault.cause),
      0.9,
    ),
    atLeast(
      'true cause named, flow 3 %, power',
      plain.map(({ fault, answer }) =>
        answer.causes.some(({ signature }) => signature.cause === fault.cause),
      ),
      0.85,
    ),
    atLeast('branch first, flows of four outlets', branchFirst(size), 0.9),
  ];
}

/** One branch of four clogs, its outlet and the others read. */
function branchFirst(size: Size): readonly boolean[] {
  return seeds(size).map((seed) => {
    const fault = { cause: 'clogged-branch', branch: 2, outletNames: ['east'] } as const;
    const noise: Noise = { power: 0.01, outlets: 0.03 };
    const one: Case = { site: BANK, noise, fault, days: JUDGED_ON + 1, magnitude: growing(0.1) };
    const [first] = answerOn(one, readingsOf(one, seed), { day: JUDGED_ON }).causes;
    return first?.signature.fault?.outletNames?.join() === 'east';
  });
}

const isClog = (verdict: string): boolean => CLOGS.some((clog) => clog === verdict);

/** Every week of a flow meter that comes to show less, up to 40 %. */
export function meterRows(size: Size): readonly RateRow[] {
  const verdicts = (noise: Noise) =>
    seeds(size).flatMap((seed) => {
      const one: Case = {
        site: FLUME,
        noise,
        days: YEAR_DAYS / 2,
        drift: (day) => 1 - growing(0.05, 0.4)(day),
      };
      const readings = readingsOf(one, seed);
      return Array.from({ length: 21 }, (_, week) => answerOn(one, readings, { day: 35 + 7 * week }).verdict);
    });
  const all = [
    ...verdicts({ flow: 0.03, power: 0.01 }),
    ...verdicts({ flow: 0.03, power: 0.01, pressures: 0.03 }),
    ...verdicts({ flow: 0.03, power: 0.01, pressures: 0.03, head: 0.02 }),
  ];
  const late = all.filter((verdict) => verdict !== 'as-expected');
  return [
    atMost('meter drift called a clog, weekly', all.map(isClog), 0),
    stated(
      'meter drift called so, of the weeks reported',
      `${Math.round((100 * late.filter((one) => one === 'meter-drift').length) / late.length)} %`,
    ),
  ];
}
