/** Puts dangers before anything else that a sentence says. */

import type { CautionCode } from '../../models/cautions/catalogue.ts';
import type { Severity } from '../../models/cautions/topic.ts';

interface ReportedCaution {
  readonly code: string;
  readonly severity: Severity;
  readonly detail: string;
}

/** Holds of every intake that is not known to be out of reach: something to look at, not something found. */
const ALWAYS: CautionCode = 'entrapment-people';

/** The sentences of all dangers that were found, each once; empty where there are none. */
export function dangerWords(cautions: readonly ReportedCaution[]): string {
  const found = cautions.filter(({ code, severity }) => severity === 'danger' && code !== ALWAYS);
  const sentences = new Set(found.map(({ detail }) => detail));
  return sentences.size === 0 ? '' : `Danger: ${[...sentences].join(' ')} `;
}

/** What to do, put after the dangers that speak against it. */
export function afterDangers(cautions: readonly ReportedCaution[], imperative: string): string {
  const words = dangerWords(cautions);
  if (words === '') return imperative;
  return `${words}Resolve this first. Then ${imperative.charAt(0).toLowerCase()}${imperative.slice(1)}`;
}
