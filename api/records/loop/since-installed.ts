/** Says from when on the readings of a loop are of the pump that it has. */
import { dayOfText } from '../../../models/calendar/civil-text.ts';
import { startOfDay } from '../../../models/calendar/zone-offsets.ts';
import type { InstalledPump } from '../../../models/loop/loop.ts';
import { zoneAround } from '../../clock/zone.ts';
import type { SiteRecord } from '../site/kind.ts';

/** The start of the day that the pump was put in, by the clocks of the site; readings before are of another pump. In ms; 0 where that is not stated. */
export function sinceInstalled({ since }: InstalledPump, { document }: SiteRecord): number {
  const day = since === undefined ? null : dayOfText(since.slice(0, 10));
  if (day === null || since === undefined) return 0;
  return startOfDay(zoneAround(document.timeZone, Number(since.slice(0, 4))), day);
}
