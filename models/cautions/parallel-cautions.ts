/** The cautions about pumps side by side. */

import { hasCheckValves } from '../duty/one-pump-down.ts';
import type { LoopModel } from '../network/loop-model.ts';
import { type Caution, caution } from './catalogue.ts';

export function parallelCautions(loop: LoopModel, { count }: { readonly count: number }): readonly Caution[] {
  if (count < 2) return [];
  if (!hasCheckValves(loop)) return [caution('idle-pump-backflow')];
  return loop.loop.installed?.checkValves === undefined ? [caution('check-valves-assumed')] : [];
}
