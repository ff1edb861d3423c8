/** Refuses an installed setting that the controller of the installed pump does not have. */
import type { Loop } from '../../../models/loop/loop.ts';
import { invalidRequest, type Problem } from '../../http/problem.ts';
import type { SiteStore } from '../../store/store.ts';
import { PUMPS } from '../pump/kind.ts';

/** Null without an installed pump, where it is not stored, which the write itself refuses, and inside its settings. */
export async function installedSettingProblem(
  store: SiteStore,
  { installed }: Pick<Loop, 'installed'>,
): Promise<Problem | null> {
  if (installed === undefined) return null;
  const pump = await store.of(PUMPS).get(installed.pump);
  if (pump === undefined) return null;
  const { min, max } = pump.document.settings;
  if (installed.setting >= min && installed.setting <= max) return null;
  const detail = `must be within ${min}..${max} %, the settings of the pump, not ${installed.setting}`;
  return invalidRequest([{ pointer: '/installed/setting', detail }]);
}
