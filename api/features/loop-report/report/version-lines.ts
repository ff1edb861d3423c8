/** Lists the versions that a loop's report follows from. */
import { type Markup, markup } from '../../../drawing/markup/markup.ts';
import type { LoopReport } from './report-figures.ts';

const PUMPS_MOST = 8;

export function versionLines({ recommendation, program, site }: LoopReport): readonly Markup[] {
  const { modelVersion, loop, pumps } = recommendation.basis;
  const named = pumps
    .slice(0, PUMPS_MOST)
    .map(({ id, version }) => `${id ?? 'inline'} version ${version ?? '-'}`);
  const more = pumps.length > PUMPS_MOST ? ` and ${pumps.length - PUMPS_MOST} more` : '';
  return [
    markup`Program ${program}, formulas ${modelVersion}; site version ${String(site.version)}`,
    ...(loop === null ? [] : [markup`Loop ${loop.id ?? 'inline'} version ${String(loop.version ?? '-')}`]),
    ...(named.length === 0 ? [] : [markup`Pumps ${named.join(', ')}${more}`]),
  ];
}
