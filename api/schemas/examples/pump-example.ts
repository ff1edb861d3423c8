/** The pump that the OpenAPI document shows. */

export const PUMP_EXAMPLE = {
  name: 'Canister 250',
  ratedSpeed: 3000,
  headPoints: [
    { flow: 0, head: 5.1 },
    { flow: 6000, head: 4.5 },
    { flow: 10500, head: 3.3, setting: 100 },
    { flow: 14000, head: 1.9 },
  ],
  powerPoints: [
    { setting: 100, power: 245, flow: 9000 },
    { setting: 60, power: 55 },
  ],
  settings: { min: 30, max: 100, step: 1 },
  standbyPower: 3,
  npshPoints: [{ flow: 9000, head: 1.2 }],
  flowLimits: { min: 1500, max: 14000 },
  grade: '2B',
  mounting: 'dry',
  motorEfficiency: 0.8,
  price: 780,
  expectedLifeYears: 8,
  failures: { count: 2, devices: 10, years: 3 },
  service: { everyMonths: 6, minutes: 45, parts: 20 },
};
