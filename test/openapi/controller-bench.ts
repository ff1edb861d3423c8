/** A folder to run the controller script in, with services that stand in for the real one. */
import { execFile } from 'node:child_process';
import { chmodSync, existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer, type RequestListener, type Server } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const SCRIPT = fileURLToPath(new URL('../../openapi/clients/controller.sh', import.meta.url));

export interface Ended {
  readonly code: number;
  readonly errors: string;
  /** Every setting that was applied so far. */
  readonly applied: readonly string[];
}

export interface ControllerBench {
  readonly folder: string;
  run(variables: Readonly<Record<string, string>>): Promise<Ended>;
  /** The address of a service that ends with the test. */
  listening(answer: RequestListener): Promise<string>;
  saying(setting: string, fallback?: string): Promise<string>;
  /** The path of a command that a shell runs. */
  command(name: string, script: string): string;
  /** Something else that ends with the test. */
  endsToo(server: { close(): Promise<void> }): void;
  dispose(): Promise<void>;
}

function runIn(folder: string, variables: Readonly<Record<string, string>>): Promise<Ended> {
  const env = {
    PATH: process.env.PATH ?? '',
    LOOP: 'flume',
    APPLY: join(folder, 'apply'),
    FALLBACK: '55',
    STATE: join(folder, 'state'),
    TIMEOUT: '1',
    ...variables,
  };
  return new Promise((resolve) => {
    execFile('sh', [SCRIPT], { env, timeout: 20_000 }, (error, _output, errors) => {
      const file = join(folder, 'applied');
      const applied = existsSync(file) ? readFileSync(file, 'utf8').trim().split('\n') : [];
      resolve({
        code: typeof error?.code === 'number' ? error.code : error === null ? 0 : -1,
        errors,
        applied,
      });
    });
  });
}

function addressOf(server: Server): string {
  const address = server.address();
  if (address === null || typeof address === 'string') throw new Error('no port');
  return `http://127.0.0.1:${address.port}`;
}

const stopped = (server: Server): Promise<void> => {
  server.closeAllConnections();
  return new Promise((resolve) => server.close(() => resolve()));
};

export function controllerBench(): ControllerBench {
  const folder = mkdtempSync(join(tmpdir(), 'loopwright-controller-'));
  const running: { close(): Promise<void> }[] = [];
  const command = (name: string, script: string): string => {
    const path = join(folder, name);
    writeFileSync(path, `#!/bin/sh\n${script}\n`);
    chmodSync(path, 0o755);
    return path;
  };
  command('apply', `printf '%s\\n' "$1" >>"${folder}/applied"`);
  const listening = async (answer: RequestListener): Promise<string> => {
    const server = createServer(answer);
    await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
    running.push({ close: () => stopped(server) });
    return addressOf(server);
  };
  return {
    folder,
    command,
    listening,
    run: (variables) => runIn(folder, variables),
    saying: (setting, fallback = '60') =>
      listening((request, response) => {
        response.end(request.url?.includes('fallback') === true ? fallback : setting);
      }),
    endsToo: (server) => void running.push(server),
    async dispose() {
      for (const server of running.splice(0)) await server.close();
      rmSync(folder, { recursive: true });
    },
  };
}
