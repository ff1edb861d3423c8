/** Puts a name that a user gave into a page. */
import { type Markup, markup } from './markup/markup.ts';
import { plainName } from './markup/name-text.ts';

/** Apart from the direction of the text around it. */
export const userName = (name: string): Markup => markup`<bdi>${plainName(name)}</bdi>`;

export const pumpName = ({
  pump,
  count,
}: {
  readonly pump: { readonly name: string };
  readonly count: number;
}): Markup => markup`${count === 1 ? null : `${count} x `}${userName(pump.name)}`;
