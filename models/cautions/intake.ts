/** Gives the cautions about intakes, their screens, and what they can trap. */
import type { ExactDuty } from '../duty/duty-point.ts';
import { coveredIntake } from '../intake/covered-intake.ts';
import { screenVelocities } from '../intake/screen.ts';
import { minimumSubmergence } from '../intake/submergence.ts';
import type { Limits } from '../loop/limits.ts';
import type { Intake, Loop } from '../loop/loop.ts';
import type { CompiledLoop } from '../network/compiled-loop.ts';
import { pumpAtSetting } from '../pump/pump-at-setting.ts';
import type { CriteriaContext } from '../selection/criteria.ts';
import { EQUAL } from '../selection/criterion.ts';
import { INSTALLATION } from './installation.ts';
import { type CautionOf, COMMON_PRACTICE, topic } from './topic.ts';

export const INTAKE = topic({
  'entrapment-animals': {
    severity: 'warning',
    sentence: 'No intake screen is entered: animals can be drawn into the intake.',
    source: COMMON_PRACTICE,
  },
  'entrapment-people': {
    severity: 'danger',
    sentence:
      'A single intake that can be covered may hold a person fast: where people can reach it, suction-entrapment codes apply.',
    source: `${COMMON_PRACTICE}; local suction-entrapment code prevails`,
  },
  'entrapment-several': {
    severity: 'warning',
    sentence:
      'Several screens share the flow: where people can reach them, they must stand so far apart that no body covers all of them; suction-entrapment codes apply.',
    source: `${COMMON_PRACTICE}; local suction-entrapment code prevails`,
  },
  'intake-holds-fast': {
    severity: 'danger',
    sentence:
      'People can reach the only intake: covered, it pulls with the suction head and force stated for no flow. Provide a second intake, or one that cannot be covered.',
    source: `${COMMON_PRACTICE}; local suction-entrapment code prevails`,
  },
  'screen-velocity': {
    severity: 'danger',
    sentence:
      'Water enters the slots of the part-clogged screen faster than the limit: animals may be held against it.',
    source: 'limit as stated, by default 40 CFR 125.84(b)(2)',
  },
  'screen-uneven': {
    severity: 'warning',
    sentence:
      'The screen draws unevenly: its busiest slots are above the velocity limit although the mean is below.',
    source:
      'one-dimensional manifold model of a closed-ended screen; limit as stated, by default 40 CFR 125.84(b)(2)',
  },
  'screen-yardstick': {
    severity: 'note',
    sentence:
      'The through-slot limit of 0.5 ft/s was written for swimming fish; for corals, larvae and other animals it is a borrowed yardstick.',
    source: '40 CFR 125.84(b)(2)',
  },
  'animal-fits-opening': {
    severity: 'warning',
    sentence:
      'The openings of the screen are at least as wide as the smallest animal: it can pass, or stick fast in them.',
    source: COMMON_PRACTICE,
  },
  'animal-not-checked': {
    severity: 'note',
    sentence: 'The width of the openings is not known: whether the smallest animal can pass was not checked.',
    source: COMMON_PRACTICE,
  },
  submergence: {
    severity: 'warning',
    sentence: 'The intake is shallower than the minimum submergence at this flow: it may draw air.',
    source: 'S = D(1 + 2.3 V/sqrt(g D)), Hydraulic Institute intake design, from memory',
  },
});

type IntakeCaution = CautionOf<typeof INTAKE>;

/** The caution about people at intakes that they may reach; `screens` [-] share the flow, 1 for a bare intake. */
export const entrapment = (screens: number): IntakeCaution =>
  INTAKE.give(screens > 1 ? 'entrapment-several' : 'entrapment-people');

/** What the intake of a loop means for people and animals, whatever the pump; no intake entered is a bare one. */
export function intakeCautions(intake: Intake | undefined): readonly IntakeCaution[] {
  return [
    ...(intake?.reachable === false ? [] : [entrapment(intake?.screen?.count ?? 1)]),
    ...(intake?.screen === undefined
      ? [INTAKE.give('entrapment-animals')]
      : openingCautions(intake.screen, intake.smallestAnimal)),
  ];
}

/** Compares slots or holes [m] with the width of the smallest animal [m]; one that just fits is caught by them. */
export function openingCautions(
  { slot, hole }: { readonly slot?: number | undefined; readonly hole?: number | undefined },
  smallestAnimal: number | undefined,
): readonly IntakeCaution[] {
  if (smallestAnimal === undefined) return [];
  const opening = slot ?? hole;
  if (opening === undefined) return [INTAKE.give('animal-not-checked')];
  const width = { value: opening, limit: smallestAnimal, quantity: 'slot' } as const;
  return INTAKE.when(opening >= smallestAnimal, 'animal-fits-opening', [], width);
}

/** How fast the part-clogged screen of a loop draws its flow [m3/s]; nothing where no limit of velocity is asked for. */
export function screenCautions(
  { intake }: Pick<Loop, 'intake'>,
  { throughSlotVelocity: limit, cloggedFraction }: Limits,
  flow: number,
): readonly IntakeCaution[] {
  const screen = intake?.screen;
  if (screen === undefined || limit === null) return [];
  const { mean, peak } = screenVelocities({ screen, flow, cloggedFraction });
  const most = limit * (1 + EQUAL);
  const drawn = (value: number) =>
    ({ pointer: '/intake/screen', value, limit, quantity: 'velocity' }) as const;
  return [
    ...INTAKE.when(mean > most, 'screen-velocity', [], drawn(mean)),
    ...INTAKE.when(mean <= most && peak > most, 'screen-uneven', [], drawn(peak)),
    INTAKE.give('screen-yardstick'),
  ];
}

/** Whether a pump can hold a person at an intake that people are said to reach. */
export function peopleCautions(
  { loop, pump, elevation }: CriteriaContext,
  at: Pick<ExactDuty, 'setting' | 'count'>,
): readonly IntakeCaution[] {
  if (loop.entered.intake?.reachable !== true) return [];
  const covered = coveredIntake(loop, pumpAtSetting(pump, at), { elevation });
  if (covered === null) return [];
  return [
    INTAKE.give('intake-holds-fast', [], {
      pointer: '/intake',
      value: covered.suctionHead,
      quantity: 'head',
    }),
  ];
}

/** Whether a bare intake of known depth may draw air at a flow [m3/s]. */
export function submergenceCautions(
  { entered: { intake }, network }: CompiledLoop,
  flow: number,
): readonly IntakeCaution[] {
  const bore = network?.intakeBore ?? null;
  if (intake?.depth === undefined || intake.screen !== undefined || bore === null) return [];
  const limit = minimumSubmergence({ flow, diameter: bore });
  const depth = { pointer: '/intake/depth', value: intake.depth, limit, quantity: 'depth' } as const;
  return INTAKE.when(intake.depth < limit, 'submergence', [], depth);
}

/**
 * What a screen that was sized for a flow means for animals and people: its count [-], its slots or holes and the
 * smallest animal [m].
 */
export function sizedScreenCautions({
  count,
  smallestAnimal,
  ...openings
}: {
  readonly count: number;
  readonly slot?: number | undefined;
  readonly hole?: number | undefined;
  readonly smallestAnimal?: number | undefined;
}): readonly CautionOf<typeof INTAKE | typeof INSTALLATION>[] {
  return [
    ...openingCautions(openings, smallestAnimal),
    INTAKE.give('screen-yardstick'),
    entrapment(count),
    INSTALLATION.give('estimate'),
  ];
}
