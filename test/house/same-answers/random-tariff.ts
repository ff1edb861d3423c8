/** Invented tariffs. */
import type { Json } from '../../api/requests.ts';
import type { Draw } from '../../random/draw.ts';

const WORKDAYS = ['mon', 'tue', 'wed', 'thu', 'fri'];
const WEEKEND = ['sat', 'sun', 'holiday'];
const HOURS = ['00:00', '06:00', '06:30', '09:15', '13:00', '17:00', '21:00', '22:30'];

function randomPeriod(draw: Draw, name: string): Json {
  const from = draw.pick(HOURS);
  const to = draw.pick(HOURS.filter((hour) => hour !== from));
  return {
    name,
    price: draw.chance(0.1) ? -0.02 : Number(draw.between(0.05, 0.45).toFixed(4)),
    ...(draw.chance(0.4) ? { months: draw.pick([[1, 2, 11, 12], [6, 7, 8], [3]]) } : {}),
    ...(draw.chance(0.5) ? { days: draw.pick([WORKDAYS, WEEKEND]) } : {}),
    ...(draw.chance(0.8) ? { from, to } : {}),
  };
}

export function randomTariff(draw: Draw): Json {
  const names = ['peak', 'night', 'noon'].slice(0, draw.whole(0, 3));
  return {
    name: `Tariff ${draw.whole(1, 99)}`,
    holidays: draw.chance(0.5) ? ['2026-01-01', '2026-12-25'] : [],
    periods: names.map((name) => randomPeriod(draw, name)),
    otherwise: { name: 'base', price: Number(draw.between(0.1, 0.3).toFixed(4)) },
    ...(draw.chance(0.5) ? { standingChargePerDay: 0.4 } : {}),
  };
}
