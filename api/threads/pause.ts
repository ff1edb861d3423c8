/** Pauses between the pieces of long work, so that other requests are served. */
import { setImmediate } from 'node:timers/promises';

/** Every so many small pieces: some milliseconds of them. */
const PIECES_MOST = 20;

/** Resolves after the others had their turn where `done` pieces call for it. */
export async function pauseAfter(done: number): Promise<void> {
  if (done % PIECES_MOST === 0) await setImmediate();
}
