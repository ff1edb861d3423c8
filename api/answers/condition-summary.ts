/** The condition of a loop in a few plain sentences. */
import { type Assessed, ofNow } from '../../models/condition/assess-series.ts';
import type { Condition } from '../../models/condition/condition.ts';
import type { Shortfall } from '../../models/condition/shortfall.ts';
import { flowOf, type Verdict } from '../../models/condition/verdict.ts';
import { sayNumber } from './say.ts';

const VERDICT_WORDS = {
  'not-enough-readings':
    'There are not enough readings to judge by: at least three of flow or power while the pump runs are needed.',
  'meter-doubtful': 'The readings do not fit together: a meter, or the unit it was read in, is doubtful',
  'draws-more-than-its-curve':
    'The pump draws more than its curve says, without moving more: look for a fouled impeller or a worn bearing.',
  'clogged-intake': 'The intake side is clogged: clean the screen and the suction.',
  'clogged-discharge': 'The discharge side is clogged or throttled: look at valves, nozzles and pipes.',
  'worn-pump': 'The pump gives less head than its curve at the flow that was measured: it is worn.',
  clogged:
    'More resists the flow than the data say, as when intake or discharge clog: clean the screen first, then look further.',
  'less-flow': 'Less flows than the data say, and the readings do not tell why.',
  'entries-doubtful':
    'More flows, or less is drawn, than a fault could explain: check the entries, and calibrate.',
  'as-expected': 'The loop does as its data say.',
} as const satisfies Record<Verdict, string>;

const SLIP_WORDS = {
  'gallons-and-litres': ' It looks like gallons read as litres, or the other way round.',
  'hours-and-minutes': ' It looks like a flow by the minute read as one by the hour, or the other way round.',
  'watts-and-kilowatts': ' It looks like watts read as kilowatts, or the other way round.',
  'feet-and-metres': ' It looks like a head in feet read as metres, or the other way round.',
  'kilopascals-and-metres':
    ' It looks like a pressure in kPa read as a head in metres, or the other way round.',
  'apparent-power': ' It looks like apparent power (VA), not the power that is drawn (W).',
} as const;

const percent = (share: number): string => `${sayNumber(Math.abs(100 * share), 2)} %`;

/** Less than no meter shows is not told as a difference. */
const TOLD_LEAST = 0.001;

function said(name: string, residual: number | undefined): readonly string[] {
  if (residual === undefined) return [];
  if (Math.abs(residual) < TOLD_LEAST) return [`${name} is within ${percent(TOLD_LEAST)} of`];
  return [`${name} is ${percent(residual)} ${residual < 0 ? 'below' : 'above'}`];
}

export const dateOf = (instant: number): string => new Date(instant).toISOString().slice(0, 10);

function shortWords({ outlet, at }: Shortfall, flow: Assessed | null): string {
  const isPast = at <= (flow?.points.at(-1)?.time ?? 0);
  return isPast
    ? ` "${outlet}" has been short of its required flow since about ${dateOf(at)}.`
    : ` As it goes, "${outlet}" falls short of its required flow about ${dateOf(at)}.`;
}

/** `name` is that of the loop. */
export function conditionSummary(
  { verdict, slip, assessed, shortfall, waiting }: Condition,
  { name, currency }: { readonly name: string; readonly currency: string },
): string {
  const now = ofNow(assessed);
  const flow = flowOf(now);
  const power = now.find(({ measure }) => measure === 'power');
  const levels = [...said('flow', flow?.residual), ...said('power', power?.residual)].join(', ');
  const found = levels === '' ? '' : ` Now ${levels} what the data give.`;
  const likely =
    slip === null ? '' : ` (${slip.meter}).${slip.likely === null ? '' : SLIP_WORDS[slip.likely]}`;
  const short = shortfall === null ? '' : shortWords(shortfall, flow);
  const cleaning = waiting?.cleaning;
  const cost =
    waiting === null || cleaning === null || cleaning === undefined
      ? ''
      : ` Waiting another year costs ${sayNumber(waiting.costOfAYear)} ${currency}; a cleaning for ${sayNumber(cleaning.cost)} ${currency} is cheapest every ${sayNumber(12 * cleaning.everyYears, 2)} months.`;
  return `${name}: ${VERDICT_WORDS[verdict]}${likely}${found}${short}${cost}`;
}
