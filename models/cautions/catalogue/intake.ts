/** Cautions about intakes, their screens and what they may hold fast. */
import { type CautionRow, COMMON_PRACTICE } from './caution-row.ts';

export const INTAKE_CAUTIONS = {
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
} as const satisfies Record<string, CautionRow>;
