/** Gives the cautions about loops that need no pump. */
import type { Gravity } from '../selection/gravity.ts';
import { type CautionOf, topic } from './topic.ts';

export const GRAVITY = topic({
  'gravity-suffices': {
    severity: 'note',
    sentence:
      'The water falls to its outlets and serves all of them without a pump: a pump only adds to that.',
    source: 'flow at which the loop needs no head',
  },
});

/** `gravity`: what runs without a pump where that serves every outlet, else null. */
export const gravityCautions = (gravity: Gravity | null): readonly CautionOf<typeof GRAVITY>[] =>
  gravity === null
    ? []
    : [
        GRAVITY.give('gravity-suffices', [], {
          value: gravity.flow,
          limit: gravity.required,
          quantity: 'flow',
        }),
      ];
