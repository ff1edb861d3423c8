/** Makes the tables of a page. */
import { type Markup, type MarkupPart, markup } from './markup/markup.ts';

export interface Column {
  readonly name: string;
  /** Figures are aligned to the right. */
  readonly isFigure?: boolean;
}

const align = ({ isFigure }: Column): Markup | null => (isFigure ? markup` class="figure"` : null);

/** The first cell of a row names it. */
export function table(
  caption: string,
  columns: readonly Column[],
  rows: readonly (readonly MarkupPart[])[],
): Markup {
  const head = columns.map((column) => markup`<th scope="col"${align(column)}>${column.name}</th>`);
  const body = rows.map((cells) => {
    const written = cells.map((cell, place) => {
      const column = columns[place] ?? { name: '' };
      return place === 0
        ? markup`<th scope="row"${align(column)}>${cell}</th>`
        : markup`<td${align(column)}>${cell}</td>`;
    });
    return markup`<tr>${written}</tr>`;
  });
  return markup`<table><caption>${caption}</caption><thead><tr>${head}</tr></thead><tbody>${body}</tbody></table>`;
}

/** Named facts, one a row. */
export const facts = (caption: string, rows: readonly (readonly [string, MarkupPart])[]): Markup => {
  const written = rows.map(([name, value]) => markup`<tr><th scope="row">${name}</th><td>${value}</td></tr>`);
  return markup`<table class="facts"><caption>${caption}</caption><tbody>${written}</tbody></table>`;
};
