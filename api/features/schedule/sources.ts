/** Loads the records that the plan of a loop follows from. */
import { failed, type Result, success } from '../../../curves/result.ts';
import type { InstalledPump } from '../../../models/loop/loop.ts';
import type { CompiledLoop } from '../../../models/network/compiled-loop.ts';
import { flatRate, type Rates, ratesOf } from '../../../models/tariff/rates.ts';
import { type Problem, problem } from '../../http/problem.ts';
import type { CompiledLoops } from '../../records/loop/compiled-loops.ts';
import type { LoopRecord } from '../../records/loop/kind.ts';
import type { PumpRecord } from '../../records/pump/kind.ts';
import { findPump } from '../../records/pump/kind.ts';
import type { SiteRecord } from '../../records/site/kind.ts';
import { findSite } from '../../records/site/kind.ts';
import type { TariffRecord } from '../../records/tariff/kind.ts';
import { findTariff } from '../../records/tariff/kind.ts';
import type { SiteStore } from '../../store/store.ts';

/** All that phases, settings and figures follow from. */
export interface LoopSources {
  readonly site: SiteRecord;
  readonly loop: LoopRecord;
  readonly installed: InstalledPump;
  readonly pump: PumpRecord;
  readonly model: CompiledLoop;
  readonly tariff: TariffRecord | null;
}

/** `tariffId`: that of a schedule; null: the site's. */
export async function loadSources(
  { store, loops }: { readonly store: SiteStore; readonly loops: CompiledLoops },
  loop: LoopRecord,
  tariffId: string | null,
): Promise<Result<LoopSources, Problem>> {
  const { installed } = loop.document;
  if (installed === undefined) {
    return failed(problem('no-installed-pump', 'The loop has no installed pump to set.'));
  }
  const site = await findSite(store);
  const pump = await findPump(store, installed.pump, null);
  if (!pump.ok) return pump;
  const model = loops.compile(loop, []);
  if (!model.ok) return model;
  const id = tariffId ?? site.document.tariff;
  const tariff = id === null ? success(null) : await findTariff(store, id, { pointer: '/tariff' });
  if (!tariff.ok) return tariff;
  return success({ site, loop, installed, pump: pump.value, model: model.value, tariff: tariff.value });
}

/** Null where nothing is priced. */
export function ratesFor({ site, tariff }: Pick<LoopSources, 'site' | 'tariff'>): Rates | null {
  if (tariff !== null) return ratesOf(tariff.document);
  const { price } = site.document;
  return price === null ? null : flatRate(price);
}
