/** A page read as the elements and the words that it consists of. */
import { expect } from 'vitest';
import { inertElements } from './markup/read-markup.ts';

/** The text of a page, which must be one, complete and inert, with headers that say what they head. */
export function inertPage(text: string): string {
  expect(text.startsWith('<!DOCTYPE html>\n<html lang="en"')).toBe(true);
  const elements = inertElements(text.replace('<!DOCTYPE html>\n', '').replace(/<meta[^>]*>/g, ''));
  const scopes = elements.filter(({ name }) => name === 'th').map(({ attributes }) => attributes.scope ?? '');
  expect(scopes.filter((scope) => scope !== 'row' && scope !== 'col')).toEqual([]);
  expect(elements.filter(({ name }) => name === 'h1')).toHaveLength(1);
  return text;
}

/** What is read, without marks. */
export const readable = (page: string): string =>
  page
    .replace(/<style>.*?<\/style>/s, '')
    .replace(/<[^>]+>/g, ' ')
    .replaceAll('&#39;', "'")
    .replaceAll('&quot;', '"')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&amp;', '&')
    .replace(/\s+/g, ' ');
