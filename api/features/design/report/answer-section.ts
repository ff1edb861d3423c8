/** Opens the report of a design with its answer. */
import { type Markup, markup } from '../../../drawing/markup/markup.ts';
import { money } from '../../../drawing/money.ts';
import { pumpName } from '../../../drawing/user-name.ts';
import { sayNumber } from '../../../wording/numbers-in-words.ts';
import type { DesignAnswer } from '../answer-schema.ts';

function headline({ best, assumptions: { currency, years } }: DesignAnswer): Markup {
  if (best === null) return markup`<p><strong>No design is feasible</strong></p>`;
  const over = `${money(best.presentValue, currency)} over ${years} years, present value`;
  return markup`<p><strong>${pumpName(best)} at ${sayNumber(best.setting)} %</strong></p><p class="price">${over}</p>`;
}

export const answerSection = (answer: DesignAnswer): Markup =>
  markup`<section><h2>Answer</h2><div class="answer">${headline(answer)}</div><p>${answer.summary}</p></section>`;
