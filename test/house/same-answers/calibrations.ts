/** Calibrations of invented loops whose friction, head and power differ from what was entered. */
import type { Json } from '../../api/requests.ts';
import { NOW } from './asker.ts';
import { type Invented, invented, outletsOf } from './invented.ts';
import type { Kind } from './kind.ts';
import { type Meters, readingOf, readsPressures } from './meters.ts';
import type { Truth } from './shown.ts';
import { type Station, station } from './station.ts';
import { written } from './written.ts';

const FIRST_SEED = 101;
const MINUTE = 60_000;

const MEASURES = [
  ['flow', 'power'],
  ['flow', 'power', 'head'],
  ['flow', 'head'],
  ['flow', 'power', 'suctionPressure', 'dischargePressure'],
  ['power'],
];

interface Factors {
  readonly friction: number;
  readonly head: number;
  readonly power: number;
}

const truly = ({ loop, pump, count }: Invented, { friction, head, power }: Factors): Truth => ({
  loop: { ...loop, frictionMultiplier: loop.frictionMultiplier * friction },
  pump: {
    ...pump,
    headPoints: pump.headPoints.map((one) => ({ ...one, head: one.head * head })),
    powerPoints: pump.powerPoints.map((one) => ({ ...one, power: one.power * power })),
  },
  count,
});

/** Several readings at each setting, then now and then the head of a closed valve; one of them may be far off. */
function readings(
  { draw, pump }: Invented,
  { after }: Station,
  meters: Meters,
  factors: Factors,
): readonly Json[] {
  const repeats = draw.whole(1, 8);
  const wild = draw.chance(0.3) ? draw.whole(0, repeats) : -1;
  const running = [...after].flatMap(([setting, shown]) =>
    Array.from({ length: repeats }, (_, place) => {
      const gains = place === wild ? { flow: 1.4 } : {};
      return { setting, ...readingOf(draw, shown, { ...meters, gains }) };
    }),
  );
  const { max } = pump.settings;
  const shutoff =
    (pump.headPoints.find(({ flow, setting }) => flow === 0 && setting === max)?.head ?? 0) * factors.head;
  const closed =
    draw.chance(0.4) && shutoff > 0 ? [{ setting: max, flow: 0, head: Number(shutoff.toPrecision(4)) }] : [];
  return [...running, ...closed].map((reading, place) => ({
    time: new Date(NOW - 3 * 24 * 60 * MINUTE + place * 10 * MINUTE).toISOString(),
    ...reading,
  }));
}

export const calibrations: Kind = {
  name: 'calibration',
  count: 20,
  isShared: false,
  ask: async (asker, { place, label }) => {
    const asked = invented(FIRST_SEED + place);
    const { draw, loop } = asked;
    const factors = {
      friction: draw.between(0.6, 2),
      head: draw.between(0.85, 1.05),
      power: draw.between(0.9, 1.2),
    };
    const outlets = outletsOf(loop.discharge).map(({ name }) => name);
    const meters = {
      measures: draw.pick(MEASURES),
      outlets: draw.chance(0.4) ? outlets.slice(0, draw.whole(1, outlets.length)) : [],
      scatter: draw.pick([0.002, 0.01, 0.03]),
      gains: {},
    };
    const shares = [0.9, 1, 0.8, 0.7].slice(0, draw.whole(1, 4));
    const at = await station(asker, {
      label,
      asked,
      shares,
      installed: {},
      pressures: readsPressures(meters),
      change: () => truly(asked, factors),
    });
    const path = `/v1/loops/${at.loop}`;
    const body = { readings: readings(asked, at, meters, factors) };
    await asker.ask({ label: `${label}.readings`, path: `${path}/readings`, body });
    const query = draw.chance(0.2) ? { units: 'us' } : {};
    const calibration = { path: `${path}/calibration`, query };
    const answer = await asker.ask({
      ...calibration,
      label,
      body: draw.chance(0.3) ? { from: '2026-01-01T00:00:00Z' } : {},
    });
    if (place % 2 === 1 || answer.includes('"refusal"')) return;
    // What the loop is computed by from then on.
    await asker.ask({ ...calibration, label: `${label}.applied`, body: { apply: true }, ifMatch: '*' });
    await asker.ask({ ...calibration, label: `${label}.list` });
    await asker.ask({ label: `${label}.duty`, path: `${path}/duty-point`, query });
    const pumps = [written(asked.pump, 'metric')];
    const question = { loop: at.loop, pumps, price: 0.2, assurance: 'calibration' };
    await asker.ask({ label: `${label}.assured`, path: '/v1/recommendations', body: question });
  },
};
