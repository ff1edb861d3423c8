/** Cautions about pipes, splits, outlets and their jets. */
import type { CautionRow } from './caution-row.ts';

export const PIPEWORK_CAUTIONS = {
  'outlet-short': {
    severity: 'warning',
    sentence: 'Gets less than its required flow.',
    source: 'requirements as entered',
  },
  'outlet-above-maximum': {
    severity: 'warning',
    sentence: 'Gets more than its maximum flow.',
    source: 'requirements as entered',
  },
  'reverse-flow': {
    severity: 'warning',
    sentence: 'Water runs backwards through an outlet.',
    source: 'network solution',
  },
  'split-loss-missing': {
    severity: 'note',
    sentence: 'A split has neither a tee fitting nor a stated split loss: its loss is left out.',
    source: 'pipework as entered',
  },
  'tee-understated': {
    severity: 'note',
    sentence:
      'A tee fitting carries under half of the combined flow: its fixed K on the branch flow understates the loss; state the split instead.',
    source: 'diverging tees, Crane TP-410 (2009)',
  },
  'pipe-velocity': {
    severity: 'warning',
    sentence: 'Water runs faster than the velocity limit in a pipe.',
    source:
      'limit as stated; 1.5 m/s (5 ft/s) for plastic pipe with fast valves, technical notes of pipe makers',
  },
  'jet-too-far': {
    severity: 'note',
    sentence: 'The stated reach is beyond 70 nozzle diameters, where the jet law is not established.',
    source: 'validity of the free-jet decay law, from memory',
  },
  'jet-laminar': {
    severity: 'note',
    sentence: 'The jet leaves at a Reynolds number below 3000, where the jet law does not hold.',
    source: 'validity of the free-jet decay law, from memory',
  },
  'jet-confined': {
    severity: 'note',
    sentence: "The jet widens to more than half of the tank's width or depth: walls slow it sooner.",
    source: 'validity of the free-jet decay law, from memory',
  },
} as const satisfies Record<string, CautionRow>;
