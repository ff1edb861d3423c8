/** Reads the environment variables and checks them. */
import { isIPv4 } from 'node:net';
import { z } from 'zod';
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
  readonly variable: keyof typeof DEFAULTS;
  readonly detail: string;
}

const DEFAULTS = {
  PORT: '8080',
  HOST: '127.0.0.1',
  DATABASE_URL: 'file:./data/loopwright.sqlite',
  CURRENCY: 'EUR',
  LOG_LEVEL: 'info',
} as const;

const MAX_PORT = 65_535;

const isPort = (text: string): boolean => /^\d{1,5}$/.test(text) && Number(text) <= MAX_PORT;

const isLoopback = (host: string): boolean =>
  host === 'localhost' || host === '::1' || (isIPv4(host) && host.startsWith('127.'));

function decodedPath(text: string): string | undefined {
  try {
    return decodeURIComponent(text);
  } catch {
    return undefined;
  }
}

/** Undefined where the address names no file. */
function filePath(text: string): string | undefined {
  const path = /^file:(?:\/\/(?=\/))?([^?#]+)$/.exec(text)?.[1];
  const decoded = path === undefined || path.startsWith('//') ? undefined : decodedPath(path);
  const isFile =
    decoded !== undefined && !decoded.includes('\0') && !decoded.endsWith('/') && decoded !== ':memory:';
  return isFile ? decoded : undefined;
}

const FILE_EXAMPLE = `such as ${DEFAULTS.DATABASE_URL} or file:///var/lib/loopwright/loopwright.sqlite`;

/** The value may hold a password, so it is not repeated. */
const databaseFault = (text: string): string =>
  /^postgres(ql)?:/.test(text)
    ? `DATABASE_URL names PostgreSQL, which is not supported yet; set a file, ${FILE_EXAMPLE}.`
    : `DATABASE_URL does not name a file; set one, ${FILE_EXAMPLE}.`;

const databasePath = z.string().transform((text, issues) => {
  const path = filePath(text);
  if (path !== undefined) return path;
  issues.addIssue({ code: 'custom', message: databaseFault(text) });
  return z.NEVER;
});

/** An unset or empty variable takes its default. */
const variable = <Read>(name: keyof typeof DEFAULTS, read: z.ZodType<Read, string>) =>
  z
    .string()
    .optional()
    .transform((text) => text || DEFAULTS[name])
    .pipe(read);

/** In the order in which they are checked. */
const environment = z.object({
  PORT: variable(
    'PORT',
    z
      .string()
      .refine(isPort, {
        error: ({ input }) => `PORT is "${input}"; set a whole number from 0 to ${MAX_PORT}.`,
      })
      .transform(Number),
  ),
  HOST: variable(
    'HOST',
    z.string().refine(isLoopback, {
      error: ({ input }) =>
        `HOST is "${input}", but without access keys the service listens on loopback only; set 127.0.0.1, ::1 or localhost.`,
    }),
  ),
  DATABASE_URL: variable('DATABASE_URL', databasePath),
  CURRENCY: variable(
    'CURRENCY',
    z.string().regex(/^[A-Z]{3}$/, {
      error: ({ input }) => `CURRENCY is "${input}"; set three capital letters (ISO 4217), such as EUR.`,
    }),
  ),
  LOG_LEVEL: variable(
    'LOG_LEVEL',
    z.string().pipe(
      z.enum(LOG_LEVELS, {
        error: ({ input }) => `LOG_LEVEL is "${input}"; set one of ${LOG_LEVELS.join(', ')}.`,
      }),
    ),
  ),
});

/** The first wrong variable, in the order of `Environment`, is the failure. */
export function readEnvironment(
  variables: Readonly<Record<string, string | undefined>>,
): Result<Environment, EnvironmentFailure> {
  const read = environment.safeParse(variables);
  if (read.success) {
    const { PORT: port, HOST: host, DATABASE_URL, CURRENCY: currency, LOG_LEVEL: logLevel } = read.data;
    return success({ port, host, databasePath: DATABASE_URL, currency, logLevel });
  }
  const [issue] = read.error.issues;
  const name = environment.keyof().safeParse(issue?.path[0]);
  if (issue === undefined || !name.success) throw new Error('invariant: a wrong variable has a name');
  return failed({ code: 'bad-variable', variable: name.data, detail: issue.message });
}
