/** Lists what each outlet gets, in a loop's report. */
import { PERCENT } from '../../../../curves/percent.ts';

import { type Markup, markup } from '../../../drawing/markup/markup.ts';
import { table } from '../../../drawing/table.ts';
import { userName } from '../../../drawing/user-name.ts';
import type { UnitSystem } from '../../../units/unit-system.ts';
import { say, sayNumber } from '../../../wording/numbers-in-words.ts';
import type { ReportedDuty } from './report-figures.ts';

/** More rows than these say nothing on paper. */
const SHOWN_MOST = 10;
const NONE = '\u2013';

type ReportedOutlet = ReportedDuty['outlets'][number];

const COLUMNS = [
  { name: 'Outlet' },
  { name: 'Gets', isFigure: true },
  { name: 'Needs', isFigure: true },
  { name: 'Margin', isFigure: true },
  { name: 'Leaves at', isFigure: true },
] as const;

/** All where they are few; else those with the smallest margins. */
function shownOutlets(outlets: readonly ReportedOutlet[]): readonly ReportedOutlet[] {
  if (outlets.length <= SHOWN_MOST) return outlets;
  const margin = (outlet: ReportedOutlet) => outlet.margin ?? Number.POSITIVE_INFINITY;
  return outlets.toSorted((a, b) => margin(a) - margin(b)).slice(0, SHOWN_MOST);
}

export function outletsSection({ outlets, limitingOutlet }: ReportedDuty, system: UnitSystem): Markup {
  const shown = shownOutlets(outlets);
  const rows = shown.map(({ name, flow, requiredFlow, margin, velocity }) => [
    markup`${userName(name)}${name === limitingOutlet ? ' (limits)' : null}`,
    say(flow, 'flow', system),
    requiredFlow === null ? NONE : say(requiredFlow, 'flow', system),
    margin === null ? NONE : `${sayNumber(PERCENT * margin, 3)} %`,
    velocity === null ? NONE : say(velocity, 'velocity', system),
  ]);
  const more = outlets.length - shown.length;
  const rest = more === 0 ? null : markup`<p>${more} more outlets have more to spare.</p>`;
  return markup`<section><h2>Outlets</h2>${table('What each outlet gets at this setting', COLUMNS, rows)}${rest}</section>`;
}
