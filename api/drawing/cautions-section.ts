/** Lists the cautions of a report, the gravest first. */

import type { Caution } from '../../models/cautions/catalogue.ts';
import type { Severity } from '../../models/cautions/topic.ts';
import { type Markup, markup } from './markup/markup.ts';

const WORDS = { danger: 'Danger', warning: 'Warning', note: 'Note' } as const satisfies Record<
  Severity,
  string
>;

/** Of a duty as of its loop. */
type ReportedCaution = Omit<Caution, 'code'> & { readonly code: string };

const item = ({ severity, detail, source }: ReportedCaution): Markup =>
  markup`<li class="${severity}"><span class="severity">${WORDS[severity]}:</span> ${detail} <span class="source">(${source})</span></li>`;

/** Those of a duty may be those of its loop again. */
function ofSeverity(cautions: readonly ReportedCaution[], severity: Severity): readonly ReportedCaution[] {
  const distinct = new Map(cautions.map((caution) => [`${caution.code} ${caution.detail}`, caution]));
  return [...distinct.values()].filter((caution) => caution.severity === severity);
}

function listed(title: string, cautions: readonly ReportedCaution[]): Markup | null {
  if (cautions.length === 0) return null;
  return markup`<section><h2>${title}</h2><ul>${cautions.map(item)}</ul></section>`;
}

/** What comes before everything else; null where there is no danger. */
export const dangersSection = (cautions: readonly ReportedCaution[]): Markup | null =>
  listed('Dangers', ofSeverity(cautions, 'danger'));

export const cautionsSection = (cautions: readonly ReportedCaution[]): Markup | null =>
  listed('Cautions', [...ofSeverity(cautions, 'warning'), ...ofSeverity(cautions, 'note')]);
