/** Finds what a group of equal devices asks of people in a year. */
import { MINUTES_PER_HOUR, MONTHS_PER_YEAR } from '../calendar/time-factors.ts';

/** A routine service of a device. */
export interface DeviceService {
  /** [months], above 0. */
  readonly everyMonths: number;
  /** Each time [min]. */
  readonly minutes: number;
  /** Each time [money]. */
  readonly parts: number;
}

/** What devices ask in a year. */
export interface DeviceAttention {
  /** [h/year] */
  readonly hours: number;
  /** Of these, what failures make [h/year]. */
  readonly failureHours: number;
  /** [money/year] */
  readonly parts: number;
}

/**
 * What a group of equal devices asks of people in a year: devices x (service time + failures x time per failure), and
 * the parts of the services.
 *
 * @param group devices [-]; service, null where none is known; failures of one device [1/year]; minutesPerFailure
 *   [min].
 */
export function deviceAttention({
  devices,
  service,
  failures,
  minutesPerFailure,
}: {
  readonly devices: number;
  /** Null: none is known. */
  readonly service: DeviceService | null;
  readonly failures: number;
  readonly minutesPerFailure: number;
}): DeviceAttention {
  const times = service === null ? 0 : MONTHS_PER_YEAR / service.everyMonths;
  const failureHours = (devices * failures * minutesPerFailure) / MINUTES_PER_HOUR;
  const serviceHours = (devices * times * (service?.minutes ?? 0)) / MINUTES_PER_HOUR;
  return { hours: serviceHours + failureHours, failureHours, parts: devices * times * (service?.parts ?? 0) };
}
