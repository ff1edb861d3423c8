/** The picture of the condition of a loop. */
import { describe, expect, it } from 'vitest';
import { INKS } from '../../../../api/drawing/kit/palette.ts';
import { markupText } from '../../../../api/drawing/markup/markup.ts';
import { conditionChart } from '../../../../api/features/condition/chart.ts';
import type { ChartedSeries, ConditionFigures } from '../../../../api/features/condition/chart-figures.ts';
import { expectClose } from '../../../expect-close.ts';
import { axisScale, marksOf, type Picture, readSvg } from '../../drawing/read-svg.ts';

const DAY = 86_400_000;
const START = Date.UTC(2026, 0, 1);

const FLOW: ChartedSeries = {
  name: 'flow',
  unit: '% of predicted',
  points: Array.from({ length: 10 }, (_, day) => ({ time: START + day * DAY, percent: day })),
  band: { level: 0.5, low: -2, high: 3 },
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
          baseline: { from: START, until: START + 4 * DAY },
          events: [{ at: START + 6 * DAY, kind: 'cleaning' }],
          series: [FLOW],
          ...change,
        },
        { id: 'condition' },
      ),
    ),
  );

describe('the picture of a condition', () => {
  it('marks every day where the axes say, over the band, with the baseline as long as it lasted', () => {
    const picture = drawn();
    const marks = marksOf(picture);
    // As the axis writes it, with a proper minus.
    const percent = axisScale(picture, { along: 'y', labels: ['0', '4'] });
    expectClose(marks[4]?.y ?? 0, percent(4), { absolute: 0.02 });
    expectClose((marks[9]?.x ?? 0) - (marks[0]?.x ?? 0), 590, { absolute: 0.05 });
    const level = picture.named('path').find(({ attributes }) => attributes.stroke === INKS.deep);
    const [, x = '', y = ''] = /L([\d.]+),([\d.]+)$/.exec(level?.attributes.d ?? '') ?? [];
    expectClose(Number(x), marks[4]?.x ?? 0, { absolute: 0.02 });
    expectClose(Number(y), percent(0.5), { absolute: 0.02 });
    const band = picture.named('path').find(({ attributes }) => attributes.fill === INKS.haze);
    const [, top = ''] = /^M[\d.]+,([\d.]+)/.exec(band?.attributes.d ?? '') ?? [];
    expectClose(Number(top), percent(3), { absolute: 0.02 });
  });

  it('says what is found, and what its lines are', () => {
    const { words } = drawn();
    expect(words[1]).toBe('Found: clogged intake');
    const text = words.join('\n');
    expect(text).toContain('The intake clogs: flow and power go down.');
    expect(text).toContain('mean of the baseline');
    expect(text).toContain('cleaning of the screen');
  });

  it.each<[string, Partial<ConditionFigures>]>([
    ['no reading', { series: [] }],
    [
      'one reading',
      {
        until: START,
        series: [{ name: 'flow', unit: '% of predicted', points: [{ time: START, percent: 3 }], band: null }],
      },
    ],
    [
      'readings just as predicted',
      {
        series: [{ name: 'flow', unit: '% of predicted', points: [{ time: START, percent: 0 }], band: null }],
      },
    ],
    ['a hostile name', { loopName: '<script>"\u202E' }],
    [
      'departures beyond measure',
      {
        series: [
          { name: 'flow', unit: '% of predicted', points: [{ time: START, percent: 1e9 }], band: null },
        ],
      },
    ],
  ])('is drawn with %s', (_, change) => {
    expect(drawn(change).words).toContain('time, UTC');
  });
});
