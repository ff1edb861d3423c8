/** Lists the versions that a comparison's report follows from. */
import { type Markup, markup } from '../../../drawing/markup/markup.ts';
import type { ComparisonReport } from './report-figures.ts';

const SHOWN_MOST = 8;

function listed(
  kind: string,
  all: readonly { readonly id: string; readonly version: number | null }[],
): readonly Markup[] {
  if (all.length === 0) return [];
  const shown = all.slice(0, SHOWN_MOST).map(({ id, version }) => `${id} version ${version ?? 'none'}`);
  const more = all.length > SHOWN_MOST ? ` and ${all.length - SHOWN_MOST} more` : '';
  return [markup`${kind} ${shown.join(', ')}${more}`];
}

export function versionLines({ comparison, program }: ComparisonReport): readonly Markup[] {
  const { basis, id, createdAt } = comparison;
  return [
    markup`Program ${program}, formulas ${basis.modelVersion}; comparison ${id} of ${createdAt}`,
    ...listed('Loops', basis.loops),
    ...listed('Pumps', basis.pumps),
    ...listed('Tariffs', basis.tariffs),
  ];
}
