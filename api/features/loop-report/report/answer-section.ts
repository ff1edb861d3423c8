/** Opens a loop's report with its answer. */
import { PERCENT } from '../../../../curves/percent.ts';

import { type Markup, markup } from '../../../drawing/markup/markup.ts';
import { money } from '../../../drawing/money.ts';
import { pumpName, userName } from '../../../drawing/user-name.ts';
import { say, sayNumber } from '../../../wording/numbers-in-words.ts';
import type { LoopReport, ReportedDuty } from './report-figures.ts';

function headline({ recommendation, system }: LoopReport, best: ReportedDuty): Markup {
  const { currency } = recommendation.assumptions;
  const use = [
    say(best.power, 'power', system),
    `${say(best.annualEnergy, 'energy', system)} a year`,
    ...(best.annualCost === null ? ['no price is set'] : [`${money(best.annualCost, currency)} a year`]),
  ].join(', ');
  const turnover =
    best.turnover === null ? '' : `, the tank's volume ${sayNumber(best.turnover, 3)} times an hour`;
  const figures = `${say(best.flow, 'flow', system)} at ${say(best.head, 'head', system)}${turnover}; ${sayNumber(PERCENT * best.efficiency, 3)} % wire to water.`;
  return markup`<div class="answer"><p><strong>Run ${pumpName(best)} at setting ${sayNumber(best.setting)} %</strong></p><p class="price">${use}</p><p>${figures}</p></div><p>${recommendation.summary}</p>`;
}

function noAnswer({ recommendation, loop }: LoopReport): Markup {
  return markup`<div class="answer"><p><strong>No pump that was judged serves ${userName(loop.document.name)}</strong></p></div><p>${recommendation.summary}</p>`;
}

export const answerSection = (report: LoopReport): Markup => {
  const { best } = report.recommendation;
  return markup`<section><h2>Answer</h2>${best === null ? noAnswer(report) : headline(report, best)}</section>`;
};
