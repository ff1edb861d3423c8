/** Gives the cautions about several pumps that run in parallel. */
import { hasCheckValves } from '../duty/one-pump-down.ts';
import type { CompiledLoop } from '../network/compiled-loop.ts';
import { type CautionOf, COMMON_PRACTICE, topic } from './topic.ts';

export const PARALLEL_PUMPS = topic({
  'check-valves-assumed': {
    severity: 'note',
    text: 'Each parallel pump is assumed to have a check valve. Without one, water runs back through a stopped pump.',
    source: COMMON_PRACTICE,
  },
  'idle-pump-backflow': {
    severity: 'warning',
    text: 'Without check valves water runs back through a stopped parallel pump and turns it backwards. The next start can break it. Fit check valves.',
    source: COMMON_PRACTICE,
  },
});

/** Judges a duty of `count` pumps [-]; nothing for a single one. */
export function parallelCautions(
  loop: CompiledLoop,
  { count }: { readonly count: number },
): readonly CautionOf<typeof PARALLEL_PUMPS>[] {
  if (count < 2) return [];
  if (!hasCheckValves(loop)) return [PARALLEL_PUMPS.give('idle-pump-backflow')];
  return PARALLEL_PUMPS.when(loop.entered.installed?.checkValves === undefined, 'check-valves-assumed');
}
