/** Describes the chart of a comparison in words. */
import { COST_ELEMENTS } from '../../../models/money/option-costs.ts';
import type { LegendRow } from '../../drawing/kit/legend.ts';
import { isolatedName, plainName } from '../../drawing/markup/name-text.ts';
import { sayNumber } from '../../wording/numbers-in-words.ts';
import type { ChartedComparison, ChartedOption } from './chart-figures.ts';
import { fillOf } from './element-fills.ts';
import { BREAK_EVEN, optionStyle } from './option-styles.ts';

const YEAR_DIGITS = 3;

/** Null where an option was never dearer than the first, or does not make up for it. */
export function breakEvenYear({ payback }: ChartedOption): number | null {
  const year = payback?.discounted ?? null;
  return year === null || year === 0 ? null : year;
}

function breakEvenWords(option: ChartedOption, say: (text: string) => string): string {
  const year = breakEvenYear(option);
  return year === null
    ? ''
    : `${say(option.name)} has made up for its price after ${sayNumber(year, YEAR_DIGITS)} years, in present values`;
}

export function comparisonLegend({ options }: ChartedComparison, chart: string): readonly LegendRow[] {
  const used = COST_ELEMENTS.filter((element) => options.some(({ elements }) => elements[element] !== 0));
  return [
    ...used.map((element): LegendRow => ({ sample: { fill: fillOf(chart, element) }, text: element })),
    ...options.map(({ name }, place): LegendRow => {
      const { line, mark } = optionStyle(place);
      return { sample: { line, mark }, text: isolatedName(name) };
    }),
    ...options.flatMap((option): readonly LegendRow[] => {
      const text = breakEvenWords(option, isolatedName);
      return text === '' ? [] : [{ sample: { mark: BREAK_EVEN }, text }];
    }),
  ];
}

export function comparisonDescription({ options, currency, name }: ChartedComparison): string {
  const sentences = options.flatMap((option) => {
    const parts = COST_ELEMENTS.filter((element) => option.elements[element] !== 0).map(
      (element) => `${element} ${sayNumber(option.elements[element])}`,
    );
    const even = breakEvenWords(option, plainName);
    return [
      `${plainName(option.name)}${option.feasible ? '' : ' (does not serve)'}: ${sayNumber(option.presentValue)} ${currency} in all; ${parts.join(', ')}.`,
      ...(even === '' ? [] : [`${even}.`]),
    ];
  });
  return [`Life-cycle costs in ${plainName(name)}, as present values.`, ...sentences].join(' ');
}
