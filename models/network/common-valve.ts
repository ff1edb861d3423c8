/** Adds a valve to the common discharge of a loop's pumps. */
import { quadraticLoss } from '../components/resistance.ts';
import type { CompiledLoop } from './compiled-loop.ts';

/** The loop with a valve that loses a head [m] at a flow [m3/s] above 0, and as its square at others. */
export function withCommonValve(
  loop: CompiledLoop,
  { head, flow }: { readonly head: number; readonly flow: number },
): CompiledLoop {
  const { system } = loop;
  const valve = quadraticLoss(head / flow ** 2);
  return {
    ...loop,
    system: {
      ...system,
      stateAt: (total, near) => {
        const state = system.stateAt(total, near);
        const lost = valve.lossAt(total);
        return { ...state, head: state.head + lost.head, slope: state.slope + lost.slope };
      },
    },
  };
}
