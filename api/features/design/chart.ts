/** Draws what pipes cost against the head that they require, with the designs that were chosen. */
import { inUnit, quantityAxis } from '../../drawing/in-units.ts';
import { linearAxis } from '../../drawing/kit/axis.ts';
import { type MarkStyle, mark } from '../../drawing/kit/marks.ts';
import type { LineStyle } from '../../drawing/kit/palette.ts';
import type { Plot } from '../../drawing/kit/plot.ts';
import { lineThrough } from '../../drawing/kit/series.ts';
import { drawSheet, type Panel } from '../../drawing/kit/sheet.ts';
import type { Markup } from '../../drawing/markup/markup.ts';
import { plainName, shortName } from '../../drawing/markup/name-text.ts';
import type { UnitSystem } from '../../units/unit-system.ts';
import { sayMoney } from '../../wording/money.ts';
import { say, sayNumber } from '../../wording/numbers-in-words.ts';
import type { DesignAnswer } from './answer-schema.ts';

export interface ChartedDesign {
  readonly loopName: string;
  readonly answer: DesignAnswer;
  readonly system: UnitSystem;
}

const HEIGHT = 290;
const FRONTIER: LineStyle = { ink: 'deep', width: 2.2 };
const BEST: MarkStyle = { shape: 'circle', ink: 'ink', isFilled: true, size: 90 };
const OTHER: MarkStyle = { shape: 'diamond', ink: 'rust', isFilled: false };

export function frontierChart(charted: ChartedDesign, { id }: { readonly id: string }): Markup {
  const { loopName, answer, system } = charted;
  const heads = pointsOf(answer).map(({ head }) => head);
  return drawSheet({
    id,
    title: `${shortName(loopName)}: cost of pipes and required head`,
    subtitle: subtitleOf(charted),
    description: descriptionOf(charted),
    axis: quantityAxis({ name: 'required head', quantity: 'head', system, values: heads, ticks: 7 }),
    panels: [costPanel(charted)],
    legend: [
      { sample: { line: FRONTIER }, text: 'cheapest pipes that require no more head' },
      ...(answer.best === null ? [] : [{ sample: { mark: BEST }, text: 'best design' }]),
      ...(answer.ranking.length === 0
        ? []
        : [{ sample: { mark: OTHER }, text: 'best design of another pump' }]),
    ],
    notes: [
      'Estimates from the entered points, pipework and prices. They never replace the limits of the maker, local code or licensed practice.',
    ],
  });
}

interface DesignPoint {
  readonly head: number;
  readonly cost: number;
}

const placeOf = ({
  requiredHead,
  pipeCost,
}: {
  readonly requiredHead: number;
  readonly pipeCost: number;
}): DesignPoint => ({ head: requiredHead, cost: pipeCost });

const pointsOf = ({ best, ranking, frontier }: DesignAnswer): readonly DesignPoint[] => [
  ...frontier,
  ...(best === null ? [] : [placeOf(best)]),
  ...ranking.map(placeOf),
];

function costPanel({ answer, system }: ChartedDesign): Panel {
  const head = inUnit('head', system);
  const { best, ranking, frontier, assumptions } = answer;
  const at = (plot: Plot, point: DesignPoint) => [plot.x(head(point.head)), plot.y(point.cost)] as const;
  return {
    axis: linearAxis({
      name: 'cost of pipes',
      unit: assumptions.currency,
      values: pointsOf(answer).map(({ cost }) => cost),
    }),
    height: HEIGHT,
    inside: (plot) => [
      lineThrough(
        plot,
        frontier.map((point) => ({ x: head(point.head), y: point.cost })),
        { ...FRONTIER, steps: true },
      ),
    ],
    over: (plot) => [
      ...ranking.map((row) => mark(at(plot, placeOf(row)), OTHER)),
      best === null ? null : mark(at(plot, placeOf(best)), BEST),
    ],
  };
}

function subtitleOf({ answer: { best, assumptions } }: ChartedDesign): string {
  if (best === null) return 'No design is feasible';
  const cost = sayMoney(best.presentValue, assumptions.currency, true);
  const pumps = `${best.count === 1 ? '' : `${best.count} x `}${shortName(best.pump.name)}`;
  return `${pumps} at ${sayNumber(best.setting)} %: ${cost} in all over ${assumptions.years} years`;
}

function descriptionOf({ loopName, answer, system }: ChartedDesign): string {
  const { best, frontier, assumptions } = answer;
  const { currency } = assumptions;
  const said = ({ head, cost }: DesignPoint) =>
    `${say(head, 'head', system)} for ${sayMoney(cost, currency)}`;
  const [first, last] = [frontier[0], frontier.at(-1)];
  const ends =
    first === undefined || last === undefined ? '' : ` It runs from ${said(first)} to ${said(last)}.`;
  const chosen = best === null ? '' : ` The best design requires ${said(placeOf(best))}.`;
  return `The least cost of the pipes of ${plainName(loopName)} against the head that they require.${ends}${chosen}`;
}
