/** Runs the process around the service: its environment, log, signals and exit codes. */
import type { Logger } from 'pino';
import { v7 as newId } from 'uuid';
import { readEnvironment } from './environment.ts';
import type { AppDependencies } from './http/api.ts';
import { makeLogger } from './log.ts';
import { startService } from './service.ts';
import { stopOnSignal } from './stop-on-signal.ts';
import { workerPool } from './threads/worker-pool.ts';
import { VERSION } from './version.ts';
import { WORKER_FILE } from './worker-file.ts';

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

/** Exits with 1 and one line on standard error when it cannot start, and with 0 after SIGTERM or SIGINT. */
export async function run(buildApp: (deps: AppDependencies) => App): Promise<void> {
  const environment = readEnvironment(process.env);
  if (!environment.ok) return refuse(environment.failure.detail);
  const logger = makeLogger({ level: environment.value.logLevel });
  exitOnUncaught(logger);
  const workers = workerPool(WORKER_FILE);
  const service = await startService({
    environment: environment.value,
    clock,
    fetchFor: (store) =>
      buildApp({ store, clock, newId: () => newId(), logger, workers, version: VERSION }).fetch,
  });
  if (!service.ok) return refuse(service.failure.reason);
  stopOnSignal(async (signal) => {
    logger.info({ signal }, 'stopping');
    await service.value.stop();
    await workers.close();
    logger.info('stopped');
  });
  logger.info({ url: service.value.url, version: VERSION }, 'listening');
}
