/** Cautions about the pump, its curves and its suction. */
import { type CautionRow, COMMON_PRACTICE } from './caution-row.ts';

export const PUMP_CAUTIONS = {
  'dead-head': {
    severity: 'danger',
    sentence: 'The pump moves no water at this setting: it would run against a closed column and overheat.',
    source: COMMON_PRACTICE,
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
  'suction-boils': {
    severity: 'danger',
    sentence:
      'The lift and the losses before the pump leave no pressure above that at which the water boils: no pump can draw it. Set the pump lower, or widen and shorten its suction.',
    source: 'NPSH available of 0 or below',
  },
  'submerged-above-surface': {
    severity: 'warning',
    sentence:
      'The pump is entered as submerged, but its centreline above the surface that it draws from: one of the two is wrong.',
    source: 'pump and loop as entered',
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
  'head-points-disagree': {
    severity: 'warning',
    sentence:
      'The head points lie far from any curve through them: one may be mistyped, or was taken at another speed than its setting says.',
    source:
      'root mean square of the residuals above 3 % of the largest head; published tables are met within 0.5 %',
  },
  'head-below-zero': {
    severity: 'note',
    sentence:
      'The fitted head falls below zero before the largest entered flow: nothing told of the pump holds out there.',
    source: 'rule of the head-curve fit',
  },
  'power-points-disagree': {
    severity: 'warning',
    sentence:
      'The power points lie far from the law fitted to them: one may be mistyped, or was taken at another speed than its setting says.',
    source: 'root mean square of entered over fitted power, standby apart, above 10 %',
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
} as const satisfies Record<string, CautionRow>;
