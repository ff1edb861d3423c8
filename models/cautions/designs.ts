/** Gives the cautions about what a search of designs leaves out. */
import { type CautionOf, COMMON_PRACTICE, topic } from './topic.ts';

export const DESIGNS = topic({
  'untrimmed-not-searched': {
    severity: 'note',
    text: 'Trim valves bring each outlet to exactly its required flow. Designs without trims were not searched, and may cost less.',
    source: 'class of designs that is searched',
  },
  'fittings-not-priced': {
    severity: 'note',
    text: 'Pipes and trim valves alone are priced. Fittings, supports and work that grow with the size are not counted.',
    source: COMMON_PRACTICE,
  },
});

/** What holds for every design. */
export const designCautions = (): readonly CautionOf<typeof DESIGNS>[] => [
  DESIGNS.give('untrimmed-not-searched'),
  DESIGNS.give('fittings-not-priced'),
];
