/** The picture of the condition of a loop. */
import { describe, expect, it } from 'vitest';
import { INKS } from '../../../../api/drawing/kit/palette.ts';
import { markupText } from '../../../../api/drawing/markup/markup.ts';
import { conditionChart } from '../../../../api/features/condition/chart.ts';
import type { ConditionFigures, ResidualSeries } from '../../../../api/features/condition/figures.ts';
import { expectClose } from '../../../expect-close.ts';
import { axisScale, marksOf, type Picture, readSvg } from '../../drawing/read-svg.ts';

const DAY = 86_400_000;
const START = Date.UTC(2026, 0, 1);

const FLOW: ResidualSeries = {
  name: 'flow',
  unit: '% of predicted',
  points: Array.from({ length: 10 }, (_, day) => ({ time: START + day * DAY, percent: -day })),
  trend: {
    from: { time: START, percent: 0 },
    until: { time: START + 9 * DAY, percent: -9 },
    perYear: -365,
    low: -380,
    high: -350,
  },
};

const drawn = (change: Partial<ConditionFigures> = {}): Picture =>
  readSvg(
    markupText(
      conditionChart(
        {
          loopName: 'Kelp flume',
          verdict: 'clogged intake',
          summary: 'The intake clogs: flow and power go down.',
          from: START,
          until: START + 9 * DAY,
          series: [FLOW],
          ...change,
        },
        { id: 'condition' },
      ),
    ),
  );

describe('the picture of a condition', () => {
  it('marks every departure where the axes say, with the trend through them', () => {
    const picture = drawn();
    const marks = marksOf(picture);
    // As the axis writes it, with a proper minus.
    const percent = axisScale(picture, { along: 'y', labels: ['0', '2'] });
    expectClose(marks[4]?.y ?? 0, percent(-4), { absolute: 0.02 });
    expectClose((marks[9]?.x ?? 0) - (marks[0]?.x ?? 0), 590, { absolute: 0.05 });
    const trend = picture.named('path').find(({ attributes }) => attributes.stroke === INKS.rust);
    const [, x = '', y = ''] = /L([\d.]+),([\d.]+)$/.exec(trend?.attributes.d ?? '') ?? [];
    expectClose(Number(x), marks[9]?.x ?? 0, { absolute: 0.02 });
    expectClose(Number(y), percent(-9), { absolute: 0.02 });
  });

  it('tells what is found, and by how much it moves a year', () => {
    const { words } = drawn();
    expect(words[1]).toBe('Found: clogged intake');
    expect(words.join('\n')).toContain('The intake clogs: flow and power go down.');
    expect(words.join('\n')).toContain('trend of flow: -365 % a year, between -380 and -350 (95 %)');
  });

  it.each<[string, Partial<ConditionFigures>]>([
    ['no reading', { series: [] }],
    [
      'one reading',
      {
        until: START,
        series: [
          { name: 'flow', unit: '% of predicted', points: [{ time: START, percent: 3 }], trend: null },
        ],
      },
    ],
    [
      'readings just as predicted',
      {
        series: [
          { name: 'flow', unit: '% of predicted', points: [{ time: START, percent: 0 }], trend: null },
        ],
      },
    ],
    ['a hostile name', { loopName: '<script>"\u202E' }],
    [
      'departures beyond measure',
      {
        series: [
          { name: 'flow', unit: '% of predicted', points: [{ time: START, percent: 1e9 }], trend: null },
        ],
      },
    ],
  ])('is drawn with %s', (_, change) => {
    expect(drawn(change).words).toContain('time, UTC');
  });
});
