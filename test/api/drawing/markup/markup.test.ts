/** Whatever is put into a page or a picture stays inert. */

import fc from 'fast-check';
import { XMLParser, XMLValidator } from 'fast-xml-parser';
import { describe, expect, it } from 'vitest';
import { markup, markupText } from '../../../../api/drawing/markup/markup.ts';

const written = (text: string): string => markupText(markup`<p title="${text}">${text}</p>`);

describe('what is put in', () => {
  it.each([
    ['<script>alert(1)</script>', '&lt;script&gt;alert(1)&lt;/script&gt;'],
    ['" onload="x', '&quot; onload=&quot;x'],
    ["' onload='x", '&#39; onload=&#39;x'],
    ['&lt;', '&amp;lt;'],
    [']]>', ']]&gt;'],
  ])('%s is escaped for text and attributes alike', (text, expected) => {
    expect(written(text)).toBe(`<p title="${expected}">${expected}</p>`);
  });

  it.each(['\u0000', '\u0008', '\u001b', '\ufffe', '\ud800'])('that XML cannot hold is replaced', (text) => {
    expect(written(`a${text}b`)).toContain('>a\ufffdb<');
  });

  it('is well-formed XML and reads back, whatever it is', () => {
    const parser = new XMLParser({
      ignoreAttributes: false,
      parseTagValue: false,
      trimValues: false,
      htmlEntities: true,
    });
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 40 }), (text) => {
        expect(XMLValidator.validate(written(text))).toBe(true);
      }),
      { seed: 1, numRuns: 500 },
    );
    fc.assert(
      fc.property(fc.stringMatching(/^[a-z<>&"'/=; ]{1,30}$/), (text) => {
        expect(parser.parse(written(text)).p['#text']).toBe(text);
      }),
      { seed: 1, numRuns: 500 },
    );
  });
});

describe('a piece', () => {
  it('that was made by a template is kept as it is, also in a list', () => {
    const row = (text: string) => markup`<li>${text}</li>`;
    expect(markupText(markup`<ul>${['a', 'b<'].map(row)}</ul>`)).toBe('<ul><li>a</li><li>b&lt;</li></ul>');
  });

  it('may be left out', () => {
    expect(markupText(markup`a${null}b`)).toBe('ab');
  });
});

describe('a number', () => {
  it('places things to a hundredth', () => {
    expect(markupText(markup`<i x="${12.3456}" y="${-0.001}"/>`)).toBe('<i x="12.35" y="0"/>');
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY])('%s is a fault of ours', (value) => {
    expect(() => markup`${value}`).toThrow(/^invariant/);
  });
});
