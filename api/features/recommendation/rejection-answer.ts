/** Answers why a candidate is rejected, the first reason in figures. */

import type { z } from '@hono/zod-openapi';
import type { CriterionReason, Judgement } from '../../../models/selection/criterion.ts';
import type { Clash } from '../../../models/selection/grid-search.ts';
import type { RejectionCause } from '../../../models/selection/rejection-cause.ts';
import type { Throttle } from '../../../models/selection/throttle.ts';
import { toPointer } from '../../http/json-pointer.ts';
import type { RecordReference } from '../../store/versions.ts';
import type { Quantity } from '../../units/table.ts';
import type { UnitSystem } from '../../units/unit-system.ts';
import { sayAgainst } from '../../wording/against-limit.ts';
import { say, sayNumber } from '../../wording/numbers-in-words.ts';
import { quoted } from '../../wording/quoted.ts';
import type { recommendationSchema } from './answer-schema.ts';
import type { RejectedCandidate } from './job.ts';

export type RejectionAnswer = z.output<ReturnType<typeof recommendationSchema>>['rejected'][number];

export function rejectionAnswer(
  { candidate, outcome: { failing, clash, settings }, cause, throttle }: RejectedCandidate,
  {
    pump,
    count,
    system,
    useOf,
  }: {
    readonly pump: RecordReference<string | null>;
    readonly count: number;
    readonly system: UnitSystem;
    /** What a power [W] of the candidate uses and costs in a year. */
    readonly useOf: (power: number) => Pick<Remedy, 'annualEnergy' | 'annualCost'>;
  },
): RejectionAnswer {
  const first = failing[0];
  const short = failing.find(({ reason }) => reason === 'not-enough-head');
  return {
    candidate,
    pump,
    count,
    reason: first?.reason ?? 'no-setting',
    reasons: failing.length === 0 ? ['no-setting'] : failing.map(({ reason }) => reason),
    detail: `${first === undefined ? clashDetail(clash, settings, system) : criterionDetail(first, system)}${causeWords(cause, system)}${remedyWords(throttle, system)}`,
    shortfall:
      short === undefined || short.outlet === null
        ? null
        : { outlet: short.outlet, setting: short.setting, flow: short.value, requiredFlow: short.limit },
    ...(throttle === null ? {} : { remedy: remedyOf(throttle, useOf) }),
  };
}

type Remedy = NonNullable<RejectionAnswer['remedy']>;

function remedyOf(
  { head, kv, cv, duty: { setting, flow, power } }: Throttle,
  useOf: (power: number) => Pick<Remedy, 'annualEnergy' | 'annualCost'>,
): Remedy {
  return { throttle: { head, kv, cv }, setting, flow, power, ...useOf(power) };
}

function remedyWords(throttle: Throttle | null, system: UnitSystem): string {
  if (throttle === null) return '';
  const { head, kv, duty } = throttle;
  const valve = `A valve of Kv ${sayNumber(kv)} that takes ${say(head, 'head', system)} in the common discharge`;
  return ` ${valve} makes it feasible at setting ${sayNumber(duty.setting)} %, with ${say(duty.flow, 'flow', system)} and ${say(duty.power, 'power', 'metric')}.`;
}

type Detail = (judgement: Figures, system: UnitSystem) => string;

type Figures = Omit<Judgement, 'clearance'>;

const at = ({ setting }: Figures): string => `at ${sayNumber(setting)} %`;

const outletOf = ({ outlet }: Figures): string => `Outlet ${quoted(outlet ?? '')}`;

/** A judged figure and its limit, with the digits that separate them. */
function against({ value, limit }: Figures, quantity: Quantity, system: UnitSystem): [string, string] {
  const said = sayAgainst({ value, stated: limit }, quantity, system);
  return [said.value, said.stated];
}

const DETAILS = {
  'efficiency-impossible': (one) =>
    `The entered points give a wire-to-water efficiency of ${sayNumber(one.value)} ${at(one)}, above ${sayNumber(one.limit)}: no pump does that, so look at the head and power points.`,
  'gravity-suffices': (one, system) =>
    `Without a pump ${say(one.value, 'flow', system)} falls to the outlets, which require ${say(one.limit, 'flow', system)} together: no pump is needed.`,
  'dead-head': () => 'The pump moves no water at any setting.',
  'reverse-flow': (one, system) =>
    `Water runs backwards through outlet ${quoted(one.outlet ?? '')} at every setting, at ${say(one.value, 'flow', system)} ${at(one)}: a check valve in its run would hold it, or \`allowReverseFlow\` accepts it.`,
  'not-enough-head': (one, system) =>
    `${outletOf(one)} receives at most ${against(one, 'flow', system)[0]} ${at(one)}, required ${against(one, 'flow', system)[1]}.`,
  'outside-data': (one, system) =>
    `The duty lies at ${say(one.value, 'flow', system)} a pump brought to full speed, beyond 1.1 times the largest entered flow (${say(one.limit, 'flow', system)}): enter points further out, or allow extrapolation.`,
  'outlet-above-maximum': (one, system) =>
    `${outletOf(one)} receives at least ${against(one, 'flow', system)[0]} ${at(one)}, above its maximum of ${against(one, 'flow', system)[1]}.`,
  'screen-velocity': (one, system) =>
    `Water enters the screen at ${say(one.value, 'velocity', system)} ${at(one)}, above the limit of ${say(one.limit, 'velocity', system)}: a larger screen, or several, would lift that.`,
  'pump-below-minimum': (one, system) =>
    `Each pump runs at ${say(one.value, 'flow', system)} brought to full speed, below its minimum of ${say(one.limit, 'flow', system)}.`,
  'pump-above-maximum': (one, system) =>
    `Each pump runs at ${say(one.value, 'flow', system)} brought to full speed, above its maximum of ${say(one.limit, 'flow', system)}.`,
  npsh: (one, system) => {
    const available = `NPSH available is ${say(one.value, 'head', system)} ${at(one)}`;
    if (one.value <= 0) return `${available}: the water boils before it reaches the pump.`;
    return `${available}, NPSH required ${say(one.limit, 'head', system)}: the pump would cavitate.`;
  },
} as const satisfies Record<CriterionReason, Detail>;

/** Why a criterion holds at no setting, in figures. */
export const criterionDetail = (judgement: Figures, system: UnitSystem): string =>
  DETAILS[judgement.reason](judgement, system);

/** What each criterion asks a setting to give, to say which two cannot be had together. */
const DEMANDS = {
  'gravity-suffices': 'a need for a pump',
  'efficiency-impossible': 'a believable efficiency',
  'dead-head': 'any flow',
  'reverse-flow': 'outlets without backward flow',
  'not-enough-head': 'the required flows',
  'outside-data': 'a duty inside the entered points',
  'outlet-above-maximum': 'outlets below their maximum',
  'screen-velocity': 'a gentle intake screen',
  'pump-below-minimum': "the pump's minimum flow",
  'pump-above-maximum': "a flow below the pump's maximum",
  npsh: 'enough NPSH',
} as const satisfies Record<CriterionReason, string>;

function clashDetail(clash: Clash | null, settings: number, system: UnitSystem): string {
  if (clash === null) return `None of the ${settings} settings meets all conditions.`;
  const [met, broken] = clash;
  const where = `The settings that give ${DEMANDS[met.reason]} do not give ${DEMANDS[broken.reason]}`;
  return `${where}: none of the ${settings} settings gives both. ${criterionDetail(broken, system)}`;
}

/** Why a candidate fails beyond its settings, with a blank before it; empty for null. */
export function causeWords(cause: RejectionCause | null, system: UnitSystem): string {
  switch (cause?.code) {
    case undefined:
      return '';
    case 'shut-valve':
      return ` The valve ${toPointer(cause.path)} of the loop is closed: no water passes to outlet ${quoted(cause.outlet)}.`;
    case 'lift-above-shutoff':
      return ` The lift is more than the pump gives at no flow: the loop needs ${say(cause.lift, 'head', system)} before any water moves, against a shutoff head of ${say(cause.shutoff, 'head', system)} at setting ${sayNumber(cause.setting)} %.`;
    case 'does-not-start':
      return ` From rest the pump does not start the flow: the loop needs ${say(cause.lift, 'head', system)} before any water moves, against a shutoff head of ${say(cause.shutoff, 'head', system)} at setting ${sayNumber(cause.setting)} %, although its drooping curve reaches ${say(cause.summit, 'head', system)} at a flow.`;
    case 'runs-by-itself':
      return ` The loop runs by itself: the water falls ${say(cause.fall, 'head', system)} to its outlets, and a pump only adds to that.`;
  }
}
