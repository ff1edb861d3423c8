/** Decides whether a reading is of a pump that is stopped although it is set to run. */

/** Power up to so many standby powers, or so much of what is predicted; flow below such a share of what is predicted [-]. */
const STOPPED = { standbys: 1.5, power: 0.05, flow: 0.02 } as const;
/** A head of this share of the predicted shows that the pump turns: without flow a valve is closed then [-]. */
const TURNING = 0.5;

/** What is measured or predicted; undefined: not measured. */
interface Shown {
  /** [m3/s] */
  readonly flow?: number | undefined;
  /** [W] */
  readonly power?: number | undefined;
  /** [m] */
  readonly head?: number | undefined;
}

/**
 * Whether the pump is stopped: it flows below 2 % of the predicted without a head, or draws at most the larger of
 * 1.5 standby powers and 5 % of the predicted power.
 *
 * @param setting [% of full]: at 0 the pump is not set to run, and the answer is no.
 * @param predicted at that setting, flow [m3/s], power [W], head [m]; where its flow is 0 the answer is no.
 * @param standbyPower of all pumps [W].
 * Source: common practice.
 */
export function isStopped({
  setting,
  measured,
  predicted,
  standbyPower,
}: {
  readonly setting: number;
  readonly measured: Shown;
  readonly predicted: { readonly flow: number; readonly power: number; readonly head: number };
  readonly standbyPower: number;
}): boolean {
  if (setting === 0 || predicted.flow <= 0) return false;
  const { flow, power, head = 0 } = measured;
  if (flow !== undefined && flow < STOPPED.flow * predicted.flow) return head <= TURNING * predicted.head;
  const most = Math.max(STOPPED.standbys * standbyPower, STOPPED.power * predicted.power);
  return power !== undefined && power <= most;
}
