/** Lists what the report of a design assumes. */
import { PERCENT } from '../../../../curves/percent.ts';
import { type Markup, type MarkupPart, markup } from '../../../drawing/markup/markup.ts';
import { money } from '../../../drawing/money.ts';
import { facts } from '../../../drawing/table.ts';
import { userName } from '../../../drawing/user-name.ts';
import type { UnitSystem } from '../../../units/unit-system.ts';
import { say, sayNumber } from '../../../wording/numbers-in-words.ts';
import type { DesignAnswer } from '../answer-schema.ts';

const percent = (share: number): string => `${sayNumber(PERCENT * share)} % per year`;

function priceWords({ price, currency, tariff }: DesignAnswer['assumptions']): MarkupPart {
  const text = `${sayNumber(price)} ${currency} per kWh`;
  return tariff === null
    ? text
    : markup`${text}, the mean over ${String(tariff.year)} of ${userName(tariff.name)}`;
}

export function termsSection({ assumptions }: DesignAnswer, system: UnitSystem): Markup {
  const { hoursPerDay, trimPrice, currency, years, discountRate, inflation, energyInflation } = assumptions;
  const { pipeVelocity } = assumptions.limits;
  const rows: readonly (readonly [string, MarkupPart])[] = [
    ['Years', String(years)],
    ['Discount rate', percent(discountRate)],
    ['Inflation', `${percent(inflation)}; of energy ${percent(energyInflation)}`],
    ['Price of electricity', priceWords(assumptions)],
    ['Running', `${sayNumber(hoursPerDay)} h a day at the setting`],
    ['Price of a trim valve', money(trimPrice, currency)],
    ['Highest velocity in pipes', pipeVelocity === null ? 'none' : say(pipeVelocity, 'velocity', system)],
    ['Balance', 'each outlet trimmed to exactly its required flow'],
  ];
  return markup`<section><h2>Assumptions</h2>${facts('What the figures suppose', rows)}</section>`;
}
