/** Lists the methods behind the figures of a report. */
import { type Markup, markup } from './markup/markup.ts';

export const methodsSection = (methods: readonly string[]): Markup =>
  markup`<section><h2>Sources and methods</h2><ul class="source">${methods.map((line) => markup`<li>${line}</li>`)}</ul></section>`;
