/** Invented loops with their pumps, as entered and as they are. */

import type { Fault, MeteredLoop } from '../../models/condition/metered-loop.ts';
import type { Station } from '../../models/condition/predicted.ts';
import { stationOnMeters } from '../../models/condition/station-on-meters.ts';
import type { PipeworkLoop } from '../../models/loop/loop.ts';
import type { Pump } from '../../models/pump/pump.ts';
import { LITRE_PER_HOUR, loopOf, modelOf, outlet, pipe, pumpModelOf } from '../models/example-loops.ts';
import { canister250, kelpFlume } from '../reference/independent/kelp-flume.ts';

/** What a loop is off its entries by: factors of friction, head and power, and the temperature of its water [degC]. */
export interface Actual {
  readonly friction?: number;
  readonly head?: number;
  readonly power?: number;
  readonly temperature?: number;
}

export interface Site {
  readonly loop: PipeworkLoop;
  readonly pump: Pump;
  readonly count: number;
  readonly setting: number;
}

/** A canister whose power rises with flow, as that of small centrifugal pumps does. */
const CANISTER: Pump = {
  ...canister250,
  powerPoints: [
    { flow: 1000, power: 150 },
    { flow: 4000, power: 187 },
    { flow: 7000, power: 222 },
    { flow: 9000, power: 245 },
    { flow: 12000, power: 270 },
  ].map(({ flow, power }) => ({ flow: flow * LITRE_PER_HOUR, power, setting: 100 })),
};

const wide = (name: string, length: number) =>
  outlet(name, { requiredFlow: 1500 * LITRE_PER_HOUR, nozzleDiameter: 0.022 }, [pipe(0.03, length)]);

/** Three outlets, jets of which take most of the head. */
export const FLUME: Site = { loop: kelpFlume, pump: CANISTER, count: 1, setting: 80 };
/** Water is lifted by 1.8 m. */
export const LIFTED: Site = {
  ...{ pump: CANISTER, count: 1, setting: 90 },
  loop: loopOf(
    { run: [pipe(0.0375, 4)], branches: [wide('upper', 3), wide('lower', 1)] },
    { name: 'Nursery raceways', staticHead: 1.8, pumpElevation: -0.5 },
  ),
};
/** Four outlets on pipes that take most of the head. */
export const BANK: Site = {
  ...{ pump: CANISTER, count: 1, setting: 75 },
  loop: loopOf(
    {
      run: [pipe(0.0375, 6)],
      branches: [
        wide('north', 8),
        wide('east', 6),
        { run: [pipe(0.0375, 2)], branches: [wide('south', 4), wide('west', 4)] },
      ],
    },
    { name: 'Seahorse bank', pumpElevation: -0.4 },
  ),
};
/** Two pumps side by side behind check valves. */
export const PAIR: Site = { ...BANK, count: 2, setting: 60 };

export function stationAt(
  { loop, pump, count }: Site,
  { friction = 1, head = 1, power = 1, temperature }: Actual = {},
): Station {
  const water = { ...loop.water, ...(temperature === undefined ? {} : { temperature }) };
  const model = modelOf({ ...loop, water, frictionMultiplier: friction * loop.frictionMultiplier });
  const actual = {
    ...pump,
    headPoints: pump.headPoints.map((point) => ({ ...point, head: head * point.head })),
    powerPoints: pump.powerPoints.map((point) => ({ ...point, power: power * point.power })),
  };
  return { loop: model, pump: pumpModelOf(actual), count };
}

const kept = new Map<string, MeteredLoop>();

/** The loop on its meters, faults solved for once. */
export function metered(site: Site, actual: Actual = {}): MeteredLoop {
  const key = JSON.stringify([site.loop.name, site.count, site.setting, actual]);
  const known = kept.get(key);
  if (known !== undefined) return known;
  const loop = stationOnMeters(stationAt(site, actual), site.setting);
  const [shown, held] = [remembered(loop.shownWith), remembered(loop.heldWith)];
  const made = { ...loop, shownWith: shown, heldWith: held };
  kept.set(key, made);
  return made;
}

function remembered<Answer>(of: (fault: Fault) => Answer): (fault: Fault) => Answer {
  const known = new Map<string, Answer>();
  return (fault) => {
    const key = JSON.stringify(fault);
    const answer = known.get(key) ?? of(fault);
    known.set(key, answer);
    return answer;
  };
}
