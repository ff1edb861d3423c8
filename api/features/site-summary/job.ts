/** The job of a site's summary computes the figures of some of its loops against some of its pumps. */
import { civilYear } from '../../../models/calendar/civil-year.ts';
import { type AppliedCalibration, calibratedLoop, fitOnLoop } from '../../../models/calibration/applied.ts';
import type { Loop } from '../../../models/loop/loop.ts';
import { compileLoop } from '../../../models/network/compiled-loop.ts';
import { solving } from '../../../models/network/solve-failure.ts';
import type { PumpModel } from '../../../models/pump/pump-model.ts';
import type { Schedule } from '../../../models/schedule/schedule.ts';
import { constantLoop } from '../../../models/site-summary/constant-loop.ts';
import type { LoopFigures } from '../../../models/site-summary/loop-figures.ts';
import { scheduledLoop } from '../../../models/site-summary/scheduled-loop.ts';
import { flatRate, ratesOf } from '../../../models/tariff/rates.ts';
import type { Tariff } from '../../../models/tariff/tariff.ts';
import { zoneAround } from '../../clock/zone.ts';
import { plainJob } from '../../threads/job.ts';

export interface StoredPump extends PumpModel {
  readonly id: string;
}

export interface SliceLoop {
  readonly document: Loop;
  /** Null: as entered. */
  readonly calibration: AppliedCalibration | null;
  readonly installed: { readonly pump: StoredPump; readonly count: number; readonly setting: number };
  /** Null: it runs alike all day. `tariff` null: at the flat price. */
  readonly schedule: { readonly document: Schedule; readonly tariff: Tariff | null } | null;
}

export interface SummarySlice {
  readonly loops: readonly SliceLoop[];
  readonly pumps: readonly StoredPump[];
  /** Place of the first of these pumps among all. */
  readonly firstPump: number;
  /** Of a loop without a schedule; money per kWh, null: not known. */
  readonly price: number | null;
  /** Of a loop with a schedule and without a tariff. */
  readonly flatPrice: number | null;
  readonly elevation: number;
  readonly timeZone: string;
  readonly year: number;
}

/** One a loop, in their order; null where its equations were not solved. */
export const siteSummaryJob = plainJob<SummarySlice, readonly (LoopFigures | null)[]>({
  name: 'site-summary',
  // A slice is cut so that it takes some tenths of a second.
  isLong: () => true,
  compute: (slice) => slice.loops.map((loop) => figuresOf(loop, slice)),
});

function figuresOf(
  { document, calibration, installed, schedule }: SliceLoop,
  slice: SummarySlice,
): LoopFigures | null {
  const model = compileLoop(calibratedLoop(document, calibration));
  if (!model.ok) throw new Error(`invariant: a stored loop does not compile: ${model.failure.code}`);
  const { elevation, price } = slice;
  // Fewer of the pumps that are there are no other pump.
  const places = slice.pumps.flatMap(({ id }, place) => (id === installed.pump.id ? [] : [place]));
  const onLoop = (pump: StoredPump): StoredPump => ({ ...pump, fit: fitOnLoop(pump, calibration) });
  const candidates = places.flatMap((place) => slice.pumps[place] ?? []).map(onLoop);
  const station = { ...installed, pump: onLoop(installed.pump) };
  const solved = solving(() =>
    schedule === null
      ? constantLoop(model.value, station, candidates, { price, elevation })
      : scheduledLoop(
          model.value,
          { schedule: schedule.document, installed: station },
          candidates,
          scheduledTerms(schedule.tariff, slice),
        ),
  );
  if (!solved.ok) return null;
  const { otherPump } = solved.value;
  if (otherPump === null || otherPump.candidate === null) return solved.value;
  const place = places[otherPump.candidate];
  if (place === undefined) throw new Error(`invariant: there is no candidate ${otherPump.candidate}`);
  return { ...solved.value, otherPump: { ...otherPump, candidate: slice.firstPump + place } };
}

function scheduledTerms(
  tariff: Tariff | null,
  { flatPrice, elevation, timeZone, year }: SummarySlice,
): Parameters<typeof scheduledLoop>[3] {
  const zone = zoneAround(timeZone, year);
  const flat = flatPrice === null ? null : flatRate(flatPrice);
  return {
    rates: tariff === null ? flat : ratesOf(tariff),
    zone,
    interval: civilYear(zone, year),
    elevation,
  };
}
