/** Makes the text of a page or a picture, in which all that is put in stays inert. */

const TEXT = Symbol('markup');

/** Made by `markup` alone: nothing that a caller sends can pass for one. */
export interface Markup {
  readonly [TEXT]: string;
}

/** A list is written part after part; null writes nothing. */
export type MarkupPart = Markup | string | number | null | readonly MarkupPart[];

const ESCAPES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Control characters besides white space and what else XML 1.0 does not know, even as references. */
const UNWRITABLE = /[^\P{Cc}\t\n\r]|[\uFFFE\uFFFF]|\p{Surrogate}/gu;
const REPLACEMENT = '\uFFFD';

const escaped = (text: string): string =>
  text.replace(UNWRITABLE, REPLACEMENT).replace(/[&<>"']/g, (character) => ESCAPES[character] ?? character);

const HUNDREDTHS = 2;

/** Numbers place things: a hundredth of a pixel is near enough, and keeps pictures short. */
function written(value: number): string {
  if (!Number.isFinite(value)) throw new Error(`invariant: ${value} is no place in a picture`);
  const rounded = Number(value.toFixed(HUNDREDTHS));
  return String(rounded === 0 ? 0 : rounded);
}

function partText(part: MarkupPart): string {
  if (part === null) return '';
  if (typeof part === 'string') return escaped(part);
  if (typeof part === 'number') return written(part);
  return TEXT in part ? part[TEXT] : part.map(partText).join('');
}

/**
 * A piece of HTML or SVG: what is written in the template is kept as it is, what is put in is escaped for text and for
 * attributes in quotes, unless it was made here too. Throws on a number that is not finite.
 */
export function markup(texts: TemplateStringsArray, ...parts: readonly MarkupPart[]): Markup {
  return {
    [TEXT]: texts
      .map((text, place) => text + (place < parts.length ? partText(parts[place] ?? null) : ''))
      .join(''),
  };
}

export const markupText = (whole: Markup): string => whole[TEXT];
