/** The tariff that the OpenAPI document shows. */

export const TARIFF_EXAMPLE = {
  name: 'Winter peak',
  holidays: ['2026-12-25'],
  periods: [
    {
      name: 'peak',
      price: 0.32,
      months: [1, 2, 11, 12],
      days: ['mon', 'tue', 'wed', 'thu', 'fri'],
      from: '17:00',
      to: '21:00',
    },
    { name: 'night', price: 0.11, from: '23:00', to: '06:00' },
  ],
  otherwise: { name: 'base', price: 0.15 },
  standingChargePerDay: 0.4,
};
