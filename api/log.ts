/** Makes the service's log: one JSON object a line, without credentials. */
import { type DestinationStream, type Logger, pino } from 'pino';
import type { LogLevel } from './environment.ts';

const CREDENTIALS = [
  'authorization',
  'headers.authorization',
  'headers.cookie',
  'req.headers.authorization',
  'req.headers.cookie',
];

/** Writes to standard output, or to the destination given. Times are RFC 3339 in UTC; levels are words. */
export function makeLogger(
  { level }: { readonly level: LogLevel },
  destination: DestinationStream = pino.destination({ fd: 1, sync: true }),
): Logger {
  return pino(
    {
      level,
      base: null,
      timestamp: pino.stdTimeFunctions.isoTime,
      formatters: { level: (label) => ({ level: label }) },
      redact: { paths: CREDENTIALS, censor: '[redacted]' },
    },
    destination,
  );
}
