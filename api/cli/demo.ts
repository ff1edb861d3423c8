/** Starts the service with the demo's pumps and loops and shows the recommendation of each loop, asked for over HTTP. */
import { v7 as newId } from 'uuid';
import { buildApp } from '../app.ts';
import { readEnvironment } from '../environment.ts';
import { makeLogger } from '../log.ts';
import type { RunningServer } from '../server.ts';
import { startService } from '../service.ts';
import { stopOnSignal } from '../stop-on-signal.ts';
import { workerPool } from '../threads/worker-pool.ts';
import { VERSION } from '../version.ts';
import { WORKER_FILE } from '../worker-file.ts';
import { serviceAt } from './demo/call.ts';
import { dutyView, recommendationLines, recommendationView } from './demo/show.ts';
import { comparisonLines, comparisonView } from './demo/show-comparison.ts';
import { designLines, designView } from './demo/show-design.ts';
import { bankComparison, flumeDesign, loadWorld } from './demo/world.ts';

const DEMO_DATABASE = 'file:./data/demo.sqlite';

const say = (line = ''): void => void process.stdout.write(`${line}\n`);

function stopWith(reason: string): never {
  process.stderr.write(`loopwright: ${reason}\n`);
  process.exit(1);
}

/** With `once`, on a port that is free: the demo then needs none that others know. */
async function start(once: boolean): Promise<RunningServer> {
  const environment = readEnvironment({
    DATABASE_URL: DEMO_DATABASE,
    LOG_LEVEL: 'warn',
    ...(once ? { PORT: '0' } : {}),
    ...process.env,
  });
  if (!environment.ok) return stopWith(environment.failure.detail);
  const logger = makeLogger({ level: environment.value.logLevel });
  const workers = workerPool(WORKER_FILE);
  const clock = () => new Date();
  const deps = { clock, newId: () => newId(), logger, workers, version: VERSION };
  const service = await startService({
    environment: environment.value,
    clock,
    fetchFor: (store) => buildApp({ ...deps, store }).fetch,
  });
  if (!service.ok) return stopWith(service.failure.reason);
  const { url, stop } = service.value;
  return { url, stop: async () => void (await Promise.all([stop(), workers.close()])) };
}

async function show(url: string): Promise<void> {
  const service = serviceAt(url);
  say('Skerry Point Marine Station: the cheapest pump and setting for each loop');
  for (const { id, name } of await loadWorld(service)) {
    const recommendation = recommendationView.parse(await service.get(`/v1/loops/${id}/recommendation`));
    const installed = dutyView.parse(await service.get(`/v1/loops/${id}/duty-point`));
    say();
    for (const line of recommendationLines(name, recommendation, installed)) say(line);
  }
  say();
  for (const line of designLines(designView.parse(await flumeDesign(service)))) say(line);
  const bank = await bankComparison(service);
  say();
  for (const line of comparisonLines(comparisonView.parse(bank))) say(line);
  say();
  say(
    'Every answer also carries cautions about the loop itself (electricity near water, entrapment, drain-back).',
  );
  say("Estimates from entered points: the maker's limits, local code and licensed practice come first.");
}

// Whoever reads may stop reading, as `head` does.
process.stdout.on('error', () => process.exit(0));

const once = process.argv.includes('--once');
const service = await start(once);
await show(service.url);
if (once) await service.stop();
else {
  say();
  say(`The service listens on ${service.url} (try ${service.url}/v1/loops); Ctrl-C ends it.`);
  stopOnSignal(service.stop);
}
