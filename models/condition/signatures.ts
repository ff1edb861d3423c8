/** Lists what each cause would shift on each gauge, by its magnitude. */
import { interpolate } from '../../curves/interpolate.ts';
import { type Gauge, isPressure } from '../readings/measure.ts';
import { type Slip, slipsOf } from '../readings/slip.ts';
import type { Fault, MeteredLoop, Shown } from './metered-loop.ts';

export type CauseName = Fault['cause'] | 'meter-drift' | 'unit-slip' | 'pump-stopped';

/** A cause at one magnitude. */
export interface Point {
  /** 0 where the cause has none. */
  readonly magnitude: number;
  /** What a meter then shows of the true value. */
  readonly factor?: number;
  /** Change of the residual, in the order of the gauges. */
  readonly shifts: readonly number[];
}

export interface Signature {
  readonly cause: CauseName;
  /** Of a fault of the loop. */
  readonly fault?: Fault;
  /** Of a meter, with the mix-up of a slip. */
  readonly gauge?: Gauge;
  readonly slip?: Slip;
  readonly pumpsRunning?: number;
  /** Before anything was read; of all together about 1. */
  readonly prior: number;
  /** Of a fault by rising magnitude. */
  readonly points: readonly Point[];
}

/** From what no meter shows to beyond what a loop is left running with, even in the logarithm. */
const MAGNITUDE = { least: 0.005, most: 0.55, count: 32 } as const;
const MAGNITUDES: readonly number[] = Array.from(
  { length: MAGNITUDE.count },
  (_, i) => MAGNITUDE.least * (MAGNITUDE.most / MAGNITUDE.least) ** (i / (MAGNITUDE.count - 1)),
);

/** How often each is the cause of a change: common practice; branches share theirs, and so do the slips of a meter. */
const PRIORS = {
  ...{ 'clogged-intake': 0.22, 'clogged-discharge': 0.22, 'clogged-branch': 0.2, 'worn-pump': 0.15 },
  ...{ 'draws-more': 0.1, 'speed-low': 0.05, 'less-resistance': 0.04 },
  ...{ 'meter-drift': 0.05, 'unit-slip': 0.01, 'pump-stopped': 0.025 },
} as const satisfies Record<CauseName, number>;

/** What gives nothing at all has no logarithm. */
const LEAST_SHARE = 1e-3;

/** Every cause that the loop can have; meters are those of the gauges that were `read`, the first ones of `gauges`. */
export function signaturesOf(
  loop: MeteredLoop,
  { gauges, read }: { readonly gauges: readonly Gauge[]; readonly read: number },
): readonly Signature[] {
  const entered = loop.shownAt(loop.setting);
  if (entered === null) return [];
  const shiftsOf = (shown: Shown) => gauges.map((gauge) => shiftOf(loop, gauge, { entered, shown }));
  const branches = loop.faults.filter(({ cause }) => cause === 'clogged-branch').length;
  const faults = loop.faults.map((fault): Signature => {
    const { cause } = fault;
    const known = loop
      .shownWith(fault)
      .map(({ magnitude, shown }) => ({ magnitude, shifts: shiftsOf(shown) }));
    const prior = PRIORS[cause] / (cause === 'clogged-branch' ? branches : 1);
    return { cause, fault, prior, points: spread(known, gauges.length) };
  });
  const stopped = loop.count > 1 ? loop.shownWithPumps(loop.count - 1) : null;
  return [
    ...faults.filter(({ points }) => points.length > 0),
    ...gauges.slice(0, read).flatMap((gauge, place) => {
      const alone = (shift: number) => gauges.map((_, i) => (i === place ? shift : 0));
      return gauge.valveClosed ? [] : metersOf(loop, gauge, { entered, alone });
    }),
    ...(stopped === null
      ? []
      : [
          {
            ...{
              cause: 'pump-stopped' as const,
              pumpsRunning: loop.count - 1,
              prior: PRIORS['pump-stopped'],
            },
            points: [{ magnitude: 0, shifts: shiftsOf(stopped) }],
          },
        ]),
  ];
}

/** What a gauge shows, SI; null where it is not known. */
export function shownOn(
  { outlets }: Pick<MeteredLoop, 'outlets'>,
  gauge: Gauge,
  shown: Shown,
): number | null {
  if (gauge.valveClosed) return shown.shutoffHead;
  if (gauge.measure !== 'outletFlow') return shown[gauge.measure];
  return shown.outletFlows[outlets.findIndex(({ name }) => name === gauge.outlet)] ?? null;
}

function shiftOf(
  loop: MeteredLoop,
  gauge: Gauge,
  { entered, shown }: { readonly entered: Shown; readonly shown: Shown },
): number {
  const [before, after] = [shownOn(loop, gauge, entered), shownOn(loop, gauge, shown)];
  if (before === null || after === null) return 0;
  if (isPressure(gauge.measure)) return (after - before) / (loop.pressurePerHead * entered.head);
  return Math.log(Math.max(after / before, LEAST_SHARE));
}

/** At all magnitudes up to the largest known: shifts per magnitude go in straight lines between those known. */
function spread(known: readonly Point[], width: number): readonly Point[] {
  const xs = known.map(({ magnitude }) => magnitude);
  const ys = Array.from({ length: width }, (_, i) =>
    known.map(({ magnitude, shifts }) => (shifts[i] ?? 0) / magnitude),
  );
  return MAGNITUDES.filter((magnitude) => magnitude <= (xs.at(-1) ?? 0)).map((magnitude) => ({
    magnitude,
    shifts: ys.map((per) => magnitude * interpolate(xs, per, magnitude)),
  }));
}

/** A meter that comes to show less or more, or whose unit is another. */
function metersOf(
  loop: MeteredLoop,
  gauge: Gauge,
  { entered, alone }: { readonly entered: Shown; readonly alone: (shift: number) => readonly number[] },
): readonly Signature[] {
  const perHead = loop.pressurePerHead * entered.head;
  const share = isPressure(gauge.measure) ? (shownOn(loop, gauge, entered) ?? 0) / perHead : 1;
  const at = (magnitude: number, factor: number, shift: number): Point => ({
    ...{ magnitude, factor, shifts: alone(isPressure(gauge.measure) ? shift : Math.log(factor)) },
  });
  const drifts = [-1, 1].flatMap((sign) =>
    MAGNITUDES.map((magnitude) => at(magnitude, 1 + sign * magnitude, sign * magnitude)),
  );
  const slips = slipsOf(gauge.measure);
  return [
    { cause: 'meter-drift', gauge, prior: PRIORS['meter-drift'], points: drifts },
    ...slips.map(
      ({ slip, factor }): Signature => ({
        ...{ cause: 'unit-slip', gauge, slip, prior: PRIORS['unit-slip'] / slips.length },
        points: [at(0, factor, (factor - 1) * share)],
      }),
    ),
  ];
}
