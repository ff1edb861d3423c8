/** The one site of a facility that has not made others. */
import type { Site } from './store.ts';

export const DEFAULT_SITE_ID = 'default';

export const defaultSite = (currency: string): Site => ({
  name: 'Site',
  timeZone: 'UTC',
  currency,
  elevation: 0,
  price: null,
  labourRate: null,
  tariff: null,
});
