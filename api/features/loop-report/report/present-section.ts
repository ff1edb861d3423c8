/** Compares how a loop runs now with what is recommended, in its report. */
import { EQUAL } from '../../../../models/selection/criterion.ts';

import { type Markup, markup } from '../../../drawing/markup/markup.ts';
import { money } from '../../../drawing/money.ts';
import { table } from '../../../drawing/table.ts';
import { pumpName } from '../../../drawing/user-name.ts';
import { say, sayNumber } from '../../../wording/numbers-in-words.ts';
import type { LoopReport, ReportedDuty } from './report-figures.ts';

const COLUMNS = [
  { name: '' },
  { name: 'Setting', isFigure: true },
  { name: 'Flow', isFigure: true },
  { name: 'Power', isFigure: true },
  { name: 'Energy a year', isFigure: true },
  { name: 'Cost a year', isFigure: true },
  { name: 'Serves all' },
] as const;

const servesAll = ({ outlets }: ReportedDuty): boolean =>
  outlets.every(({ flow, requiredFlow }) => flow >= (requiredFlow ?? Number.NEGATIVE_INFINITY) * (1 - EQUAL));

/** Null where no pump is installed, or none is recommended. */
export function presentSection(report: LoopReport): Markup | null {
  const { present, recommendation, system } = report;
  const { best } = recommendation;
  if (present === null || best === null) return null;
  const { currency } = recommendation.assumptions;
  const row = (name: string, duty: ReportedDuty) => [
    markup`${name}: ${pumpName(duty)}`,
    `${sayNumber(duty.setting)} %`,
    say(duty.flow, 'flow', system),
    say(duty.power, 'power', system),
    say(duty.annualEnergy, 'energy', system),
    money(duty.annualCost, currency),
    servesAll(duty) ? 'yes' : 'no',
  ];
  const rows = [row('Now', present), row('Recommended', best)];
  return markup`<section><h2>Now and then</h2>${table('As installed, and as recommended', COLUMNS, rows)}</section>`;
}
