/** Gives the cautions about what the outlets of a loop receive. */
import type { CompiledLoop } from '../network/compiled-loop.ts';
import { type OutletFigures, outletFigures } from '../network/margins.ts';
import { EQUAL } from '../selection/criteria.ts';
import { type CautionOf, topic } from './topic.ts';

export const OUTLETS = topic({
  'outlet-short': {
    severity: 'warning',
    sentence: 'Gets less than its required flow.',
    source: 'requirements as entered',
  },
  'outlet-above-maximum': {
    severity: 'warning',
    sentence: 'Gets more than its maximum flow.',
    source: 'requirements as entered',
  },
  'reverse-flow': {
    severity: 'warning',
    sentence: 'Water runs backwards through an outlet.',
    source: 'network solution',
  },
});

/** Judges the flows of all outlets [m3/s], in the order of the loop, against what each requires and may have. */
export function outletCautions(
  { system }: Pick<CompiledLoop, 'system'>,
  outletFlows: readonly number[],
): readonly CautionOf<typeof OUTLETS>[] {
  const figures = outletFigures(system.outlets, outletFlows);
  const largest = Math.max(...figures.map(({ flow }) => Math.abs(flow)));
  const namesWhere = (isOf: (outlet: OutletFigures) => boolean) =>
    figures.filter(isOf).map(({ name }) => name);
  const short = namesWhere(({ flow, requiredFlow }) => flow < (requiredFlow ?? -Infinity) * (1 - EQUAL));
  const above = namesWhere(({ flow, maximumFlow }) => flow > (maximumFlow ?? Infinity) * (1 + EQUAL));
  const reversed = namesWhere(({ flow }) => flow < -EQUAL * largest);
  return [
    ...OUTLETS.when(short.length > 0, 'outlet-short', short),
    ...OUTLETS.when(above.length > 0, 'outlet-above-maximum', above),
    ...OUTLETS.when(reversed.length > 0, 'reverse-flow', reversed),
  ];
}
