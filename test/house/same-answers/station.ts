/** An invented loop in the application with its pump installed, and what its meters show before and after a change. */
import type { Json } from '../../api/requests.ts';
import type { Asker } from './asker.ts';
import { type Invented, settingNear } from './invented.ts';
import { type Shown, shownBy, type Truth } from './shown.ts';
import { written } from './written.ts';

export interface Station {
  readonly loop: string;
  /** By setting, the usual one first. */
  readonly before: ReadonlyMap<number, Shown>;
  readonly after: ReadonlyMap<number, Shown>;
}

interface Wish {
  readonly asked: Invented;
  readonly label: string;
  /** Shares of the highest setting, the usual one first. */
  readonly shares: readonly number[];
  readonly installed: Json;
  /** The loop and pump after the change, by what is shown before it at the usual setting. */
  readonly change: (usual: Shown) => Truth;
  readonly pressures: boolean;
}

const EMPTY: Shown = { totals: {}, outletFlows: {} };

/** Settings at which water moves, or the highest, at which it always does. */
async function shownBefore(
  at: (setting: number) => Promise<Shown>,
  { asked: { pump }, shares }: Wish,
): Promise<ReadonlyMap<number, Shown>> {
  const shown = new Map<number, Shown>();
  for (const setting of new Set(shares.map((share) => settingNear(pump, share)))) {
    const one = await at(setting);
    if ((one.totals.flow ?? 0) > 0) shown.set(setting, one);
  }
  const { max } = pump.settings;
  return shown.size > 0 ? shown : new Map([[max, await at(max)]]);
}

export async function station(asker: Asker, wish: Wish): Promise<Station> {
  const { label, asked, installed, change, pressures } = wish;
  const { loop, pump, count } = asked;
  const shown = (name: string, truth: Truth) =>
    shownBy(asker, { label: `${label}.${name}`, truth, pressures });
  const before = await shownBefore(await shown('before', { loop, pump, count }), wish);
  const [usual = pump.settings.max] = before.keys();
  const at = await shown('after', change(before.get(usual) ?? EMPTY));
  const after = new Map<number, Shown>();
  for (const setting of before.keys()) after.set(setting, await at(setting));
  const pumpId = await asker.store('/v1/pumps', written(pump, 'metric'));
  const entered = {
    ...written(loop, 'metric'),
    installed: { pump: pumpId, count, setting: usual, ...installed },
  };
  return { loop: await asker.store('/v1/loops', entered), before, after };
}
