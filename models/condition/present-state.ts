/** Says what holds of a loop whatever changed: whether it is as entered, gets its flows, what its meters can show. */
import { studentT95Both } from '../../curves/student-t.ts';
import { median } from '../../curves/theil-sen.ts';
import { type Gauge, gaugeOf } from '../readings/measure.ts';
import { type Slip, slipOf } from '../readings/slip.ts';
import type { Baselines } from './baseline.ts';
import { residualsOf, type Series } from './day-values.ts';
import { type Compared, DAYS_LEAST, entriesVariance, meanOf, type Term } from './evidence.ts';
import type { Fault, MeteredLoop } from './metered-loop.ts';
import { type Point, type Signature, shownOn } from './signatures.ts';

/** Entries differ by so many standard errors: of some five gauges one in twenty loops is suspected by chance. */
const DIFFERS = 2.6;
/** Standard errors of a shift that is reported in 80 %: the root of the threshold, and 0.84 more. */
const DETECTED = 4.84;
/** A change that needs no statistics: so far off the first days, on so many later ones. */
const PLAIN = { ratio: 1.3, days: 3 } as const;
/** Days whose median is the flow now: one bad reading among them does not count. */
const NOW_DAYS = 3;
/** Days before a cleaning that show what it found. */
const BEFORE_DAYS = 30;

export interface Entries {
  readonly verdict: 'agree' | 'differ' | 'not-determined';
  /** As residuals of the series; the interval of 95 % holds meter and entries too. */
  readonly differences: readonly {
    readonly gauge: Gauge;
    readonly residual: number;
    readonly interval: { readonly low: number; readonly high: number };
  }[];
  /** The mix-up that one of the differences comes near to. */
  readonly slip: Slip | null;
}

/** The baseline against what is predicted. */
export function entriesOf(all: readonly Compared[], headTolerance: number): Entries {
  const judged = all.flatMap(({ gauge, baseline, accuracy, noise }) => {
    if (baseline === null) return [];
    const { mean, variance } = baseline;
    const error = Math.sqrt(variance + entriesVariance(gauge, { accuracy, headTolerance }));
    const half = studentT95Both(Math.floor(noise.degrees)) * error;
    const interval = { low: mean - half, high: mean + half };
    return [{ difference: { gauge, residual: mean, interval }, isOff: Math.abs(mean) > DIFFERS * error }];
  });
  const differences = judged.filter(({ isOff }) => isOff).map(({ difference }) => difference);
  const slips = differences.flatMap(
    ({ gauge, residual }) => slipOf(gauge.measure, Math.exp(residual))?.slip ?? [],
  );
  const verdict = judged.length === 0 ? 'not-determined' : differences.length > 0 ? 'differ' : 'agree';
  return { verdict, differences, slip: slips[0] ?? null };
}

/** As residuals of the series. */
export interface CleaningEffect {
  readonly gauge: Gauge;
  /** Of the baseline after the cleaning over the one before: what the cleaning did not put back. */
  readonly change: number;
  /** Over the last days before the cleaning; null where too little was read then. */
  readonly wonBack: number | null;
}

/** Of gauges read in both baselines; as far as the present one goes. */
export function cleaningEffects(
  all: readonly Compared[],
  { current, former }: Baselines,
): readonly CleaningEffect[] {
  if (former === null) return [];
  return all.flatMap((one) => {
    const meanIn = (from: number, to: number): number | null => {
      const values = one.values.filter(({ time }) => time >= from && time < to);
      return values.length < DAYS_LEAST ? null : meanOf(values, one.noise);
    };
    const [before, after] = [meanIn(former.from, former.to), meanIn(current.from, current.to)];
    const found = meanIn(Math.max(former.to, current.from - BEFORE_DAYS), current.from);
    if (before === null || after === null) return [];
    return [{ gauge: one.gauge, change: after - before, wonBack: found === null ? null : after - found }];
  });
}

/** Whether power or flow went over 30 % off the median of its first three days on the last three of later days. */
export const hasPlainlyChanged = (all: readonly Series[]): boolean =>
  all.some(({ gauge, values }) => {
    const level = median(residualsOf(values.slice(0, PLAIN.days)));
    const later = residualsOf(values.slice(PLAIN.days).slice(-PLAIN.days)).map((one) =>
      Math.exp(one - level),
    );
    const isMeant = (gauge.measure === 'power' || gauge.measure === 'flow') && later.length === PLAIN.days;
    return (
      isMeant && (later.every((one) => one > PLAIN.ratio) || later.every((one) => one < 2 - PLAIN.ratio))
    );
  });

export interface BelowRequired {
  readonly outlet: string;
  /** [m3/s], at the installed setting. */
  readonly flow: number;
  readonly requiredFlow: number;
}

/** Outlets whose measured flow, at the installed setting, is below required; by the total where they were not measured. */
export function belowRequired(loop: MeteredLoop, all: readonly Series[]): readonly BelowRequired[] {
  const entered = loop.shownAt(loop.setting);
  const flowNow = ({ measure, outlet }: Gauge): number | null => {
    const found = all.find(({ gauge }) => gauge.measure === measure && gauge.outlet === outlet);
    const predicted = found === undefined || entered === null ? null : shownOn(loop, found.gauge, entered);
    if (found === undefined || predicted === null) return null;
    return predicted * Math.exp(median(residualsOf(found.values.slice(-NOW_DAYS))));
  };
  const measured = new Set(all.flatMap(({ gauge }) => gauge.outlet ?? []));
  const [total, limit] = [flowNow(gaugeOf('flow')), loop.limitingTotal((outlet) => !measured.has(outlet))];
  return loop.outlets.flatMap(({ name, requiredFlow }): BelowRequired[] => {
    // Of the total the limiting outlet gets about the share that it needs of the limiting one.
    const byTotal =
      total === null || limit?.outlet !== name ? null : ((requiredFlow ?? 0) * total) / limit.flow;
    const flow = flowNow(gaugeOf('outletFlow', name)) ?? byTotal;
    return flow === null || flow >= (requiredFlow ?? 0)
      ? []
      : [{ outlet: name, flow, requiredFlow: requiredFlow ?? 0 }];
  });
}

export interface Detectable {
  readonly cause: Fault['cause'];
  /** The least magnitude, of branches that of the hardest, and what it changes the flow by; null: never. */
  readonly least: { readonly magnitude: number; readonly flowChange: number } | null;
}

/** sqrt(s'V^-1 s) > 4.84; `flowPlace`: that of the total flow among the gauges. */
export function detectableFaults(
  variances: readonly Pick<Term, 'place' | 'variance'>[],
  { signatures, flowPlace }: { readonly signatures: readonly Signature[]; readonly flowPlace: number },
): readonly Detectable[] {
  const found = new Map<Fault['cause'], Point | null>();
  for (const { fault, points } of signatures) {
    if (fault === undefined) continue;
    const isShown = ({ shifts }: Point) =>
      Math.sqrt(
        variances.reduce((sum, { place, variance }) => sum + (shifts[place] ?? 0) ** 2 / variance, 0),
      ) > DETECTED;
    const [point, known] = [points.find(isShown) ?? null, found.get(fault.cause)];
    const isHarder = known === undefined || (known !== null && (point?.magnitude ?? 1) > known.magnitude);
    if (isHarder) found.set(fault.cause, point);
  }
  return [...found].map(([cause, point]) => ({
    cause,
    least:
      point === null
        ? null
        : { magnitude: point.magnitude, flowChange: Math.expm1(point.shifts[flowPlace] ?? 0) },
  }));
}
