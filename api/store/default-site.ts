/** The one site of a facility that has not made others. */

export const DEFAULT_SITE_ID = 'default';
