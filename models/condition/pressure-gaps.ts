/** What pressures tell of the place of a fault: each side of the pump against its data at the flow that was measured. */
import { median } from '../../curves/theil-sen.ts';
import { MS_PER_DAY } from '../calendar/zone-offsets.ts';
import { pumpAtSetting } from '../pump/pump-at-setting.ts';
import { velocityHeads } from '../readings/gauges.ts';
import { headOfReading } from '../readings/head-of-reading.ts';
import { totalFlow } from '../readings/total-flow.ts';
import { pressurePerHead, type Station } from './predicted.ts';
import { errorsFor, PRESENT_DAYS, residualError } from './recent-window.ts';
import type { Residuals } from './residuals.ts';

/** Shares of the predicted head, 0 where they are not told from it at 95 %; null where not measured beside a flow. */
export interface PressureGaps {
  /** Head across the pump above that of its curve: below 0 where the pump is worn. */
  readonly pump: number | null;
  /** The same head above what the loop needs at that flow: above 0 where it is clogged. */
  readonly system: number | null;
  /** Suction pressure above that of the suction side: below 0 where the intake is clogged. */
  readonly suction: number | null;
  /** Discharge pressure above that of the discharge side: above 0 where it is clogged. */
  readonly discharge: number | null;
}

/** Readings that the loop is solved for. */
const SOLVED_MOST = 50;

/**
 * At a flow Q that was measured: (H - H_pump(Q))/H, (H - H_loop(Q))/H, (p_s - p_s(Q))/(rho g H), (p_d - p_d(Q))/(rho g H), H predicted, each the
 * median over the readings of the present, which began at `since` [ms]. Unlike residuals at the setting, each of them answers to its own fault alone.
 * Throws `SolveFailure`.
 */
export function pressureGaps(
  { loop, pump, count }: Station,
  { used }: Residuals,
  since: number,
): PressureGaps {
  const outlets = loop.system.outlets.map(({ name }) => name);
  const perHead = pressurePerHead(loop);
  const elevation = loop.entered.pumpElevation;
  const gaps = {
    pump: [] as number[],
    system: [] as number[],
    suction: [] as number[],
    discharge: [] as number[],
  };
  const last = used.at(-1)?.reading.time ?? 0;
  const recent = used
    .filter(({ reading }) => reading.time >= since && reading.time > last - PRESENT_DAYS * MS_PER_DAY)
    .filter(({ reading }) => hasPressure(reading) && totalFlow(reading, outlets) !== undefined);
  for (const { reading, predicted } of spread(recent)) {
    const flow = totalFlow(reading, outlets);
    if (flow === undefined || flow <= 0) continue;
    const velocity = velocityHeads(loop.entered.gauges, flow);
    const rise = velocity.discharge - velocity.suction;
    const head = headOfReading(reading, { pressurePerHead: perHead, rise });
    const own = pumpAtSetting(pump, { setting: reading.setting, count }).headAt(flow).head;
    const needed = loop.system.stateAt(flow).head;
    if (head !== undefined) {
      gaps.pump.push((head - own) / predicted.head);
      gaps.system.push((head - needed) / predicted.head);
    }
    if (loop.network === null) continue;
    const scale = perHead * predicted.head;
    const before = -elevation - loop.system.suctionLossAt(flow);
    const suction = perHead * (before - velocity.suction);
    if (reading.suctionPressure !== undefined) gaps.suction.push((reading.suctionPressure - suction) / scale);
    if (reading.dischargePressure === undefined) continue;
    const discharge = perHead * (before + needed - velocity.discharge);
    gaps.discharge.push((reading.dischargePressure - discharge) / scale);
  }
  const middle = (values: readonly number[]) => {
    if (values.length === 0) return null;
    const gap = median(values);
    return Math.abs(gap) > errorsFor(values.length) * residualError(values) ? gap : 0;
  };
  return {
    pump: middle(gaps.pump),
    system: middle(gaps.system),
    suction: middle(gaps.suction),
    discharge: middle(gaps.discharge),
  };
}

const hasPressure = ({ head, suctionPressure, dischargePressure }: Residuals['used'][number]['reading']) =>
  head !== undefined || suctionPressure !== undefined || dischargePressure !== undefined;

/** At most `SOLVED_MOST` of them, spread over all. */
function spread<Item>(items: readonly Item[]): readonly Item[] {
  const step = Math.max(1, Math.ceil(items.length / SOLVED_MOST));
  return items.filter((_, place) => place % step === 0);
}
