/** What a group of equal devices asks of people in a year. */
import { MINUTES_PER_HOUR, MONTHS_PER_YEAR } from '../calendar/time-factors.ts';

export interface DeviceService {
  readonly everyMonths: number;
  readonly minutes: number;
  /** Money each time. */
  readonly parts: number;
}

export interface DeviceAttention {
  readonly hours: number;
  /** Of these, what failures make. */
  readonly failureHours: number;
  readonly parts: number;
}

/** devices x (service time + failures x time per failure), and the parts of the services; failures are of one device a year. */
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
