/** A comparison asked for, made and ready to be stored. */
import { type Result, success } from '../../../curves/result.ts';
import { comparisonFigures } from '../../answers/comparison-answer.ts';
import type { Problem } from '../../http/problem.ts';
import type { ComparisonQuestion } from '../../schemas/comparison-request.ts';
import type { StoredComparison } from '../../store/comparison-contract.ts';
import type { UnitSystem } from '../../units/unit-system.ts';
import { comparedSources } from './compared-sources.ts';
import { type ComparisonMeans, comparisonContext } from './comparison-context.ts';
import { type KnownAssemblies, type OptionFigures, optionFigures } from './option-figures.ts';

const NAME_MAX = 120;

export async function makeComparison(
  means: ComparisonMeans,
  question: ComparisonQuestion,
  asked: { readonly siteId: string; readonly system: UnitSystem },
): Promise<Result<StoredComparison, Problem>> {
  const context = await comparisonContext(means, question, asked);
  if (!context.ok) return context;
  const options: OptionFigures[] = [];
  const known: KnownAssemblies = new Map();
  for (const [place, option] of question.options.entries()) {
    const figures = await optionFigures(context.value, option, { place, known });
    if (!figures.ok) return figures;
    options.push(figures.value);
  }
  const sources = await comparedSources(context.value, options);
  const name =
    question.name ??
    question.options
      .map((option) => option.name)
      .join(' / ')
      .slice(0, NAME_MAX);
  return success({ name, question, figures: comparisonFigures(context.value, options, sources), sources });
}
