/** What there is to be measured on an invented loop, by the service's own duties of its pump. */
import { z } from 'zod';
import type { Asker, Question } from './asker.ts';
import type { Loop, Pump } from './invented.ts';
import { written } from './written.ts';

const duty = z.looseObject({
  flow: z.number(),
  head: z.number(),
  power: z.number(),
  outlets: z.array(z.looseObject({ name: z.string(), flow: z.number() })),
});

const curve = z.looseObject({ points: z.array(z.looseObject({ head: z.number() })).length(1) });

/** In metric units, by the name of the measure; outlets by their names. */
export interface Shown {
  readonly totals: Readonly<Record<string, number>>;
  readonly outletFlows: Readonly<Record<string, number>>;
}

/** A loop and its pumps as they truly are. */
export interface Truth {
  readonly loop: Loop;
  readonly pump: Pump;
  readonly count: number;
}

interface Wish {
  readonly label: string;
  readonly truth: Truth;
  /** Whether the pressures before and behind the pump are wanted too. */
  readonly pressures: boolean;
}

const GRAVITY = 9.80665;
const LITRE_PER_HOUR = 1 / 3.6e6;

/** About the density of the water [kg/m3]; no gauge is read to the last figure. */
const densityOf = ({ water: { temperature, salinity } }: Loop): number =>
  999.8 + 0.78 * salinity - 0.0055 * (temperature - 4) ** 2;

/** The loop with each of its suction losses twice: by so much more head, the suction takes. */
const suctionTwice = (loop: Loop): Loop => ({
  ...loop,
  suction: [...loop.suction, ...loop.suction],
  ...(loop.intake && { intake: { ...loop.intake, lossCoefficient: 2 * loop.intake.lossCoefficient } }),
});

/** V^2/2g [m] at a gauge on a pipe [m] at a flow [m3/s]. */
const velocityHead = (diameter: number, flow: number): number =>
  (8 * flow ** 2) / (Math.PI ** 2 * GRAVITY * diameter ** 4);

/** Pressures [kPa] at the gauges, from the head that the suction takes and the head of the pump [m], at a flow [L/h]. */
function pressuresOf(loop: Loop, { taken, head, flow }: { taken: number; head: number; flow: number }) {
  const { gauges, pumpElevation } = loop;
  const at = (diameter: number | undefined) =>
    diameter === undefined ? 0 : velocityHead(diameter, flow * LITRE_PER_HOUR);
  const perHead = (densityOf(loop) * GRAVITY) / 1000;
  const before = -pumpElevation - taken;
  return {
    suctionPressure: perHead * (before - at(gauges?.suctionDiameter)),
    dischargePressure: perHead * (before + head - at(gauges?.dischargeDiameter)),
  };
}

/** An answer on which further questions rest: without it there is nothing to ask. */
async function needed<T>({ ask }: Asker, schema: z.ZodType<T>, question: Question): Promise<T> {
  const text = await ask(question);
  const read = schema.safeParse(JSON.parse(text));
  if (!read.success) throw new Error(`${question.label} is answered ${text}`);
  return read.data;
}

/** What is shown at a setting; the duties and heads that it rests on are lines too. */
export async function shownBy(asker: Asker, { label, truth, pressures }: Wish) {
  const { loop, pump, count } = truth;
  const stored = (one: Loop) => asker.store('/v1/loops', written(one, 'metric'));
  const pumpId = await asker.store('/v1/pumps', written(pump, 'metric'));
  const loopId = await stored(loop);
  const twiceId = pressures ? await stored(suctionTwice(loop)) : loopId;
  const headAt = async (id: string, name: string, flow: number): Promise<number> => {
    const path = `/v1/loops/${id}/system-curve`;
    const found = await needed(asker, curve, { label: `${label}.${name}`, path, query: { flow, points: 1 } });
    return found.points[0]?.head ?? 0;
  };
  return async (setting: number): Promise<Shown> => {
    const path = `/v1/loops/${loopId}/duty-point`;
    const query = { pump: pumpId, count, setting };
    const found = await needed(asker, duty, { label: `${label}.duty-${setting}`, path, query });
    const { flow, head, power, outlets } = found;
    const outletFlows = Object.fromEntries(outlets.map((outlet) => [outlet.name, outlet.flow]));
    if (!pressures || flow <= 0) return { totals: { flow, head, power }, outletFlows };
    const once = await headAt(loopId, `once-${setting}`, flow);
    const taken = (await headAt(twiceId, `twice-${setting}`, flow)) - once;
    return { totals: { flow, head, power, ...pressuresOf(loop, { taken, head, flow }) }, outletFlows };
  };
}

const betweenRecords = (a: Shown['totals'], b: Shown['totals'], share: number): Shown['totals'] =>
  Object.fromEntries(
    Object.entries(a).map(([name, value]) => [name, value + share * ((b[name] ?? value) - value)]),
  );

/** On the way from one state to another: 0 is the first, 1 the second. */
export const between = (a: Shown, b: Shown, share: number): Shown => ({
  totals: betweenRecords(a.totals, b.totals, share),
  outletFlows: betweenRecords(a.outletFlows, b.outletFlows, share),
});
