/** The report of a comparison: which option costs least over the years, and what that hangs on. */
import { comparisonChart } from '../../charts/comparison-chart.ts';
import { markup } from '../../markup/markup.ts';
import { cautionsSection, dangersSection } from '../cautions-section.ts';
import { LOOP_METHODS, MONEY_METHODS } from '../methods.ts';
import { methodsSection } from '../methods-section.ts';
import { pageText } from '../page.ts';
import { answerSection } from './answer-section.ts';
import { assembliesSection } from './assemblies-section.ts';
import { elementsSection } from './elements-section.ts';
import { optionsSection } from './options-section.ts';
import type { ComparisonReport } from './report-figures.ts';
import { sensitivitySection } from './sensitivity-section.ts';
import { termsSection } from './terms-section.ts';
import { versionLines } from './version-lines.ts';

export function comparisonReport(report: ComparisonReport): string {
  const { siteName, comparison, date, system } = report;
  const cautions = [...comparison.cautions, ...comparison.options.flatMap((option) => option.cautions)];
  return pageText({
    subject: comparison.name,
    kind: 'cost comparison',
    siteName,
    date,
    system,
    sections: [
      answerSection(comparison),
      dangersSection(cautions),
      optionsSection(comparison, system),
      elementsSection(comparison),
      markup`<figure>${comparisonChart(comparison, { id: 'costs' })}</figure>`,
      assembliesSection(comparison, system),
      sensitivitySection(comparison),
      termsSection(comparison),
      cautionsSection(cautions),
      methodsSection([...MONEY_METHODS, ...LOOP_METHODS]),
    ],
    versions: versionLines(report),
  });
}
