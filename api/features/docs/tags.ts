/** Names the groups of operations in the OpenAPI document. */

export const TAGS = [
  { name: 'intakes-and-leaks', description: 'Screens that animals can leave, and what a leak lets out.' },
  { name: 'loops', description: 'Loops of pipework, or of a measured system curve.' },
  {
    name: 'maintenance',
    description: 'Routine checks of loops and pumps: when they are due, and what they ask of a year.',
  },
  { name: 'money', description: 'What options cost over their life, and which upgrade comes first.' },
  { name: 'pumps', description: 'Pumps as their users enter them.' },
  { name: 'readings', description: 'What was measured on loops, and what it means.' },
  { name: 'recommendations', description: 'Which pump at which setting, and what it costs.' },
  { name: 'reference', description: 'The tables that figures rest on, each row with its source.' },
  { name: 'schedules', description: 'The phases of a day, and what a controller sets now.' },
  { name: 'service', description: 'The service itself: probes and specification.' },
  { name: 'site', description: 'The facility: its name, zone, currency, price and elevation.' },
  { name: 'tariffs', description: 'Prices of electricity by month, day and time of day.' },
] as const;
