/** The site that the OpenAPI document shows. */

export const SITE_EXAMPLE = {
  name: 'Skerry Point Marine Station',
  timeZone: 'Europe/Lisbon',
  currency: 'EUR',
  elevation: 10,
  price: 0.21,
  labourRate: 30,
  tariff: null,
};
