/** Puts a setpoint into a few plain sentences. */
import type { OutletFigures } from '../../../models/network/margins.ts';
import type { Infeasible } from '../../../models/schedule/phase-duty.ts';
import { isOfAnimals } from '../../../models/schedule/upper-limits.ts';
import type { UnitSystem } from '../../units/unit-system.ts';
import { sayAgainst, saySignedPercent } from '../../wording/against-limit.ts';
import { sayNumber } from '../../wording/numbers-in-words.ts';

/** What the sentences of an infeasible setpoint are made of. */
export interface InfeasibleFacts {
  readonly infeasible: Infeasible;
  /** What is set now [% of full]. */
  readonly setting: number;
  /** Where a ramp leads [% of full]. */
  readonly end: number;
  /** Null without a schedule. */
  readonly phase: string | null;
  readonly movesVolume: boolean;
  readonly outlets: readonly Pick<OutletFigures, 'name' | 'flow' | 'requiredFlow' | 'margin'>[];
}

/** What the highest setting stays within, by the reason of the limit. */
const WITHIN: Readonly<Record<string, string>> = {
  'outlet-above-maximum': 'the maximum flow of an outlet or volume',
  'screen-velocity': 'the screen limit',
  'reverse-flow': 'the limit on reverse flow',
  'pump-above-maximum': "the pump's maximum flow",
  npsh: "the pump's NPSH",
};

/** What is against a setting that gives the required flows within all upper limits. */
const AGAINST: Readonly<Record<string, string>> = {
  'efficiency-impossible': 'The entered heads and powers give an efficiency that no pump has. Check them.',
  'outside-data': 'The flow is beyond the entered points of the pump. Enter more points.',
  'pump-below-minimum': "The flow is below the pump's minimum.",
  'gravity-suffices': 'Gravity alone gives the required flows.',
};

/** The last step of the rule that keeps the limits of the pump. */
const WITHIN_PUMP_LAST = 2;
const PUMP_LIMITS_BROKEN = ' The pump runs outside its limits.';

/** `Set 70 % until 22:00 (phase "day").` */
export function feasibleWords(
  setting: number,
  { until, phase }: { readonly until: string; readonly phase: string | null },
): string {
  return `Set ${sayNumber(setting)} % until ${until}${phase === null ? '' : ` (phase "${phase}")`}.`;
}

/** `No setting is feasible in phase "day". Set 83 %, the highest within the screen limit. Outlet ...` */
export function infeasibleWords(facts: InfeasibleFacts, system: UnitSystem): string {
  const { infeasible, setting, end, phase, movesVolume } = facts;
  const named = phase === null ? '' : ` in phase "${phase}"`;
  const none = movesVolume
    ? `No setting moves the volume${named} in time.`
    : `No setting is feasible${named}.`;
  const way = setting === end ? '' : `, on the way to ${sayNumber(end)} %`;
  const outlet = outletWords(facts, system);
  return `${none} Set ${sayNumber(setting)} %${way}, ${choiceWords(infeasible)}${outlet}`;
}

function choiceWords({ step, choice, limitedBy, reason }: Infeasible): string {
  const isPastPump = step > WITHIN_PUMP_LAST;
  const ofPump = isPastPump ? PUMP_LIMITS_BROKEN : '';
  switch (choice) {
    case 'lowest-served':
      return `the lowest that gives the required flows.${ofPump}${step === 1 ? againstWords(reason) : ''}`;
    case 'highest-within':
      return `${highestWords(limitedBy.filter((one) => !isPastPump || isOfAnimals({ reason: one })))}.${ofPump}`;
    case 'lowest-moving':
      return 'the lowest that moves water. No setting keeps the limits that protect the animals.';
    case 'lowest':
      return 'the lowest. No setting moves water.';
  }
}

const againstWords = (reason: Infeasible['reason']): string => {
  const words = AGAINST[reason];
  return words === undefined ? '' : ` ${words}`;
};

function highestWords(limitedBy: Infeasible['limitedBy']): string {
  const within = limitedBy.flatMap((reason) => WITHIN[reason] ?? []);
  return within.length === 0 ? 'the highest setting' : `the highest within ${within.join(' and ')}`;
}

/** The outlet with the smallest margin, where that is below required. */
function outletWords({ outlets }: InfeasibleFacts, system: UnitSystem): string {
  const least = outlets
    .filter(({ margin }) => margin !== null && margin < 0)
    .toSorted((a, b) => (a.margin ?? 0) - (b.margin ?? 0))[0];
  if (least === undefined || least.requiredFlow === null || least.margin === null) return '';
  const { name, flow: value, requiredFlow: stated, margin } = least;
  const said = sayAgainst({ value, stated }, 'flow', system);
  return ` Outlet "${name}" receives ${said.value}, required ${said.stated} (${saySignedPercent(margin)}).`;
}
