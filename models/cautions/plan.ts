/** Gives the cautions about plans of upgrades and sums over a site. */
import { INSTALLATION } from './installation.ts';
import { type CautionOf, COMMON_PRACTICE, topic } from './topic.ts';

export const PLAN = topic({
  'plan-as-stated': {
    severity: 'note',
    text: 'The plan takes costs, savings and lives as certain, and each saving as independent of other upgrades. Put two upgrades of one loop into one group.',
    source: COMMON_PRACTICE,
  },
  'plan-outlives-upgrade': {
    severity: 'warning',
    text: 'The life of an upgrade ends before the plan does, and its saving is still counted. Its replacement is not in the plan.',
    source: 'lives as entered',
  },
  'plan-not-proven': {
    severity: 'warning',
    text: 'The time for the search ended before the plan was proven best. `optimalityGap` states by how much, at most, a better plan could exceed it.',
    source: 'branch-and-bound search with a time limit',
  },
  'site-as-stated': {
    severity: 'note',
    text: 'The sums take each loop at its installed pump and setting all year, or by its schedule. A pump that is set otherwise uses a different amount.',
    source: 'loops and schedules as entered',
  },
  'savings-before-check': {
    severity: 'note',
    text: 'A saving takes one pump in place of those installed, without pipework, labour or a spare. Compare life-cycle costs and check the cautions before you buy it.',
    source: COMMON_PRACTICE,
  },
  'outlets-below-required': {
    severity: 'warning',
    text: 'Outlets receive less than their required flow. Check these loops first.',
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
  ...PLAN.about('outlets-below-required', shortLoops),
  ...PLAN.when(offersPumps, 'savings-before-check'),
  PLAN.give('site-as-stated'),
  INSTALLATION.give('estimate'),
];
