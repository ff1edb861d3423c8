/** Puts the report of a loop together: pump and setting, outlets, costs, cautions. */

import { cautionsSection, dangersSection } from '../../../drawing/cautions-section.ts';
import { type Markup, markup } from '../../../drawing/markup/markup.ts';
import { LOOP_METHODS } from '../../../drawing/methods.ts';
import { methodsSection } from '../../../drawing/methods-section.ts';
import { pageText } from '../../../drawing/page.ts';
import { loopChart } from '../../loop-chart/chart.ts';
import { dayChart } from '../../schedule/day-chart.ts';
import { answerSection } from './answer-section.ts';
import { assumptionsSection } from './assumptions-section.ts';
import { candidatesSection } from './candidates-section.ts';
import { measuredSection } from './measured-section.ts';
import { outletsSection } from './outlets-section.ts';
import { presentSection } from './present-section.ts';
import type { LoopReport } from './report-figures.ts';
import { uncertaintySection } from './uncertainty-section.ts';
import { versionLines } from './version-lines.ts';

export function loopReport(report: LoopReport): string {
  const { site, loop, recommendation, chart, day, date, system } = report;
  const { best } = recommendation;
  const cautions = [...(best?.cautions ?? []), ...recommendation.cautions];
  return pageText({
    subject: loop.document.name,
    kind: 'pump report',
    siteName: site.document.name,
    date,
    system,
    sections: [
      answerSection(report),
      dangersSection(cautions),
      best === null ? null : outletsSection(best, system),
      presentSection(report),
      measuredSection(report),
      candidatesSection(report),
      drawn(loopChart(chart, { id: 'duty' })),
      day === null ? null : drawn(dayChart(day, { id: 'day' })),
      best === null ? null : uncertaintySection(best, report),
      cautionsSection(cautions),
      assumptionsSection(report),
      methodsSection(LOOP_METHODS),
    ],
    versions: versionLines(report),
  });
}

const drawn = (chart: Markup): Markup => markup`<figure>${chart}</figure>`;
