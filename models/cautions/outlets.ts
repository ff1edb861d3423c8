/** Gives the cautions about what the outlets of a loop receive. */
import { pointerTo } from '../loop/document-path.ts';
import type { CompiledLoop } from '../network/compiled-loop.ts';
import { outletFigures } from '../network/margins.ts';
import { EQUAL } from '../selection/criterion.ts';
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

type OutletCaution = CautionOf<typeof OUTLETS>;

/** Judges the flows of all outlets [m3/s], in the order of the loop, against what each requires and may have. */
export function outletCautions(
  model: Pick<CompiledLoop, 'system' | 'network'>,
  outletFlows: readonly number[],
): readonly OutletCaution[] {
  const figures = outletFigures(model.system.outlets, outletFlows);
  const largest = Math.max(...figures.map(({ flow }) => Math.abs(flow)));
  const places = figures.map(({ name, flow, requiredFlow, maximumFlow }, i) => {
    const pointer = pointerOf(model, i);
    const held = (limit: number | null) =>
      ({ subject: name, pointer, value: flow, limit: limit ?? 0, quantity: 'flow' }) as const;
    return { name, flow, requiredFlow, maximumFlow, held };
  });
  const short = places.filter(({ flow, requiredFlow }) => flow < (requiredFlow ?? -Infinity) * (1 - EQUAL));
  const above = places.filter(({ flow, maximumFlow }) => flow > (maximumFlow ?? Infinity) * (1 + EQUAL));
  const reversed = places.filter(({ flow }) => flow < -EQUAL * largest);
  return [
    ...OUTLETS.worst(
      'outlet-short',
      short.map(({ flow, requiredFlow, held }) => ({
        ...held(requiredFlow),
        excess: 1 - flow / (requiredFlow ?? 1),
      })),
    ),
    ...OUTLETS.worst(
      'outlet-above-maximum',
      above.map(({ flow, maximumFlow, held }) => ({
        ...held(maximumFlow),
        excess: flow / (maximumFlow ?? 1),
      })),
    ),
    ...OUTLETS.worst(
      'reverse-flow',
      reversed.map(({ flow, held }) => ({ ...held(null), excess: -flow })),
    ),
  ];
}

/** Into the loop: the outlet of a branch, or one of a system curve. */
function pointerOf({ network }: Pick<CompiledLoop, 'network'>, index: number): string {
  const branch = network?.branches[network.outlets[index] ?? -1];
  return branch?.outlet ? pointerTo(branch.outlet.path) : `/outlets/${index}`;
}
