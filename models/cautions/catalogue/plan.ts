/** Cautions about plans of upgrades and sums over a site. */
import { type CautionRow, COMMON_PRACTICE } from './caution-row.ts';

export const PLAN_CAUTIONS = {
  'plan-as-stated': {
    severity: 'note',
    sentence:
      'The plan takes costs, savings and lives as stated and as certain, and each saving as independent of what else is done: two upgrades of one loop belong in one group.',
    source: COMMON_PRACTICE,
  },
  'plan-outlives-upgrade': {
    severity: 'note',
    sentence:
      'The life of an upgrade ends before the plan does, and its saving is counted on: what replaces it then is not in the plan.',
    source: 'lives as entered',
  },
  'plan-not-proven': {
    severity: 'warning',
    sentence:
      'The time for the search ended before the plan was proven best: `gap` states by how much, at most, a better one could exceed it.',
    source: 'branch-and-bound search with a time limit',
  },
} as const satisfies Record<string, CautionRow>;
