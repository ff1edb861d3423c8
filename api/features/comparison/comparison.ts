/** Makes the comparison that a request asks for, ready to be stored. */

import { type Result, success } from '../../../curves/result.ts';
import { NAME_MAX } from '../../fields/text-field.ts';
import type { Problem } from '../../http/problem.ts';
import type { UnitSystem } from '../../units/unit-system.ts';
import { comparisonFigures } from './answer.ts';
import { type ComparisonDeps, comparisonContext } from './context.ts';
import type { StoredComparison } from './contract.ts';
import { type KnownAssemblies, type OptionFigures, optionFigures } from './option-figures.ts';
import type { ComparisonQuestion } from './schema.ts';
import { comparedSources } from './sources.ts';

export async function makeComparison(
  deps: ComparisonDeps,
  question: ComparisonQuestion,
  system: UnitSystem,
): Promise<Result<StoredComparison, Problem>> {
  const context = await comparisonContext(deps, question, system);
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
