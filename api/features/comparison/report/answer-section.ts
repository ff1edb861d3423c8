/** Opens a comparison's report with its answer. */
import { type Markup, markup } from '../../../drawing/markup/markup.ts';
import { money } from '../../../drawing/money.ts';
import { userName } from '../../../drawing/user-name.ts';
import type { ComparisonAnswer } from './report-figures.ts';

function headline({ options, cheapest, currency, assumptions }: ComparisonAnswer): Markup {
  const best = cheapest === null ? undefined : options[cheapest];
  if (best === undefined) return markup`<p><strong>None of the options serves</strong></p>`;
  const cost = `${money(best.presentValue, currency)} over ${assumptions.years} years, as it is worth now`;
  return markup`<p><strong>${userName(best.name)} costs least</strong></p><p class="price">${cost}</p>`;
}

const STALE =
  'A loop, pump, tariff, schedule or the site has changed since these figures were computed: ask for the comparison again before acting on it.';

export function answerSection(comparison: ComparisonAnswer): Markup {
  const stale = comparison.stale
    ? markup`<p class="danger"><span class="severity">Out of date:</span> ${STALE}</p>`
    : null;
  return markup`<section><h2>Answer</h2><div class="answer">${headline(comparison)}</div>${stale}<p>${comparison.summary}</p></section>`;
}
