/** Names the five groups of operations in the OpenAPI document, in the order of their use. */

export const TAGS = [
  {
    name: 'Choose',
    description: 'Choose a pump and its setting: recommendations, duty points, loops and pumps.',
  },
  {
    name: 'Run',
    description:
      'Run pumps: schedules, setpoints and tariffs. Find faults: readings, condition and calibration.',
  },
  {
    name: 'Keep',
    description: 'Keep pumps and pipework in order: tasks, their completions, and a calendar.',
  },
  {
    name: 'Invest',
    description:
      'Decide on money: comparisons, upgrade plans, bills of materials, spares, and the summary of the site.',
  },
  {
    name: 'Reference and site',
    description: 'Reference tables, intake screens, leaks, the site with its export and import, and probes.',
  },
] as const;
