/** Lists what the options run, in a comparison's report. */

import { type Markup, type MarkupPart, markup } from '../../../drawing/markup/markup.ts';
import { table } from '../../../drawing/table.ts';
import { pumpName, userName } from '../../../drawing/user-name.ts';
import type { UnitSystem } from '../../../units/unit-system.ts';
import { say, sayNumber } from '../../../wording/numbers-in-words.ts';
import type { ComparisonAnswer, ReportedOption } from './report-figures.ts';

const SHOWN_MOST = 16;

const COLUMNS = [
  { name: 'Option' },
  { name: 'Loop' },
  { name: 'Pump' },
  { name: 'Setting', isFigure: true },
  { name: 'Power', isFigure: true },
  { name: 'Serves' },
] as const;

type Assembly = ReportedOption['assemblies'][number];

const pumpOf = ({ pump, count }: Assembly): MarkupPart =>
  pump === null ? `${count} of stated power` : pumpName({ pump, count });

function servesWords({ feasible, detail, settingFrom }: Assembly): string {
  if (settingFrom === 'power') return 'not judged';
  return feasible ? 'yes' : `no${detail === null ? '' : `: ${detail}`}`;
}

export function assembliesSection({ options }: ComparisonAnswer, system: UnitSystem): Markup {
  const all = options.flatMap(({ name, assemblies }) => assemblies.map((assembly) => ({ name, assembly })));
  const rows = all
    .slice(0, SHOWN_MOST)
    .map(({ name, assembly }) => [
      userName(name),
      assembly.loop === null ? '\u2013' : userName(assembly.loop.name),
      pumpOf(assembly),
      assembly.setting === null ? '\u2013' : `${sayNumber(assembly.setting)} %`,
      say(assembly.power, 'power', system),
      servesWords(assembly),
    ]);
  const more = all.length - rows.length;
  const rest = more === 0 ? null : markup`<p>${more} more are not shown.</p>`;
  return markup`<section><h2>What runs</h2>${table('Pumps of each option', COLUMNS, rows)}${rest}</section>`;
}
