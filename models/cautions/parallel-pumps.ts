/** Gives the cautions about several pumps that run in parallel. */
import { hasCheckValves } from '../duty/one-pump-down.ts';
import type { CompiledLoop } from '../network/compiled-loop.ts';
import { type CautionOf, COMMON_PRACTICE, topic } from './topic.ts';

export const PARALLEL_PUMPS = topic({
  'check-valves-assumed': {
    severity: 'note',
    sentence:
      'Each parallel pump is taken to have a check valve; without one, water runs back through a pump that stands still.',
    source: COMMON_PRACTICE,
  },
  'idle-pump-backflow': {
    severity: 'warning',
    sentence:
      'Without check valves water runs back through a parallel pump that stands still, turns it backwards, and may break it at the next start.',
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
