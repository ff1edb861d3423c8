/** Puts the condition of a loop into a few plain sentences. */
import type { Assessed } from '../../../models/condition/assess-series.ts';
import type { Condition } from '../../../models/condition/condition.ts';
import { ofNow } from '../../../models/condition/current-series.ts';
import type { MeterSlip } from '../../../models/condition/meter-error.ts';
import type { Shortfall } from '../../../models/condition/shortfall.ts';
import { flowOf, type Verdict } from '../../../models/condition/verdict.ts';
import { sayNumber } from '../../wording/numbers-in-words.ts';

const VERDICT_WORDS = {
  'not-enough-readings':
    'There are not enough readings to judge by: at least three that state a flow or a power while the pump runs are needed.',
  'meter-doubtful': 'The readings do not fit together: a meter, or the unit it was read in, is doubtful',
  'pump-stopped': 'Flow and power are as if a pump stood still',
  'draws-more-than-its-curve':
    'The pump draws more than its curve says, without moving more: look for a fouled impeller or a worn bearing.',
  'clogged-intake': 'The intake side is clogged: clean the screen and the suction.',
  'clogged-discharge': 'The discharge side is clogged or throttled: look at valves, nozzles and pipes.',
  'worn-pump': 'The pump gives less head than its curve at the flow that was measured: it is worn.',
  'clogged-branch':
    'Less comes out at some outlets alone: look at their branch, its valves and nozzles, and at the meter there',
  clogged:
    'Flow and power are down, as when intake or discharge clog, and as when a pump wears: clean the screen first; pressures before and behind the pump show which it is.',
  'less-flow': 'The flow is less than predicted, and the readings do not show why.',
  'entries-doubtful':
    'Flow, power, head or pressures stand where no fault puts them: check the entries and the meters, and calibrate.',
  'as-expected': 'No fault shows: what was measured is within the thresholds of its data.',
} as const satisfies Record<Verdict, string>;

const ALSO_WORDS: Partial<Record<Verdict, string>> = {
  'clogged-intake': ' Pressures show a clogged intake besides: clean the screen too.',
  'clogged-discharge': ' Pressures show a clogged discharge besides: look at valves and nozzles too.',
  'worn-pump': ' It gives less head than its curve besides: it is worn.',
};

const SLIP_WORDS = {
  'gallons-and-litres': ' It looks like gallons read as litres, or the other way round.',
  'hours-and-minutes': ' It looks like a flow by the minute read as one by the hour, or the other way round.',
  'watts-and-kilowatts': ' It looks like watts read as kilowatts, or the other way round.',
  'feet-and-metres': ' It looks like a head in feet read as metres, or the other way round.',
  'kilopascals-and-metres':
    ' It looks like kPa read as metres of water, or mbar as kPa, or the other way round.',
  'psi-and-kilopascals': ' It looks like psi read as kPa, or the other way round.',
  'psi-and-metres': ' It looks like psi read as metres of water, or the other way round.',
  'apparent-power': ' It looks like apparent power (VA), not the power that is drawn (W).',
} as const satisfies Record<NonNullable<MeterSlip['likely']>, string>;

/** Of a slip that no known factor explains. */
const ELSE_WORDS =
  ' If the meters are right, pipework and pump are both other than entered: check the entries, and calibrate.';

const percent = (share: number): string => `${sayNumber(Math.abs(100 * share), 2)} %`;

/** Less than any meter shows is not stated as a difference. */
const STATED_LEAST = 0.001;
/** Heads and pressures are stated besides flow and power where their residual is larger. */
const STATED_TOO_LEAST = 0.05;

const NAMES: Readonly<Record<Assessed['measure'], string>> = {
  flow: 'flow',
  outletFlow: 'flow',
  power: 'power',
  head: 'head',
  suctionPressure: 'suction pressure',
  dischargePressure: 'discharge pressure',
};

function said({ measure, residual }: Assessed): string {
  const name = NAMES[measure];
  if (Math.abs(residual) < STATED_LEAST) return `${name} is within ${percent(STATED_LEAST)} of`;
  const ofHead = measure.endsWith('Pressure') ? ' of the head' : '';
  return `${name} is ${percent(residual)}${ofHead} ${residual < 0 ? 'below' : 'above'}`;
}

export const dateOf = (instant: number): string => new Date(instant).toISOString().slice(0, 10);

/** What was last measured, in a clause. */
function levelWords(now: readonly Assessed[]): string {
  const [flow, power] = [flowOf(now), now.find(({ measure }) => measure === 'power')];
  const others = now.filter(
    ({ measure, residual }) =>
      (measure === 'head' || measure.endsWith('Pressure')) && Math.abs(residual) > STATED_TOO_LEAST,
  );
  const levels = [flow, power, ...others].flatMap((one) => (one === null || one === undefined ? [] : [one]));
  return levels.length === 0 ? '' : ` Now ${levels.map(said).join(', ')} what the data give.`;
}

function placeWords({ slip, places, running, also }: Condition): string {
  if (slip !== null) return ` (${slip.meter}).${slip.likely === null ? ELSE_WORDS : SLIP_WORDS[slip.likely]}`;
  if (places.length > 0) return ` (${places.join(', ')}).`;
  if (running !== null) return `: about ${running} of them run.`;
  return also === null ? '' : (ALSO_WORDS[also] ?? '');
}

function shortWords({ outlet, at }: Shortfall, now: readonly Assessed[]): string {
  const firstOf = ({ points }: Assessed) => points[0]?.time ?? 0;
  const lastOf = ({ points }: Assessed) => points.at(-1)?.time ?? 0;
  if (at > Math.max(...now.map(lastOf))) {
    return ` As it goes, "${outlet}" falls short of its required flow about ${dateOf(at)}.`;
  }
  const since = now.some((one) => firstOf(one) === at) ? 'the first reading on' : `about ${dateOf(at)}`;
  return ` "${outlet}" has been short of its required flow since ${since}.`;
}

function waitingWords({ waiting, remedy }: Condition, currency: string): string {
  const best = waiting?.cleaning;
  if (waiting === null || best === null || best === undefined) return '';
  const every = `${sayNumber(12 * best.everyYears, 2)} months`;
  const interval = best.endsAtShortfall
    ? `is needed every ${every}, before an outlet falls short`
    : `is cheapest every ${every}`;
  return ` Waiting another year costs ${sayNumber(waiting.costOfAYear)} ${currency}; a ${remedy} for ${sayNumber(best.cost)} ${currency} ${interval}.`;
}

/** `name` is that of the loop. */
export function conditionSentence(
  condition: Condition,
  { name, currency }: { readonly name: string; readonly currency: string },
): string {
  const { verdict, assessed, shortfall } = condition;
  const now = ofNow(assessed);
  const short = shortfall === null ? '' : shortWords(shortfall, now);
  const found = `${VERDICT_WORDS[verdict]}${placeWords(condition)}`;
  return `${name}: ${found}${levelWords(now)}${short}${waitingWords(condition, currency)}`;
}
