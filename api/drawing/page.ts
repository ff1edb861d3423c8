/** Makes a printable page, complete in itself and without script, with its subject at its head and its versions at its foot. */

import type { UnitSystem } from '../units/unit-system.ts';
import { type Markup, markup, markupText } from './markup/markup.ts';
import { plainName } from './markup/name-text.ts';
import { pageStyle } from './style.ts';
import { userName } from './user-name.ts';

export interface Page {
  /** What the page is about, as its user named it. */
  readonly subject: string;
  /** `pump report`. */
  readonly kind: string;
  readonly siteName: string;
  /** Of the day it was made on, on the clocks of the site. */
  readonly date: string;
  readonly system: UnitSystem;
  readonly sections: readonly (Markup | null)[];
  /** The versions of what the figures rest on, a line each. */
  readonly versions: readonly Markup[];
}

const SAFETY =
  "These figures are estimates. They never replace the limits that a pump's maker states, local code, or the judgement of licensed practice: wiring near water belongs to a licensed electrician, on a circuit with residual-current protection.";

export function pageText(page: Page): string {
  const { subject, kind, siteName, date, system, sections, versions } = page;
  const name = userName(subject);
  return markupText(markup`<!DOCTYPE html>
<html lang="en" dir="ltr">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${plainName(subject)}: ${kind}</title>
<style>${pageStyle(system)}
</style>
</head>
<body>
<header><h1>${name}: ${kind}</h1><p>${userName(siteName)}, <time datetime="${date}">${date}</time></p></header>
<main>
${sections}
</main>
<footer><p>${SAFETY}</p><ul>${versions.map((line) => markup`<li>${line}</li>`)}</ul></footer>
</body>
</html>
`);
}
