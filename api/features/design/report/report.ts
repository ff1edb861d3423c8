/** Puts the report of a design together: sizes, pump and setting, and what decides them. */
import { cautionsSection, dangersSection } from '../../../drawing/cautions-section.ts';
import { type Markup, markup } from '../../../drawing/markup/markup.ts';
import { LOOP_METHODS, MONEY_METHODS } from '../../../drawing/methods.ts';
import { methodsSection } from '../../../drawing/methods-section.ts';
import { pageText } from '../../../drawing/page.ts';
import { type ChartedDesign, frontierChart } from '../chart.ts';
import { answerSection } from './answer-section.ts';
import { pipesSection } from './pipes-section.ts';
import { pumpsSection } from './pumps-section.ts';
import { termsSection } from './terms-section.ts';

export interface DesignReport extends ChartedDesign {
  readonly siteName: string;
  readonly siteVersion: number;
  readonly date: string;
  readonly program: string;
}

const METHOD =
  'Design: the least cost of pipes is kept against the head that they require, from the outlets to the pump; every pump at every setting takes the cheapest that its head is enough for.';

export function designReport(report: DesignReport): string {
  const { loopName, answer, system, siteName, date } = report;
  const cautions = [...(answer.best?.cautions ?? []), ...answer.cautions];
  return pageText({
    subject: loopName,
    kind: 'design',
    siteName,
    date,
    system,
    sections: [
      answerSection(answer),
      dangersSection(cautions),
      pipesSection(answer, system),
      pumpsSection(answer, system),
      markup`<figure>${frontierChart(report, { id: 'frontier' })}</figure>`,
      termsSection(answer, system),
      cautionsSection(cautions),
      methodsSection([METHOD, ...MONEY_METHODS.slice(0, 1), ...LOOP_METHODS]),
    ],
    versions: versionLines(report),
  });
}

const PUMPS_MOST = 8;

function versionLines({ answer: { basis }, program, siteVersion }: DesignReport): readonly Markup[] {
  const { modelVersion, loop, pumps } = basis;
  const named = ({ id, version }: { readonly id: string | null; readonly version: number | null }) =>
    `${id ?? 'inline'} version ${version ?? '-'}`;
  const more = pumps.length > PUMPS_MOST ? ` and ${pumps.length - PUMPS_MOST} more` : '';
  return [
    markup`Program ${program}, formulas ${modelVersion}; site version ${String(siteVersion)}`,
    ...(loop === null ? [] : [markup`Loop ${named(loop)}`]),
    ...(pumps.length === 0 ? [] : [markup`Pumps ${pumps.slice(0, PUMPS_MOST).map(named).join(', ')}${more}`]),
  ];
}
