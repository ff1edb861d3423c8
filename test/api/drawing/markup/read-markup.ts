/** Pages and pictures read as the elements that they consist of. */
import { XMLParser, XMLValidator } from 'fast-xml-parser';
import { expect } from 'vitest';

export interface Element {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  /** Of itself alone, as a reader sees it. */
  readonly text: string;
}

const parser = new XMLParser({
  preserveOrder: true,
  ignoreAttributes: false,
  attributeNamePrefix: '',
  parseTagValue: false,
  trimValues: false,
  htmlEntities: true,
});

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null;

function elementsIn(nodes: unknown): readonly Element[] {
  if (!Array.isArray(nodes)) return [];
  return nodes.filter(isRecord).flatMap((node) => {
    const [name] = Object.keys(node).filter((key) => key !== ':@' && key !== '#text');
    if (name === undefined) return [];
    const inner = node[name];
    const texts = Array.isArray(inner) ? inner.filter(isRecord).map((child) => child['#text']) : [];
    const attributes = isRecord(node[':@']) ? node[':@'] : {};
    const own: Element = {
      name,
      attributes: Object.fromEntries(Object.entries(attributes).map(([key, value]) => [key, String(value)])),
      text: texts.filter((text) => typeof text === 'string').join(''),
    };
    return [own, ...elementsIn(inner)];
  });
}

/** All of a text that must be well formed, hold nothing that acts or refers, and no id twice. */
export function inertElements(text: string): readonly Element[] {
  expect(XMLValidator.validate(text)).toBe(true);
  expect(text).not.toMatch(/NaN|Infinity|undefined|\[object/);
  const elements = elementsIn(parser.parse(text));
  for (const { name, attributes } of elements) {
    expect(ACTING).not.toContain(name);
    expect(Object.keys(attributes).filter((key) => /^on|href|src/i.test(key))).toEqual([]);
  }
  const ids = elements.flatMap(({ attributes: { id } }) => (id === undefined ? [] : [id]));
  expect(new Set(ids).size).toBe(ids.length);
  return elements;
}

const ACTING = ['script', 'foreignObject', 'image', 'img', 'use', 'a', 'link', 'iframe', 'object', 'form'];
