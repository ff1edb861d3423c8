/** Puts the report of a comparison together: the option that costs least over the years, and what decides that. */

import { cautionsSection, dangersSection } from '../../../drawing/cautions-section.ts';
import { markup } from '../../../drawing/markup/markup.ts';
import { LOOP_METHODS, MONEY_METHODS } from '../../../drawing/methods.ts';
import { methodsSection } from '../../../drawing/methods-section.ts';
import { pageText } from '../../../drawing/page.ts';
import { comparisonChart } from '../chart.ts';
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
