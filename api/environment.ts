/** What the environment variables say, checked. */
import { isIPv4 } from 'node:net';
import { failed, type Result, success } from '../curves/result.ts';

const LOG_LEVELS = ['fatal', 'error', 'warn', 'info', 'debug', 'trace', 'silent'] as const;
export type LogLevel = (typeof LOG_LEVELS)[number];

export interface Environment {
  /** 0 lets the system choose. */
  readonly port: number;
  readonly host: string;
  /** The SQLite file, relative to the working directory unless absolute. */
  readonly databasePath: string;
  /** Of the site that a first start makes. */
  readonly currency: string;
  readonly logLevel: LogLevel;
}

/** `detail` says in one line what is wrong with the variable and what would be right. */
export interface EnvironmentFailure {
  readonly code: 'bad-variable';
  readonly variable: 'PORT' | 'HOST' | 'DATABASE_URL' | 'CURRENCY' | 'LOG_LEVEL';
  readonly detail: string;
}

type Reading<T> = Result<T, EnvironmentFailure>;

const DEFAULTS = {
  PORT: '8080',
  HOST: '127.0.0.1',
  DATABASE_URL: 'file:./data/loopwright.sqlite',
  CURRENCY: 'EUR',
  LOG_LEVEL: 'info',
} as const satisfies Record<EnvironmentFailure['variable'], string>;

const MAX_PORT = 65_535;

const bad = (variable: EnvironmentFailure['variable'], detail: string) =>
  failed<EnvironmentFailure>({ code: 'bad-variable', variable, detail });

function readPort(text: string): Reading<number> {
  const port = Number(text);
  return /^\d{1,5}$/.test(text) && port <= MAX_PORT
    ? success(port)
    : bad('PORT', `PORT is "${text}"; set a whole number from 0 to ${MAX_PORT}.`);
}

const isLoopback = (host: string): boolean =>
  host === 'localhost' || host === '::1' || (isIPv4(host) && host.startsWith('127.'));

function readHost(text: string): Reading<string> {
  return isLoopback(text)
    ? success(text)
    : bad(
        'HOST',
        `HOST is "${text}", but without access keys the service listens on loopback only; set 127.0.0.1, ::1 or localhost.`,
      );
}

function decodedPath(text: string): string | undefined {
  try {
    return decodeURIComponent(text);
  } catch {
    return undefined;
  }
}

function readDatabaseUrl(text: string): Reading<string> {
  const example = `such as ${DEFAULTS.DATABASE_URL} or file:///var/lib/loopwright/loopwright.sqlite`;
  if (/^postgres(ql)?:/.test(text)) {
    // The value may hold a password, so it is not repeated.
    return bad(
      'DATABASE_URL',
      `DATABASE_URL names PostgreSQL, which is not supported yet; set a file, ${example}.`,
    );
  }
  const path = /^file:(?:\/\/(?=\/))?([^?#]+)$/.exec(text)?.[1];
  const decoded = path === undefined || path.startsWith('//') ? undefined : decodedPath(path);
  return decoded === undefined || decoded.includes('\0') || decoded.endsWith('/') || decoded === ':memory:'
    ? bad('DATABASE_URL', `DATABASE_URL does not name a file; set one, ${example}.`)
    : success(decoded);
}

function readCurrency(text: string): Reading<string> {
  return /^[A-Z]{3}$/.test(text)
    ? success(text)
    : bad('CURRENCY', `CURRENCY is "${text}"; set three capital letters (ISO 4217), such as EUR.`);
}

function readLogLevel(text: string): Reading<LogLevel> {
  const level = LOG_LEVELS.find((known) => known === text);
  return level === undefined
    ? bad('LOG_LEVEL', `LOG_LEVEL is "${text}"; set one of ${LOG_LEVELS.join(', ')}.`)
    : success(level);
}

/** An unset or empty variable takes its default; the first wrong one, in the order of `Environment`, is the failure. */
export function readEnvironment(
  variables: Readonly<Record<string, string | undefined>>,
): Result<Environment, EnvironmentFailure> {
  const text = (variable: keyof typeof DEFAULTS): string => variables[variable] || DEFAULTS[variable];
  const port = readPort(text('PORT'));
  if (!port.ok) return port;
  const host = readHost(text('HOST'));
  if (!host.ok) return host;
  const databasePath = readDatabaseUrl(text('DATABASE_URL'));
  if (!databasePath.ok) return databasePath;
  const currency = readCurrency(text('CURRENCY'));
  if (!currency.ok) return currency;
  const logLevel = readLogLevel(text('LOG_LEVEL'));
  if (!logLevel.ok) return logLevel;
  return success({
    port: port.value,
    host: host.value,
    databasePath: databasePath.value,
    currency: currency.value,
    logLevel: logLevel.value,
  });
}
