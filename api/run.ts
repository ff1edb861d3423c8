/** The process around the service: its environment, log, signals and exit codes. */
import type { Logger } from 'pino';
import { v7 as newId } from 'uuid';
import { readEnvironment } from './environment.ts';
import type { AppDependencies } from './http/api.ts';
import { makeLogger } from './log.ts';
import type { RunningServer } from './server.ts';
import { startService } from './service.ts';
import { type HeavyWork, workerPool } from './threads/worker-pool.ts';
import { VERSION } from './version.ts';

interface App {
  readonly fetch: (request: Request, env: object) => Response | Promise<Response>;
}

const clock = () => new Date();

function refuse(reason: string): never {
  process.stderr.write(`loopwright: ${reason}\n`);
  process.exit(1);
}

/** A bug that nobody caught leaves the process in an unknown state: it is logged and the process ends. */
function exitOnUncaught(logger: Logger): void {
  const exit = (err: unknown) => {
    logger.fatal({ err }, 'uncaught error, the process ends');
    process.exit(1);
  };
  process.on('uncaughtException', exit);
  process.on('unhandledRejection', exit);
}

interface Running {
  readonly service: RunningServer;
  readonly heavyWork: HeavyWork;
  readonly logger: Logger;
}

/** At the first signal; a second one, no longer listened to, ends the process at once. */
function stopOnSignal({ service, heavyWork, logger }: Running): void {
  const stop = async (signal: NodeJS.Signals) => {
    process.removeAllListeners('SIGTERM').removeAllListeners('SIGINT');
    logger.info({ signal }, 'stopping');
    await service.stop();
    await heavyWork.close();
    logger.info('stopped');
    process.exit(0);
  };
  process.on('SIGTERM', stop).on('SIGINT', stop);
}

/** Exits with 1 and one line on standard error when it cannot start, and with 0 after SIGTERM or SIGINT. */
export async function run(buildApp: (deps: AppDependencies) => App): Promise<void> {
  const environment = readEnvironment(process.env);
  if (!environment.ok) return refuse(environment.failure.detail);
  const logger = makeLogger({ level: environment.value.logLevel });
  exitOnUncaught(logger);
  const heavyWork = workerPool();
  const service = await startService({
    environment: environment.value,
    clock,
    fetchFor: (store) =>
      buildApp({ store, clock, newId: () => newId(), logger, heavyWork, version: VERSION }).fetch,
  });
  if (!service.ok) return refuse(service.failure.reason);
  stopOnSignal({ service: service.value, heavyWork, logger });
  logger.info({ url: service.value.url, version: VERSION }, 'listening');
}
