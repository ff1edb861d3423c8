/** Gives the cautions about plans of upgrades and sums over a site. */
import { INSTALLATION } from './installation.ts';
import { type CautionOf, COMMON_PRACTICE, topic } from './topic.ts';

export const PLAN = topic({
  'plan-as-stated': {
    severity: 'note',
    sentence:
      'The plan takes costs, savings and lives as stated and as certain, and each saving as independent of what else is done: two upgrades of one loop belong in one group.',
    source: COMMON_PRACTICE,
  },
  'plan-outlives-upgrade': {
    severity: 'warning',
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
  'site-as-stated': {
    severity: 'note',
    sentence:
      'The sums take each loop at the setting and pump that are stored as installed, all year long, or by its schedule: a pump that is set otherwise uses otherwise.',
    source: 'loops and schedules as entered',
  },
  'savings-before-check': {
    severity: 'note',
    sentence:
      'A saving takes the pump as it stands, one in place of those installed, without pipework, labour or a spare: compare it by its life-cycle cost, and look at its cautions, before it is bought.',
    source: COMMON_PRACTICE,
  },
  'outlets-short': {
    severity: 'warning',
    sentence: 'Outlets get less than their required flow: look at these loops first.',
    source: 'requirements as entered',
  },
});

/** `outlived`: names of the upgrades whose life ends before the plan does. */
export const planCautions = ({
  outlived,
  isProven,
}: {
  readonly outlived: readonly string[];
  readonly isProven: boolean;
}): readonly CautionOf<typeof PLAN>[] => [
  PLAN.give('plan-as-stated'),
  ...PLAN.about('plan-outlives-upgrade', outlived),
  ...PLAN.when(!isProven, 'plan-not-proven'),
];

/** `shortLoops`: names of the loops with an outlet below its required flow; `offersPumps` where a saving takes another pump. */
export const siteCautions = ({
  shortLoops,
  offersPumps,
}: {
  readonly shortLoops: readonly string[];
  readonly offersPumps: boolean;
}): readonly CautionOf<typeof PLAN | typeof INSTALLATION>[] => [
  ...PLAN.about('outlets-short', shortLoops),
  ...PLAN.when(offersPumps, 'savings-before-check'),
  PLAN.give('site-as-stated'),
  INSTALLATION.give('estimate'),
];
