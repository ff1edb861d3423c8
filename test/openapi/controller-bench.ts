/** A folder to run the controller script in, with services that stand in for the real one. */
import { execFile } from 'node:child_process';
import { chmodSync, existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer, type IncomingMessage, type RequestListener, type Server } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const SCRIPT = fileURLToPath(new URL('../../openapi/clients/controller.sh', import.meta.url));

/** The fallback of the environment, and that of the service. */
export const OWN_FALLBACK = '55';
export const SERVED_FALLBACK = 60;

export type Variables = Readonly<Record<string, string>>;

export interface Ended {
  readonly code: number;
  readonly errors: string;
  /** Every setting that was applied so far. */
  readonly applied: readonly string[];
}

export interface Posted {
  readonly url: string | undefined;
  readonly headers: IncomingMessage['headers'];
  readonly body: string;
}

export interface ControllerBench {
  readonly folder: string;
  /** A round of the script. */
  run(variables: Variables): Promise<Ended>;
  /** The address of a service that ends with the test. */
  listening(answer: RequestListener): Promise<string>;
  /** One that answers every question with this body. */
  answering(body: string | Buffer, status?: number): Promise<string>;
  /** One that has this setpoint. */
  saying(setpoint: unknown): Promise<string>;
  /** The path of a command that a shell runs. */
  command(name: string, script: string): string;
  /** What a file of the folder holds by lines; none where it is not there. */
  lines(name: string): readonly string[];
  /** Something else that ends with the test. */
  endsToo(server: { close(): Promise<void> }): void;
  dispose(): Promise<void>;
}

/** A setpoint as the service answers it. */
export const setpoint = (setting: unknown, changes: Readonly<Record<string, unknown>> = {}) => ({
  setting,
  feasible: true,
  phase: 'day',
  from: '2026-01-15T07:00:00.000+00:00',
  to: '2026-01-15T22:00:00.000+00:00',
  power: 85.7042,
  flow: 7533.14,
  outlets: [{ name: 'the "far" end', flow: 3028.46, requiredFlow: 3000, margin: 0.00948641, shortage: 0 }],
  fallback: { setting: SERVED_FALLBACK, requiredFlowsMet: true, phasesBelowRequired: [] },
  summary: 'Set 70 % until 22:00 (phase "day").',
  cautions: [{ code: 'entrapment-people', severity: 'danger', setting: 1 }],
  ...changes,
});

/** A service of which the setpoint is fixed and that keeps what is posted to it. */
export async function keepingService(
  bench: ControllerBench,
  { document = setpoint(70), take }: { document?: unknown; take?: RequestListener } = {},
) {
  const posted: Posted[] = [];
  const address = await bench.listening((request, response) => {
    if (request.method === 'GET') return void response.end(JSON.stringify(document));
    let body = '';
    request.on('data', (chunk) => {
      body += String(chunk);
    });
    request.on('end', () => {
      posted.push({ url: request.url, headers: request.headers, body });
      if (take === undefined) response.writeHead(201).end('{}');
      else take(request, response);
    });
  });
  return { address, posted };
}

/** Whether a process runs: one that has ended and that nobody has asked about yet does not. */
export function runs(pid: string): boolean {
  const file = `/proc/${pid}/stat`;
  try {
    return !/\) Z /.test(readFileSync(file, 'utf8'));
  } catch {
    return false;
  }
}

const linesOf = (file: string): readonly string[] =>
  existsSync(file) ? readFileSync(file, 'utf8').trim().split('\n') : [];

function runIn(folder: string, variables: Variables): Promise<Ended> {
  const env = {
    PATH: process.env.PATH ?? '',
    LOOP: 'kelp-flume',
    APPLY: join(folder, 'apply'),
    FALLBACK: OWN_FALLBACK,
    STATE: join(folder, 'state'),
    TIMEOUT: '5',
    ...variables,
  };
  return new Promise((resolve) => {
    execFile('sh', [SCRIPT], { env, timeout: 30_000 }, (error, _output, errors) => {
      const code = typeof error?.code === 'number' ? error.code : error === null ? 0 : -1;
      resolve({ code, errors, applied: linesOf(join(folder, 'applied')) });
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
  const answering: ControllerBench['answering'] = (body, status = 200) =>
    listening((_request, response) => void response.writeHead(status).end(body));
  return {
    folder,
    command,
    listening,
    answering,
    saying: (document) => answering(JSON.stringify(document)),
    run: (variables) => runIn(folder, variables),
    lines: (name) => linesOf(join(folder, name)),
    endsToo: (server) => void running.push(server),
    async dispose() {
      for (const server of running.splice(0)) await server.close();
      rmSync(folder, { recursive: true });
    },
  };
}
