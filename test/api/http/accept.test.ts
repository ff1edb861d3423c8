/** Content negotiation. */
import { describe, expect, it } from 'vitest';
import { negotiate } from '../../../api/http/accept.ts';

const OFFERS = ['application/json', 'text/csv'] as const;

describe('the header Accept', () => {
  it.each([
    [undefined, 'application/json'],
    ['', 'application/json'],
    ['*/*', 'application/json'],
    ['text/csv', 'text/csv'],
    ['TEXT/CSV; charset=utf-8', 'text/csv'],
    ['text/*', 'text/csv'],
    ['application/json;q=0.5, text/csv;q=0.8', 'text/csv'],
    ['text/csv;q=0.5, */*;q=0.8', 'application/json'],
    // RFC 9110, 12.5.1: the most specific range decides.
    ['*/*, application/json;q=0.1', 'text/csv'],
    ['text/html, */*;q=0.1', 'application/json'],
    ['application/json;q=0, text/csv;q=0', undefined],
    ['text/html', undefined],
    ['*/*;q=0', undefined],
    ['text/csv;q=wrong', undefined],
  ])('%s takes %s', (accept, chosen) => {
    expect(negotiate(accept, OFFERS)).toBe(chosen);
  });
});
