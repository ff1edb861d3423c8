/** Every caution that an answer can carry: how grave, in what words, on whose authority. */

export type Severity = 'note' | 'warning' | 'danger';

interface CautionRow {
  readonly severity: Severity;
  readonly sentence: string;
  readonly source: string;
}

const COMMON_PRACTICE = 'common practice';

export const CAUTIONS = {
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
      'Drilled walls and bulkheads fail without warning: inspect seals regularly and keep a way to shut off each side.',
    source: COMMON_PRACTICE,
  },
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
  'intake-holds-fast': {
    severity: 'danger',
    sentence:
      'People can reach the only intake: covered, it pulls with the suction head and force stated for no flow. Provide a second intake, or one that cannot be covered.',
    source: `${COMMON_PRACTICE}; local suction-entrapment code prevails`,
  },
  submergence: {
    severity: 'warning',
    sentence: 'The intake is shallower than the minimum submergence at this flow: it may draw air.',
    source: 'S = D(1 + 2.3 V/sqrt(g D)), Hydraulic Institute intake design, from memory',
  },
  'dead-head': {
    severity: 'danger',
    sentence: 'The pump moves no water at this setting: it would run against a closed column and overheat.',
    source: COMMON_PRACTICE,
  },
  cavitation: {
    severity: 'danger',
    sentence: 'NPSH available is below NPSH required: the pump will cavitate.',
    source: 'definition of NPSH required',
  },
  'npsh-margin': {
    severity: 'warning',
    sentence: 'NPSH available is less than 1.3 times NPSH required.',
    source: 'margin ratio 1.3 as in Crane TP-410 (2009) Example 7-32; ANSI/HI 9.6.1 from memory',
  },
  'npsh-not-checked': {
    severity: 'note',
    sentence: 'The pump has no NPSH points: cavitation was not checked.',
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
  extrapolated: {
    severity: 'warning',
    sentence:
      'The duty lies beyond the largest entered flow: the head curve is a straight continuation there.',
    source: 'rule of the head-curve fit',
  },
  'low-speed': {
    severity: 'warning',
    sentence:
      'Below half speed without an entered point there: the affinity laws overstate what small pumps do at low speed.',
    source: COMMON_PRACTICE,
  },
  'off-grid': {
    severity: 'note',
    sentence: "The setting is not one of the controller's steps.",
    source: 'settings as entered',
  },
  'power-exponent': {
    severity: 'warning',
    sentence:
      'The power points follow an exponent of speed outside 2.5 to 3.3: standby power may be missing, or the setting is not the speed.',
    source: 'affinity laws',
  },
  'power-exponent-assumed': {
    severity: 'note',
    sentence: 'Power is entered at one speed only: the cube law was assumed for the others.',
    source: 'affinity laws',
  },
  'pump-flow-limits': {
    severity: 'warning',
    sentence: 'The duty lies outside the flow limits entered for the pump.',
    source: 'flow limits as entered',
  },
  'off-preferred-region': {
    severity: 'warning',
    sentence:
      'The duty lies outside 70 to 120 % of the best-efficiency flow at this speed: the pump wears sooner and wastes power there.',
    source: 'preferred operating region, ANSI/HI 9.6.3, as trade articles give it',
  },
  'does-not-start': {
    severity: 'danger',
    sentence:
      'From rest the pump does not lift the water although it would keep a flow going: its head at no flow is below what the loop needs.',
    source: 'crossings of a drooping pump curve with the system curve',
  },
  'several-duties': {
    severity: 'warning',
    sentence:
      'The drooping pump curve crosses the system curve more than once: the duty told is that reached from rest, and a disturbance can move the pump to another.',
    source: 'crossings of a drooping pump curve with the system curve',
  },
  'check-valves-assumed': {
    severity: 'note',
    sentence:
      'Each parallel pump is taken to have a check valve; without one, water runs back through a pump that stands still.',
    source: COMMON_PRACTICE,
  },
  'idle-pump-backflow': {
    severity: 'warning',
    sentence:
      'Without check valves water runs back through a parallel pump that stands still, turns it backwards, and may break it at the next start.',
    source: COMMON_PRACTICE,
  },
  'screen-velocity': {
    severity: 'danger',
    sentence:
      'Water enters the slots of the part-clogged screen faster than the limit: animals may be held against it.',
    source: 'limit as stated, by default 40 CFR 125.84(b)(2)',
  },
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
  'phase-infeasible': {
    severity: 'danger',
    sentence:
      "No setting serves this phase: the highest setting inside the pump's own limits is told, and it does not give what is required.",
    source: 'requirements as entered',
  },
  'battery-as-stated': {
    severity: 'note',
    sentence:
      'The hours on a battery take its stated energy as what reaches the pump: age, cold and the inverter take their part.',
    source: COMMON_PRACTICE,
  },
  'time-mean-price': {
    severity: 'note',
    sentence:
      'Costs take the time-mean price of the tariff over the year: the hours of the day at which the pump runs are not known here; a schedule tells them.',
    source: 'tariff as entered',
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

export type CautionCode = keyof typeof CAUTIONS;

/** The catalogue as rows, in its order. */
export const CAUTION_TABLE = Object.entries<CautionRow>(CAUTIONS).map(([code, row]) => ({ code, ...row }));

export interface Caution {
  readonly code: CautionCode;
  readonly severity: Severity;
  /** The sentence of the catalogue, and what it is about here. */
  readonly detail: string;
  readonly source: string;
}

/** A caution of the catalogue, about the named things where there are any. */
export function caution(code: CautionCode, subjects: readonly string[] = []): Caution {
  const { severity, sentence, source } = CAUTIONS[code];
  const about = subjects.length === 0 ? '' : ` (${subjects.join(', ')})`;
  return { code, severity, detail: `${sentence}${about}`, source };
}
