/** The schedule that the OpenAPI document shows. */

export const SCHEDULE_EXAMPLE = {
  tariff: null,
  phases: [
    { name: 'day', from: '07:00', factor: 1, rampMinutes: 10 },
    { name: 'night', from: '22:00', factor: 0.6 },
  ],
  emergency: { factor: 0.3, batteryEnergy: 1.2 },
};
