/** Every migration by its name, in the order they run. */
import type { Migration } from 'kysely';
import { sitePumpLoop } from './0001-site-pump-loop.ts';
import { tariffSchedule } from './0002-tariff-schedule.ts';
import { comparison } from './0003-comparison.ts';
import { upgradePlan } from './0004-upgrade-plan.ts';
import { maintenance } from './0005-maintenance.ts';
import { reading } from './0006-reading.ts';
import { calibration } from './0007-calibration.ts';
import { pumpFits } from './0008-pump-fits.ts';
import { key } from './0011-key.ts';

export const MIGRATIONS: Readonly<Record<string, Migration>> = {
  '0001-site-pump-loop': sitePumpLoop,
  '0002-tariff-schedule': tariffSchedule,
  '0003-comparison': comparison,
  '0004-upgrade-plan': upgradePlan,
  '0005-maintenance': maintenance,
  '0006-reading': reading,
  '0007-calibration': calibration,
  '0008-pump-fits': pumpFits,
  '0011-key': key,
};
