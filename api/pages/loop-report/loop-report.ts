/** The report of a loop: which pump at which setting, what each outlet gets, what it costs, what to mind. */
import { dayChart } from '../../charts/day-chart.ts';
import type { DayFigures } from '../../charts/day-figures.ts';
import { loopChart } from '../../charts/loop-chart.ts';
import type { LoopFigures } from '../../charts/loop-figures.ts';
import { type Markup, markup } from '../../markup/markup.ts';
import type { RecommendationAnswer } from '../../schemas/answers/recommendation-schema.ts';
import type { LoopRecord, SiteRecord } from '../../store/store.ts';
import type { UnitSystem } from '../../units/unit-system.ts';
import { cautionsSection, dangersSection } from '../cautions-section.ts';
import { methodsSection } from '../methods-section.ts';
import { pageText } from '../page.ts';
import { answerSection } from './answer-section.ts';
import { assumptionsSection } from './assumptions-section.ts';
import { candidatesSection } from './candidates-section.ts';
import { doubtSection } from './doubt-section.ts';
import { outletsSection } from './outlets-section.ts';
import { presentSection } from './present-section.ts';
import { versionLines } from './version-lines.ts';

export interface LoopReport {
  readonly site: SiteRecord;
  readonly loop: LoopRecord;
  readonly recommendation: RecommendationAnswer;
  /** How the installed pump runs now; null where none is installed. */
  readonly present: ReportedDuty | null;
  readonly chart: LoopFigures;
  /** Null where the loop has no schedule. */
  readonly day: DayFigures | null;
  readonly date: string;
  readonly program: string;
  readonly system: UnitSystem;
}

export type ReportedDuty = NonNullable<RecommendationAnswer['best']>;

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
      drawn(loopChart(chart, { id: 'duty' })),
      presentSection(report),
      candidatesSection(report),
      day === null ? null : drawn(dayChart(day, { id: 'day' })),
      best === null ? null : doubtSection(best, report),
      cautionsSection(cautions),
      assumptionsSection(report),
      methodsSection(),
    ],
    versions: versionLines(report),
  });
}

const drawn = (chart: Markup): Markup => markup`<figure>${chart}</figure>`;
