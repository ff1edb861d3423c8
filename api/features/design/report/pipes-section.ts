/** Lists the chosen sizes, the trims and what other sizes would change, in the report of a design. */
import { type Markup, markup } from '../../../drawing/markup/markup.ts';
import { money } from '../../../drawing/money.ts';
import { table } from '../../../drawing/table.ts';
import type { UnitSystem } from '../../../units/unit-system.ts';
import { say, sayNumber } from '../../../wording/numbers-in-words.ts';
import type { DesignAnswer } from '../answer-schema.ts';
import { pipeWords } from '../pipe-words.ts';

const SHOWN_MOST = 60;
const NONE = '\u2013';

const RUNS = [
  { name: 'Place' },
  { name: 'Pipe' },
  { name: 'Length', isFigure: true },
  { name: 'Velocity', isFigure: true },
  { name: 'Head lost', isFigure: true },
  { name: 'Cost', isFigure: true },
] as const;

const TRIMS = [
  { name: 'Place' },
  { name: 'Head taken', isFigure: true },
  { name: 'K', isFigure: true },
  { name: 'Kv', isFigure: true },
] as const;

const CHANGES = [
  { name: 'Place' },
  { name: 'Pipe' },
  { name: 'More for pipes', isFigure: true },
  { name: 'Less for pump and energy', isFigure: true },
  { name: 'Whole cost', isFigure: true },
] as const;

const orNone = (figure: number | null): string => (figure === null ? NONE : sayNumber(figure));

/** Null without a design. */
export function pipesSection(
  { best, assumptions: { currency } }: DesignAnswer,
  system: UnitSystem,
): Markup | null {
  if (best === null) return null;
  const sum = (amount: number | undefined) => (amount === undefined ? NONE : money(amount, currency));
  const runs = best.runs
    .slice(0, SHOWN_MOST)
    .map(({ pointer, pipe, length, velocity, head, cost }) => [
      pointer,
      pipeWords(pipe, system),
      say(length, 'length', system),
      say(velocity, 'velocity', system),
      say(head, 'head', system),
      sum(cost),
    ]);
  const trims = best.trims
    .slice(0, SHOWN_MOST)
    .map(({ pointer, head, lossCoefficient, kv }) => [
      pointer,
      head === null ? 'closed' : say(head, 'head', system),
      orNone(lossCoefficient),
      orNone(kv),
    ]);
  const changes = best.sizeChanges
    .slice(0, SHOWN_MOST)
    .map(({ pointer, pipe, cost, saving, presentValue }) => [
      pointer,
      pipeWords(pipe, system),
      sum(cost),
      sum(saving),
      presentValue === undefined ? 'no pump gives the head' : sum(presentValue),
    ]);
  const listed = [
    listOf('Chosen sizes', RUNS, runs),
    listOf('Trims, Kv in m3/h at 1 bar', TRIMS, trims),
    listOf('The next size of one pipe, the others kept', CHANGES, changes),
  ];
  const more = [best.runs, best.trims, best.sizeChanges].some(({ length }) => length > SHOWN_MOST);
  const rest = more ? markup`<p>No more than ${SHOWN_MOST} rows of each are shown.</p>` : null;
  return markup`<section><h2>Pipes</h2>${listed}${rest}</section>`;
}

const listOf = (
  caption: string,
  columns: Parameters<typeof table>[1],
  rows: Parameters<typeof table>[2],
): Markup | null => (rows.length === 0 ? null : table(caption, columns, rows));
