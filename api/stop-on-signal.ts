/** Ends the process in order at SIGTERM or SIGINT. */

/** However long the stop takes, the process has ended by then: whoever sent the signal waits for 10 s [ms]. */
const STOP_WITHIN_MS = 9_000;

/**
 * The process ends with exit code 0 once `stop` has resolved. Further signals change nothing: a terminal sends SIGINT to npm and
 * to this process, and npm passes it on, so that one key press arrives here twice.
 */
export function stopOnSignal(stop: (signal: NodeJS.Signals) => Promise<void>): void {
  let stopping = false;
  const end = async (signal: NodeJS.Signals) => {
    if (stopping) return;
    stopping = true;
    setTimeout(() => process.exit(0), STOP_WITHIN_MS);
    await stop(signal);
    process.exit(0);
  };
  process.on('SIGTERM', end).on('SIGINT', end);
}
