/** Every migration by its name, in the order they run. */
import type { Migration } from 'kysely';
import { sitePumpLoop } from './0001-site-pump-loop.ts';
import { tariffSchedule } from './0002-tariff-schedule.ts';

export const MIGRATIONS: Readonly<Record<string, Migration>> = {
  '0001-site-pump-loop': sitePumpLoop,
  '0002-tariff-schedule': tariffSchedule,
};
