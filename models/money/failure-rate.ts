/** Finds from counts how often a device fails a year. */
import { type MeanInterval, poissonMeanInterval } from '../../curves/poisson.ts';

/** `count` failures [-] among `devices` [-], each watched for `years` [years]. */
export interface FailureCounts {
  readonly count: number;
  readonly devices: number;
  readonly years: number;
}

/** Failures of one device a year [1/year], with the exact 95 % interval of a Poisson count (Garwood 1936). */
export interface FailureRate extends MeanInterval {
  readonly value: number;
}

/** The rate count/(devices years) [1/year]; 0 of none seen, whose interval still ends above 0. */
export function failureRate({ count, devices, years }: FailureCounts): FailureRate {
  const exposure = devices * years;
  const { low, high } = poissonMeanInterval(count);
  return { value: count / exposure, low: low / exposure, high: high / exposure };
}
