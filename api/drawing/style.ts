/** Holds the style of pages, on a screen and on paper. */

import type { UnitSystem } from '../units/unit-system.ts';
import { INKS } from './kit/palette.ts';
import { type Markup, markup } from './markup/markup.ts';

/** Paper follows the units; what is printed fits both. */
const PAPERS = { metric: 'A4', us: 'letter' } as const satisfies Record<UnitSystem, string>;

export const pageStyle = (system: UnitSystem): Markup => markup`
@page { size: ${PAPERS[system]}; margin: 12mm 15mm 12mm; }
* { box-sizing: border-box; }
body { margin: 0 auto; max-width: 48rem; padding: 1.5rem 1.25rem 2.5rem; color: ${INKS.ink}; background: ${INKS.paper}; font: 400 0.95rem/1.45 system-ui, "Segoe UI", Roboto, "DejaVu Sans", sans-serif; overflow-wrap: anywhere; }
header p, footer, .source { color: ${INKS.slate}; }
h1 { margin: 0; font-size: 1.5rem; line-height: 1.2; }
h2 { margin: 1.6rem 0 0.4rem; font-size: 1.1rem; border-bottom: 1px solid ${INKS.haze}; }
p { margin: 0.3rem 0; }
.answer { margin-top: 1rem; padding: 0.7rem 0.9rem; border: 1.5px solid ${INKS.deep}; border-radius: 4px; }
.answer strong { font-size: 1.25rem; }
.answer .price { font-size: 1.05rem; }
table { width: 100%; margin: 0.5rem 0; border-collapse: collapse; font-variant-numeric: tabular-nums; }
caption { padding: 0.2rem 0; text-align: start; font-weight: 600; }
th, td { padding: 0.22rem 0.5rem 0.22rem 0; border-bottom: 1px solid ${INKS.grid}; text-align: start; vertical-align: top; font-weight: 400; }
thead th { border-bottom: 1.5px solid ${INKS.slate}; font-weight: 600; }
.figure { text-align: end; white-space: nowrap; }
.figure + td, .figure + th { padding-inline-start: 0.9rem; }
.figure + .figure { padding-inline-start: 0.5rem; }
tbody th { min-width: 7em; }
.facts th { width: 42%; color: ${INKS.slate}; }
figure { margin: 0.4rem 0; break-inside: avoid; }
figure svg { display: block; width: 100%; max-width: 45rem; height: auto; }
ul { margin: 0.3rem 0; padding-inline-start: 1.1rem; }
li { margin: 0.15rem 0; }
.severity { font-weight: 600; }
.danger .source { font-weight: 400; }
.danger { padding-inline-start: 0.6rem; font-weight: 600; border-inline-start: 4px solid ${INKS.rust}; list-style: none; margin-inline-start: -1.1rem; }
footer { margin-top: 1.6rem; padding-top: 0.5rem; border-top: 1px solid ${INKS.haze}; font-size: 0.85rem; }
.source { font-size: 0.85rem; }
@media print {
  body { max-width: none; padding: 0; font-size: 8.4pt; line-height: 1.3; }
  h1 { font-size: 14pt; }
  th, td { padding-block: 0.12rem; }
  h2 { margin-top: 9pt; font-size: 10.5pt; break-after: avoid; }
  tr, li { break-inside: avoid; }
  thead { display: table-header-group; }
  figure svg { max-width: 122mm; }
  .source, footer { font-size: 7.6pt; }
}`;
