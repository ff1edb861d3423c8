/** Starts the service. */
import { buildApp } from './app.ts';
import { run } from './run.ts';

await run(buildApp);
