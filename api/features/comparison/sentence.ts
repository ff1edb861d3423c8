/** Puts a comparison into a few sentences. */
import { COST_ELEMENTS, type CostElement } from '../../../models/money/option-costs.ts';
import { sayNumber } from '../../wording/numbers-in-words.ts';
import type { ComparisonFigures } from './answer-schema.ts';

type Option = ComparisonFigures['options'][number];

interface Terms {
  readonly cheapest: number | null;
  readonly years: number;
  readonly currency: string;
}

const years = (count: number): string => `${sayNumber(count)} ${count === 1 ? 'year' : 'years'}`;

export function comparisonSentence(options: readonly Option[], terms: Terms): string {
  const short = options.filter(({ feasible }) => !feasible).map(({ name }) => name);
  const lacking = short.length === 0 ? '' : ` Not every outlet is served by ${short.join(', ')}.`;
  return `${answerOf(options, terms)}${lacking}`;
}

function answerOf(options: readonly Option[], { cheapest, years: span, currency }: Terms): string {
  const best = cheapest === null ? undefined : options[cheapest];
  if (best === undefined || cheapest === null) return 'No option serves.';
  const worth = (value: number) => `${sayNumber(value, 6)} ${currency}`;
  const head = `${best.name} costs ${options.length > 1 ? 'least ' : ''}over ${years(span)}: ${worth(best.presentValue)} in present value`;
  const [first] = options;
  if (first === undefined || options.length === 1) return `${head}.`;
  if (!first.feasible) return `${head}; ${first.name}, which it is measured against, does not serve.`;
  if (cheapest === 0) {
    const next = options
      .slice(1)
      .filter(({ feasible }) => feasible)
      .toSorted((a, b) => a.presentValue - b.presentValue)[0];
    return next === undefined ? `${head}.` : `${head}, against ${worth(next.presentValue)} of ${next.name}.`;
  }
  const against = `${head}, against ${worth(first.presentValue)} of ${first.name}. ${carriedBy(best, first, worth)}`;
  return `${against}${paybackWords(best)}`;
}

const NOUNS = {
  purchase: 'purchase',
  installation: 'installation',
  energy: 'energy',
  operation: 'operation',
  maintenance: 'attention and parts',
  downtime: 'expected losses',
  environment: 'environment',
  disposal: 'disposal',
} as const satisfies Record<CostElement, string>;

/** Which element the saving comes from, and which takes most of it back. */
function carriedBy(best: Option, first: Option, worth: (value: number) => string): string {
  const savings = COST_ELEMENTS.map((name) => ({ name, saved: first.elements[name] - best.elements[name] }));
  const sorted = savings.toSorted((a, b) => b.saved - a.saved);
  const most = sorted[0];
  const least = sorted.at(-1);
  if (most === undefined || least === undefined || most.saved <= 0) return '';
  const saves = `Most is saved on ${NOUNS[most.name]} (${worth(most.saved)})`;
  return least.saved < 0 ? `${saves}; ${NOUNS[least.name]} costs ${worth(-least.saved)} more.` : `${saves}.`;
}

function paybackWords({ payback }: Option): string {
  if (payback === null || payback.simple === null) return '';
  if (payback.simple === 0) return ' It is cheaper from the start.';
  return ` What it costs more at first is back after ${years(payback.simple)}.`;
}
