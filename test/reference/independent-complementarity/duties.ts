/** Duties of the worked cases in litres per hour. */
import type { ExtendedLoop, ExtendedPump } from '../../random/extended-loop.ts';
import { kinematicViscosity } from '../independent/water.ts';
import { FRESH, FRESH_VISCOSITY, LH } from './cases.ts';
import { dutyOf, fitPump } from './duty.ts';
import { type Solution, type System, systemOf } from './flows.ts';
import { type Circuit, circuitOf } from './legs.ts';

/** The circuit of a loop; fresh water has the viscosity that the figures were computed with. */
export const circuitOfLoop = (loop: ExtendedLoop): Circuit =>
  circuitOf({ ...loop, viscosity: loop.water === FRESH ? FRESH_VISCOSITY : kinematicViscosity(loop.water) });

export const systemOfLoop = (loop: ExtendedLoop): System => systemOf(circuitOfLoop(loop));

export interface Landing {
  /** L/h. */
  readonly flow: number;
  /** m. */
  readonly head: number;
  /** L/h, in the order of the document. */
  readonly outlets: readonly number[];
  readonly solution: Solution;
}

export function landing(loop: ExtendedLoop, pump: ExtendedPump, setting: number): Landing {
  const system = systemOfLoop(loop);
  const { flow, head, outlets } = dutyOf(system, { fitted: fitPump(pump), count: 1, setting }, 1000);
  return {
    head,
    flow: flow / LH,
    outlets: outlets.map((outlet) => outlet.flow / LH),
    solution: system.solution(flow),
  };
}
