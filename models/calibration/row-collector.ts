/** Collects readings in rows: one for each thing measured at one setting of one state of the valves. */

import type { Gauges } from '../loop/loop.ts';
import { GRAVITY } from '../physics/gravity.ts';
import { velocityRise } from '../readings/gauges.ts';
import { headOfReading } from '../readings/head-of-reading.ts';
import type { Reading } from '../readings/reading.ts';
import { totalFlow } from '../readings/total-flow.ts';

export type Measure = 'flow' | 'outletFlow' | 'head' | 'power';

/** What is measured where: the pump at `setting` [%], outlets named in `shut` closed, all of them for `zeroFlow`. */
export interface Gauge {
  readonly measure: Measure;
  readonly setting: number;
  /** Of an `outletFlow`. */
  readonly outlet: string | null;
  /** In a fixed order. */
  readonly shut: readonly string[];
  /** A valve at the pump is shut: a head then is the shutoff head. */
  readonly zeroFlow: boolean;
}

export interface Row extends Gauge {
  /** What it was read by: a head by its own gauge, or by those of both pressures. */
  readonly meter: Measure | 'pressures';
  /** [m3/s], [m] or [W], with their instants [ms]. */
  readonly values: readonly number[];
  readonly times: readonly number[];
}

export interface TooManyRows {
  readonly code: 'too-many-rows';
  readonly limit: number;
}

/** Distinct measures at distinct settings: a controller's grid has far fewer. */
export const ROWS_MAX = 3_000;

export interface Station {
  readonly density: number;
  readonly outlets: readonly string[];
  /** Whether outlets can be shut in computing: not where the pipework is not known. */
  readonly knowsPipework: boolean;
  readonly settings: { readonly min: number; readonly max: number };
  readonly gauges: Gauges | undefined;
}

export interface RowCollector {
  /** The failure of a reading that makes too many rows; null else. */
  add(reading: Reading): TooManyRows | null;
  /** And how many readings said something. */
  rows(): { readonly rows: readonly Row[]; readonly used: number };
}

/**
 * Collects rows of readings at settings of the running pump. An outlet read at 0 is taken as shut; a total flow of 0, or 0 at
 * every outlet, as a valve shut at the pump, of which only the head says anything.
 */
export function rowCollector(station: Station): RowCollector {
  const rows = new Map<
    string,
    { readonly row: Omit<Row, 'values' | 'times'>; values: number[]; times: number[] }
  >();
  let used = 0;
  return {
    add(reading) {
      const found = valuesOf(reading, station);
      if (found.length > 0) used += 1;
      for (const [row, value] of found) {
        const key = JSON.stringify(row);
        const known = rows.get(key) ?? { row, values: [], times: [] };
        rows.set(key, known);
        known.values.push(value);
        known.times.push(reading.time);
      }
      return rows.size > ROWS_MAX ? { code: 'too-many-rows', limit: ROWS_MAX } : null;
    },
    rows: () => ({ used, rows: [...rows.values()].map(({ row, ...values }) => ({ ...row, ...values })) }),
  };
}

type Value = readonly [Omit<Row, 'values' | 'times'>, number];

function valuesOf(reading: Reading, station: Station): readonly Value[] {
  const { setting, flow, power, outletFlows = {} } = reading;
  if (setting < station.settings.min || setting > station.settings.max) return [];
  const shut = station.outlets.filter((name) => outletFlows[name] === 0).toSorted();
  const zeroFlow = flow === 0 || (shut.length > 0 && shut.length === station.outlets.length);
  if (shut.length > 0 && !zeroFlow && !station.knowsPipework) return [];
  const place = { setting, shut: zeroFlow ? [] : shut, zeroFlow };
  const row = (measure: Measure, value: number | undefined, outlet: string | null = null): Value[] => {
    const meter = measure === 'head' && reading.head === undefined ? 'pressures' : measure;
    return value !== undefined && value > 0 ? [[{ ...place, measure, meter, outlet }, value]] : [];
  };
  const head = row('head', headOf(reading, station, zeroFlow));
  if (zeroFlow) return head;
  const outlets = station.outlets.flatMap((outlet) => row('outletFlow', outletFlows[outlet], outlet));
  return [...head, ...row('flow', flow), ...row('power', power), ...outlets];
}

/** Undefined too where the velocity heads at the gauges matter and no total flow shows them. */
function headOf(
  reading: Reading,
  { density, gauges, outlets }: Station,
  zeroFlow: boolean,
): number | undefined {
  const flow = zeroFlow || velocityRise(gauges, 1) === 0 ? 0 : totalFlow(reading, outlets);
  if (reading.head === undefined && flow === undefined) return undefined;
  return headOfReading(reading, {
    pressurePerHead: density * GRAVITY,
    rise: velocityRise(gauges, flow ?? 0),
  });
}
