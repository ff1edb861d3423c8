/** Gives the cautions about routine checks and whoever does them. */
import { INSTALLATION } from './installation.ts';
import { type CautionOf, COMMON_PRACTICE, topic } from './topic.ts';

export const UPKEEP = topic({
  'isolate-before-service': {
    severity: 'danger',
    sentence:
      'Cut the power of the pump, and close the valves on both its sides, before it is opened or hands go near its intake: it may start by itself, and an intake holds what covers it.',
    source: `${COMMON_PRACTICE}; local code prevails`,
  },
  'upkeep-common-practice': {
    severity: 'note',
    sentence:
      'Intervals, minutes and parts of the starter set are common practice: what the makers of pump, screen and residual-current device state, and local code, come first.',
    source: COMMON_PRACTICE,
  },
  'service-assumed': {
    severity: 'note',
    sentence:
      'The pump states no `service`: its wet end is put down for every six months and 45 minutes, without parts.',
    source: COMMON_PRACTICE,
  },
  'fittings-unknown': {
    severity: 'note',
    sentence:
      'The pipework of the loop is not known: its bulkheads and unions are not in the set, and need their checks all the same.',
    source: 'loop as entered',
  },
});

/** What whoever does works must know: some reach into pump or intake, some are about wiring, some about bulkheads. */
export function workCautions({
  wet,
  wired,
  bulkheads,
}: {
  readonly wet: boolean;
  readonly wired: boolean;
  readonly bulkheads: boolean;
}): readonly CautionOf<typeof UPKEEP | typeof INSTALLATION>[] {
  return [
    ...UPKEEP.when(wet, 'isolate-before-service'),
    ...INSTALLATION.when(wired, 'electricity-near-water'),
    ...INSTALLATION.when(bulkheads, 'bulkheads'),
  ];
}

/** What a starter set rests on besides what was entered. */
export function starterCautions({
  serviceAssumed,
  pipeworkKnown,
}: {
  readonly serviceAssumed: boolean;
  readonly pipeworkKnown: boolean;
}): readonly CautionOf<typeof UPKEEP>[] {
  return [
    UPKEEP.give('upkeep-common-practice'),
    ...UPKEEP.when(serviceAssumed, 'service-assumed'),
    ...UPKEEP.when(!pipeworkKnown, 'fittings-unknown'),
  ];
}
