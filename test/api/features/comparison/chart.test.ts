/** The picture of a comparison. */
import { describe, expect, it } from 'vitest';
import { INKS } from '../../../../api/drawing/kit/palette.ts';
import { markupText } from '../../../../api/drawing/markup/markup.ts';
import { comparisonChart } from '../../../../api/features/comparison/chart.ts';
import type { ChartedOption } from '../../../../api/features/comparison/chart-figures.ts';
import { type ByElement, COST_ELEMENTS } from '../../../../models/money/option-costs.ts';
import { expectClose } from '../../../expect-close.ts';
import { axisScale, marksOf, type Picture, readSvg } from '../../drawing/read-svg.ts';

const NOTHING: ByElement = {
  purchase: 0,
  installation: 0,
  energy: 0,
  operation: 0,
  maintenance: 0,
  downtime: 0,
  environment: 0,
  disposal: 0,
};

const option = (
  name: string,
  {
    at,
    breakEven = null,
    elements = NOTHING,
  }: { readonly at: readonly number[]; readonly breakEven?: number | null; readonly elements?: ByElement },
): ChartedOption => ({
  name,
  feasible: true,
  presentValue: at.at(-1) ?? 0,
  elements,
  yearByYear: at.map((cumulated, year) => ({
    year,
    cumulativePresentValue: cumulated,
    runningCost: year === 0 ? 0 : cumulated - (at[year - 1] ?? 0),
  })),
  payback: breakEven === null ? null : { discounted: breakEven },
});

/** 400 a year for nothing down, or 900 down and 100 a year: level after three years. */
const KEEP = option('Keep', { at: [0, 400, 800, 1200, 1600], elements: { ...NOTHING, energy: 1600 } });
const REPLACE = option('Replace', {
  at: [900, 1000, 1100, 1200, 1300],
  elements: { ...NOTHING, purchase: 800, installation: 100, energy: 450, environment: -50 },
  breakEven: 3,
});

const drawn = (options: readonly ChartedOption[]): Picture =>
  readSvg(
    markupText(comparisonChart({ name: 'Two ways to go on', currency: 'EUR', options }, { id: 'money' })),
  );

describe('the picture of a comparison', () => {
  it('has a bar of each element, as long as its present value', () => {
    const picture = drawn([KEEP, REPLACE]);
    const money = axisScale(picture, { along: 'x', labels: ['0', '1000'] });
    const bars = picture.named('rect').filter(({ attributes }) => attributes.stroke === INKS.ink);
    const spans = bars.map(({ attributes: { x, width } }) => [Number(x), Number(x) + Number(width)] as const);
    const expected = [
      [0, 1600],
      [0, 800],
      [800, 900],
      [900, 1350],
      [-50, 0],
    ] as const;
    expect(spans).toHaveLength(expected.length);
    for (const [place, [from, until]] of expected.entries()) {
      expectClose(spans[place]?.[0] ?? 0, money(from), { absolute: 0.02 });
      expectClose(spans[place]?.[1] ?? 0, money(until), { absolute: 0.02 });
    }
    expect(picture.words).toContain('1300 EUR');
  });

  it('marks the break-even where the lines cross', () => {
    const picture = drawn([KEEP, REPLACE]);
    // The ticks of the lower plot come after those of the upper.
    const value = axisScale(picture, { along: 'y', labels: ['500', '1500'] });
    const star = marksOf(picture).find(({ fill, y }) => fill === INKS.rust && y < 480);
    expectClose(star?.y ?? 0, value(1200), { absolute: 0.05 });
    expect(picture.words.join('\n')).toContain('has made up for its price after 3 years');
  });

  it('tells elements apart by hatches of its own, and names those alone that occur', () => {
    const picture = drawn([KEEP, REPLACE]);
    const fills = picture.named('rect').map(({ attributes }) => attributes.fill ?? '');
    const referred = fills.flatMap((fill) => /^url\(#(.+)\)$/.exec(fill)?.[1] ?? []);
    const ids = picture.named('pattern').map(({ attributes }) => attributes.id);
    expect(referred.length).toBeGreaterThan(0);
    for (const id of referred) expect(ids).toContain(id);
    expect(picture.words).toContain('purchase');
    expect(picture.words).not.toContain('disposal');
  });

  it('speaks for those who do not see it', () => {
    const [description] = drawn([KEEP, REPLACE]).named('desc');
    expect(description?.text).toContain(
      'Replace: 1300 EUR in all; purchase 800, installation 100, energy 450',
    );
  });

  it.each<[string, readonly ChartedOption[]]>([
    [
      'options without any cost',
      [option('Nothing', { at: [0, 0] }), option('Nothing either', { at: [0, 0] })],
    ],
    ['one year', [option('Once', { at: [5, 6] })]],
    [
      'more options than can be told apart',
      Array.from({ length: 9 }, (_, place) => ({ ...KEEP, name: `Option ${place}` })),
    ],
    ['sums that come back', [option('Back', { at: [-5, -60], elements: { ...NOTHING, energy: -60 } })]],
    [
      'hostile names',
      [
        { ...KEEP, name: '<script>"&' },
        { ...KEEP, name: '\u202Eعقد' },
        { ...KEEP, name: 'x'.repeat(120) },
      ],
    ],
    ['great sums', [option('Great', { at: [0, 2e12], elements: { ...NOTHING, energy: 2e12 } })]],
  ])('is drawn with %s', (_, options) => {
    expect(drawn(options).words.join('\n')).toContain('present value [EUR]');
  });

  it('knows every element of the method', () => {
    const elements = Object.fromEntries(COST_ELEMENTS.map((element) => [element, 100]));
    const { words } = drawn([{ ...KEEP, elements: { ...NOTHING, ...elements } }]);
    for (const element of COST_ELEMENTS) expect(words).toContain(element);
  });
});
