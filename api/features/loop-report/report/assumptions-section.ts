/** Lists what a loop's report assumes. */
import { PERCENT } from '../../../../curves/percent.ts';

import { type Markup, type MarkupPart, markup } from '../../../drawing/markup/markup.ts';
import { facts } from '../../../drawing/table.ts';
import { userName } from '../../../drawing/user-name.ts';
import { say, sayNumber } from '../../../wording/numbers-in-words.ts';
import type { LoopReport } from './report-figures.ts';

const DATA = {
  entered: 'as entered',
  calibrated: 'calibrated by what was measured',
} as const satisfies Record<LoopReport['recommendation']['dataBasis'], string>;

function priceWords({ recommendation }: LoopReport): MarkupPart {
  const { price, currency, tariff } = recommendation.assumptions;
  if (price === null) return 'none is set';
  const text = `${sayNumber(price)} ${currency} per kWh`;
  return tariff === null
    ? text
    : markup`${text}, the mean over ${String(tariff.year)} of ${userName(tariff.name)}`;
}

function screenWords({ recommendation, system }: LoopReport): string {
  const { throughSlotVelocity, cloggedFraction, screenBasis } = recommendation.assumptions.limits;
  if (throughSlotVelocity === null) return 'not judged';
  return `at most ${say(throughSlotVelocity, 'velocity', system)} (${screenBasis}), ${sayNumber(PERCENT * cloggedFraction)} % of the openings clogged`;
}

export function assumptionsSection(report: LoopReport): Markup {
  const { loop, site, recommendation, system } = report;
  const { water, frictionMultiplier } = loop.document;
  const { hoursPerDay, balancing, limits } = recommendation.assumptions;
  const rows: readonly (readonly [string, MarkupPart])[] = [
    ['Curves and friction', DATA[recommendation.dataBasis]],
    ['Price of electricity', priceWords(report)],
    ['Running', `${sayNumber(hoursPerDay)} h a day at the setting`],
    ['Branches', balancing === 'trimmed' ? 'throttled to their required flows' : 'as built'],
    [
      'Water',
      `${say(water.temperature, 'temperature', system)}, ${say(water.salinity, 'salinity', system)} of salt`,
    ],
    [
      'Friction',
      frictionMultiplier === 1 ? 'as entered' : `${sayNumber(frictionMultiplier)} times as entered`,
    ],
    ['Height of the site', say(site.document.elevation, 'elevation', system)],
    ['Velocity through the intake screen', screenWords(report)],
    ['Velocity in pipes cautioned above', say(limits.pipeVelocity, 'velocity', system)],
  ];
  return markup`<section><h2>Assumptions</h2>${facts('What the figures suppose', rows)}</section>`;
}
