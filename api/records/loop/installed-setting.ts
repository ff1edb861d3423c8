/** Refuses an installed setting that the controller of the installed pump does not have. */
import { failed, type Result, success } from '../../../curves/result.ts';
import type { Loop } from '../../../models/loop/loop.ts';
import { invalidRequest, type Problem } from '../../http/problem.ts';
import type { SiteStore } from '../../store/store.ts';
import { PUMPS } from '../pump/kind.ts';

/** A pump that is not stored is refused by the write itself. */
export async function checkInstalledSetting(
  store: SiteStore,
  { installed }: Pick<Loop, 'installed'>,
): Promise<Result<null, Problem>> {
  const pump = installed && (await store.of(PUMPS).get(installed.pump));
  if (installed === undefined || pump === undefined) return success(null);
  const { min, max } = pump.document.settings;
  if (installed.setting >= min && installed.setting <= max) return success(null);
  const detail = `must be within ${min}..${max} %, the settings of the pump, not ${installed.setting}`;
  return failed(invalidRequest([{ pointer: '/installed/setting', detail }]));
}
