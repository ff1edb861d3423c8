/** Faults of storage that no caller of it can correct. */

/**
 * `store-full`: no room on the disk, the write was not made (507).
 * `store-unavailable`: the database is busy or cannot be reached, worth another try after `retryAfterSeconds` (503).
 * `store-corrupt`: what is read is not what was written; the message names table and id for the log, never for a client (500).
 */
export type StoreFaultCode = 'store-full' | 'store-unavailable' | 'store-corrupt';

const RETRY_AFTER_SECONDS = 2;

export class StoreFault extends Error {
  readonly code: StoreFaultCode;
  readonly retryAfterSeconds: number | undefined;

  constructor(code: StoreFaultCode, message: string, options?: ErrorOptions) {
    super(message, options);
    this.name = 'StoreFault';
    this.code = code;
    this.retryAfterSeconds = code === 'store-unavailable' ? RETRY_AFTER_SECONDS : undefined;
  }
}
