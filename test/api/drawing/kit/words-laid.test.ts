/** Words laid out in charts. */
import { describe, expect, it } from 'vitest';
import { dateAxis } from '../../../../api/drawing/kit/date-axis.ts';
import { layLegend } from '../../../../api/drawing/kit/legend.ts';
import { wrapped } from '../../../../api/drawing/kit/wrapped.ts';
import { textWidth } from '../../../../api/drawing/markup/name-text.ts';

describe('a text that is too long for a line', () => {
  const room = { width: 120, size: 12 };

  it('is broken between words, none of which is lost', () => {
    const text = 'where the pump curve may lie by its grade';
    const lines = wrapped(text, room);
    expect(lines.join(' ')).toBe(text);
    for (const line of lines) expect(textWidth(line, room.size)).toBeLessThanOrEqual(room.width);
  });

  it('without a gap is cut', () => {
    expect(wrapped('x'.repeat(100), room)).toEqual([expect.stringMatching(/^x+…$/)]);
  });
});

describe('a legend', () => {
  const row = (text: string) => ({ sample: { band: 'haze' as const }, text });
  const place = { left: 0, width: 600 };

  it('of few rows has one column, of many short ones two', () => {
    const few = layLegend(['a', 'b'].map(row), place);
    expect(few.rows.map(({ x }) => x)).toEqual([0, 0]);
    const many = layLegend([...'abcdefgh'].map(row), place);
    expect(many.rows.map(({ x }) => x)).toEqual([0, 0, 0, 0, 300, 300, 300, 300]);
    expect(many.height).toBe(80);
  });

  it('gives every row a place of its own', () => {
    const long = 'a rather long text that goes over several lines of the legend of a chart '.repeat(3);
    const { rows, height } = layLegend([long, 'b', long, 'c'].map(row), place);
    const ys = rows.map(({ y }) => y);
    expect(ys).toEqual([...ys].sort((a, b) => a - b));
    expect(new Set(ys).size).toBe(4);
    expect(height).toBeGreaterThan(ys.at(-1) ?? 0);
  });
});

describe('an axis of dates', () => {
  const at = (text: string) => Date.parse(text);

  it('tells days where there are many, and hours where there are few', () => {
    const many = dateAxis({ from: at('2026-01-01T00:00Z'), until: at('2026-03-01T00:00Z') });
    expect(many.ticks[0]?.label).toMatch(/^2026-01-\d\d$/);
    const few = dateAxis({ from: at('2026-01-01T00:00Z'), until: at('2026-01-02T00:00Z') });
    expect(few.ticks[1]?.label).toMatch(/^01-01 \d\d:00$/);
  });

  it('gives a single instant a day around it', () => {
    const { from, until } = dateAxis({ from: at('2026-01-01T12:00Z'), until: at('2026-01-01T12:00Z') });
    expect(until - from).toBe(86_400_000);
  });
});
