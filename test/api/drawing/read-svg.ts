/** A picture read as the XML that it is. */
import { expect } from 'vitest';
import { type Element, inertElements } from './markup/read-markup.ts';

export interface Picture {
  readonly elements: readonly Element[];
  named(name: string): readonly Element[];
  /** All words that are shown. */
  readonly words: readonly string[];
}

/** Reads a picture, and sees that it is well formed, complete, inert and speaks for itself. */
export function readSvg(text: string): Picture {
  const elements = inertElements(text);
  const named = (name: string) => elements.filter((element) => element.name === name);
  expect(elements[0]?.name).toBe('svg');
  expect(named('style')).toEqual([]);
  const { role, 'aria-labelledby': labels = '' } = elements[0]?.attributes ?? {};
  expect(role).toBe('img');
  const labelled = labels.split(' ').map((id) => elements.find(({ attributes }) => attributes.id === id));
  expect(labelled.map((element) => element?.name)).toEqual(['title', 'desc']);
  for (const element of labelled) expect(element?.text.length).toBeGreaterThan(10);
  return { elements, named, words: named('text').map(({ text: shown }) => shown) };
}

/** Figure along an axis -> place [px], from two of its ticks. */
export function axisScale(
  { named }: Picture,
  { along, labels }: { readonly along: 'x' | 'y'; readonly labels: readonly [string, string] },
): (figure: number) => number {
  const anchor = along === 'x' ? 'middle' : 'end';
  // A label of the axis up stands a little below its line.
  const shift = along === 'y' ? 0.36 * 11.5 : 0;
  const [first, second] = labels.map((label) => {
    const tick = named('text').find(
      ({ text, attributes }) => text === label && attributes['text-anchor'] === anchor,
    );
    if (tick === undefined) throw new Error(`no tick ${label}`);
    return { figure: Number(label), place: Number(tick.attributes[along]) - shift };
  });
  if (first === undefined || second === undefined) throw new Error('no ticks');
  const slope = (second.place - first.place) / (second.figure - first.figure);
  return (figure) => first.place + slope * (figure - first.figure);
}

/** Places [px] of the marks in a picture. */
export const marksOf = ({
  named,
}: Picture): readonly { readonly x: number; readonly y: number; readonly fill: string }[] =>
  named('path').flatMap(({ attributes: { transform = '', fill = '' } }) => {
    const [, x, y] = /^translate\(([-\d.]+) ([-\d.]+)\)$/.exec(transform) ?? [];
    return x === undefined || y === undefined ? [] : [{ x: Number(x), y: Number(y), fill }];
  });
