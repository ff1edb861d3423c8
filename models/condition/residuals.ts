/** Readings against predictions: one series of residuals for each thing that was measured. */
import { at } from '../../curves/at.ts';
import { velocityRise } from '../readings/gauges.ts';
import { headOfReading } from '../readings/head-of-reading.ts';
import type { Reading } from '../readings/reading.ts';
import { totalFlow } from '../readings/total-flow.ts';
import { type Predicted, predictions, pressurePerHead, type Station } from './predicted.ts';

export const MEASURES = [
  'flow',
  'power',
  'head',
  'suctionPressure',
  'dischargePressure',
  'outletFlow',
] as const;

export type Measure = (typeof MEASURES)[number];

/** In the unit of its measure; `value` is measured/predicted - 1, for pressures (measured - predicted)/(rho g H predicted). */
export interface Residual {
  readonly time: number;
  readonly predicted: number;
  readonly measured: number;
  readonly value: number;
}

export interface ResidualSeries {
  readonly measure: Measure;
  /** Of an `outletFlow`. */
  readonly outlet: string | null;
  /** In the order of time. */
  readonly residuals: readonly Residual[];
}

/** Readings that say nothing of the condition, by why. */
export interface LeftOut {
  /** The pump was stopped, or moves nothing at that setting by its data. */
  readonly stopped: number;
  /** A valve was shut. */
  readonly shutValve: number;
  /** At a setting outside those of the pump, or at one of too many to solve for. */
  readonly otherSetting: number;
}

export interface Residuals {
  readonly series: readonly ResidualSeries[];
  readonly leftOut: LeftOut;
  /** Readings that took part, with what was predicted for them. */
  readonly used: readonly { readonly reading: Reading; readonly predicted: Predicted }[];
}

type Kept = Record<keyof LeftOut, number>;

const inRange = ({ pump }: Station, setting: number): boolean =>
  setting >= pump.entered.settings.min && setting <= pump.entered.settings.max;

/** At the pump, or at an outlet that gives nothing: the data are about a loop with all of them open. */
const hasShutValve = ({ flow, outletFlows = {} }: Reading): boolean =>
  flow === 0 || Object.values(outletFlows).includes(0);

/** Readings in the order of time. Throws `SolveFailure`. */
export function residualsOf(station: Station, readings: readonly Reading[]): Residuals {
  const leftOut: Kept = { stopped: 0, shutValve: 0, otherSetting: 0 };
  const running = readings.filter((reading) => {
    if (reading.setting === 0) leftOut.stopped += 1;
    else if (hasShutValve(reading)) leftOut.shutValve += 1;
    else if (!inRange(station, reading.setting)) leftOut.otherSetting += 1;
    else return true;
    return false;
  });
  const predicted = predictions(
    station,
    running.map(({ setting }) => setting),
  );
  const used = running.flatMap((reading) => {
    const found = predicted.get(reading.setting);
    if (found === undefined) leftOut.otherSetting += 1;
    else if (found === null) leftOut.stopped += 1;
    return found === undefined || found === null ? [] : [{ reading, predicted: found }];
  });
  return { series: seriesOf(station, used), leftOut, used };
}

function seriesOf({ loop }: Station, used: Residuals['used']): readonly ResidualSeries[] {
  const outlets = loop.system.outlets.map(({ name }) => name);
  const perHead = pressurePerHead(loop);
  const series = (
    measure: Measure,
    pick: (reading: Reading, predicted: Predicted) => readonly [number | undefined, number | null],
    outlet: string | null = null,
  ): ResidualSeries => ({
    measure,
    outlet,
    residuals: used.flatMap(({ reading, predicted }) => {
      const [measured, expected] = pick(reading, predicted);
      if (measured === undefined || expected === null) return [];
      const isPressure = measure === 'suctionPressure' || measure === 'dischargePressure';
      const scale = isPressure ? perHead * predicted.head : expected;
      if (scale === 0) return [];
      return [{ time: reading.time, predicted: expected, measured, value: (measured - expected) / scale }];
    }),
  });
  const all = [
    series('flow', (reading, { flow }) => [totalFlow(reading, outlets), flow]),
    series('power', (reading, { power }) => [reading.power, power]),
    series('head', (reading, { flow, head }) => {
      const rise = velocityRise(loop.entered.gauges, totalFlow(reading, outlets) ?? flow);
      return [headOfReading(reading, { pressurePerHead: perHead, rise }), head];
    }),
    series('suctionPressure', (reading, { suctionPressure }) => [reading.suctionPressure, suctionPressure]),
    series('dischargePressure', (reading, one) => [reading.dischargePressure, one.dischargePressure]),
    ...outlets.map((name, i) =>
      series('outletFlow', (reading, one) => [reading.outletFlows?.[name], at(one.outletFlows, i)], name),
    ),
  ];
  return all.filter(({ residuals }) => residuals.length > 0);
}
