/** Gives the cautions about how a loop is built and wired, whatever it pumps. */
import { drainBack } from '../hazards/drain-back.ts';
import type { Loop } from '../loop/loop.ts';
import { serviceLacks } from '../loop/serviceability.ts';
import type { CompiledLoop } from '../network/compiled-loop.ts';
import { EQUAL } from '../selection/criterion.ts';
import { type CautionOf, COMMON_PRACTICE, topic } from './topic.ts';

export const INSTALLATION = topic({
  'electricity-near-water': {
    severity: 'warning',
    sentence:
      'Mains electricity beside water: protect the circuit by a residual-current device, follow local code, leave wiring to a licensed electrician.',
    source: `${COMMON_PRACTICE}; local electrical code prevails`,
  },
  estimate: {
    severity: 'note',
    sentence:
      "Estimated from entered points and pipework; the maker's limits, local code and licensed practice come first.",
    source: COMMON_PRACTICE,
  },
  bulkheads: {
    severity: 'note',
    sentence:
      'Drilled walls and bulkheads fail without warning: inspect seals regularly and keep a valve to close each side.',
    source: COMMON_PRACTICE,
  },
  'drain-back': {
    severity: 'warning',
    sentence:
      'When the power fails, water above the basin drains back: check the siphon break, the basin and that the overflow can carry the whole flow.',
    source: COMMON_PRACTICE,
  },
  'basin-floods': {
    severity: 'danger',
    sentence:
      'When the power fails more water drains back than the basin has room for, and it floods: raise the siphon break, or give the basin more freeboard.',
    source: 'tank area x depth of the siphon break and volume of the pipes against basin area x freeboard',
  },
  'overflow-exceeded': {
    severity: 'danger',
    sentence: 'The pump delivers more than the overflow carries: the tank floods.',
    source: 'capacity of the overflow as entered',
  },
  'isolation-missing': {
    severity: 'note',
    sentence: 'No isolation valve is entered on a side of the pump: to service it the loop must be drained.',
    source: COMMON_PRACTICE,
  },
  'union-missing': {
    severity: 'note',
    sentence: 'No union is entered on a side of the pump: to take it out, pipe must be cut.',
    source: COMMON_PRACTICE,
  },
  'bulkhead-union-missing': {
    severity: 'note',
    sentence: 'A bulkhead has no union: to change its seal, pipe must be cut.',
    source: COMMON_PRACTICE,
  },
});

/** What is on the floor when the power fails or a tank runs over, and what cannot be serviced. */
export function buildCautions({
  entered: loop,
  network,
}: CompiledLoop): readonly CautionOf<typeof INSTALLATION>[] {
  const lift = 'systemCurve' in loop ? (loop.systemCurve.staticHead ?? 0) : loop.staticHead;
  const runs = network === null ? [] : [network.suction, ...network.branches.map(({ elements }) => elements)];
  const hasBulkhead = runs.some((elements) => elements.some(({ role }) => role === 'bulkhead'));
  return [
    ...INSTALLATION.when(loop.tank !== undefined || hasBulkhead, 'bulkheads'),
    ...INSTALLATION.when(lift > 0, 'drain-back', [], { value: lift, limit: 0, quantity: 'head' }),
    ...floodCautions(loop),
    ...serviceCautions(loop),
  ];
}

function floodCautions(loop: Loop): readonly CautionOf<typeof INSTALLATION>[] {
  const drained = drainBack(loop);
  if (drained?.floods !== true || drained.room === null) return [];
  const volume = {
    pointer: '/basin',
    value: drained.volume,
    limit: drained.room,
    quantity: 'volume',
  } as const;
  return [INSTALLATION.give('basin-floods', [], volume)];
}

function serviceCautions(loop: Loop): readonly CautionOf<typeof INSTALLATION>[] {
  const lacks = serviceLacks(loop);
  if (lacks === null) return [];
  return [
    ...INSTALLATION.about('isolation-missing', lacks.isolation),
    ...INSTALLATION.about('union-missing', lacks.union),
    ...INSTALLATION.about('bulkhead-union-missing', lacks.bulkheadUnion),
  ];
}

/** Whether a flow [m3/s] is more than the overflow of the tank carries; nothing where its capacity is not entered. */
export function overflowCautions(
  { overflowCapacity = Number.POSITIVE_INFINITY }: Pick<Loop, 'overflowCapacity'>,
  flow: number,
): readonly CautionOf<typeof INSTALLATION>[] {
  const carried = {
    pointer: '/overflowCapacity',
    value: flow,
    limit: overflowCapacity,
    quantity: 'flow',
  } as const;
  return INSTALLATION.when(flow > overflowCapacity * (1 + EQUAL), 'overflow-exceeded', [], carried);
}

/** What holds of every leak. */
export const leakCautions = (): readonly CautionOf<typeof INSTALLATION>[] => [
  INSTALLATION.give('electricity-near-water'),
  INSTALLATION.give('bulkheads'),
  INSTALLATION.give('estimate'),
];
