/** `npm start` as a process of its own: what a signal to it ends, and how. */
import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:http';
import { connect, type Socket } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));

/** A first start compiles the whole project. */
const PATIENCE = 240_000;

/** Whoever sends a signal waits this long before killing what is left [ms]. */
const ENDS_WITHIN = 10_000;

let folder = '';
let child: ChildProcess | undefined;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'loopwright-start-'));
});
afterEach(() => {
  if (child?.pid !== undefined && groupLives(child.pid)) process.kill(-child.pid, 'SIGKILL');
  rmSync(folder, { recursive: true });
});

/** Whether any process is left of those that were started. */
function groupLives(group: number): boolean {
  try {
    process.kill(-group, 0);
    return true;
  } catch {
    return false;
  }
}

/** A port that is free now; listening on it fails where it is not. */
async function freePort(wanted = 0): Promise<number> {
  const server = createServer();
  server.listen(wanted, '127.0.0.1');
  await once(server, 'listening');
  const address = server.address();
  server.close();
  await once(server, 'close');
  return typeof address === 'object' && address !== null ? address.port : 0;
}

/** In a process group of its own, as a terminal starts a command. */
async function npmStart(until: string) {
  const port = await freePort();
  const env = {
    ...process.env,
    PORT: String(port),
    DATABASE_URL: `file:${join(folder, 'database.sqlite')}`,
    LOG_LEVEL: 'info',
  };
  const npm = spawn('npm', ['start'], { cwd: ROOT, env, detached: true, stdio: ['ignore', 'pipe', 'pipe'] });
  child = npm;
  const group = npm.pid;
  if (group === undefined) throw new Error('npm did not start');
  let output = '';
  const seen = new Promise<void>((resolve, reject) => {
    const look = (text: string) => {
      output += text;
      if (output.includes(until)) resolve();
    };
    npm.stdout.setEncoding('utf8').on('data', look);
    npm.stderr.setEncoding('utf8').on('data', look);
    npm.once('exit', () => reject(new Error(`ended too early: ${output}`)));
  });
  const ended = once(npm, 'exit').then(
    ([code, signal]: (number | string | null)[]) => code ?? signal ?? null,
  );
  await seen;
  return { port, group, ended };
}

const BODY = '{"shape": "cylinder", "diameter": 90, "openFraction": 0.3, "flow": 6000}';
const HEAD = [
  'POST /v1/screen-sizes HTTP/1.1',
  'Host: 127.0.0.1',
  'Content-Type: application/json',
  `Content-Length: ${BODY.length}`,
  '',
  '',
].join('\r\n');

/** A request of which the body is half sent. */
async function halfSent(port: number): Promise<{ readonly socket: Socket; readonly heard: Promise<string> }> {
  const socket = connect(port, '127.0.0.1');
  await once(socket, 'connect');
  let text = '';
  socket.setEncoding('utf8').on('data', (piece) => {
    text += String(piece);
  });
  const heard = new Promise<string>((resolve) => {
    socket.on('error', () => {}).on('close', () => resolve(text));
  });
  socket.write(HEAD + BODY.slice(0, 20));
  return { socket, heard };
}

/** The exit code of what has ended in time. */
async function codeWithin(ended: Promise<number | string | null>): Promise<number | string | null> {
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<string>((resolve) => {
    timer = setTimeout(() => resolve('still running'), ENDS_WITHIN);
  });
  const code = await Promise.race([ended, late]);
  clearTimeout(timer);
  return code;
}

describe('npm start', () => {
  it.each<[string, NodeJS.Signals, (group: number) => number]>([
    ['SIGTERM to npm alone, as a supervisor sends it,', 'SIGTERM', (group) => group],
    ['SIGINT to npm alone', 'SIGINT', (group) => group],
    ['SIGINT to all of its group, as a terminal sends it,', 'SIGINT', (group) => -group],
    ['SIGTERM to all of its group', 'SIGTERM', (group) => -group],
  ])(
    'at %s lets open requests end, and is gone within 10 s with exit code 0',
    async (_what, signal, target) => {
      const { port, group, ended } = await npmStart('"listening"');
      const finishing = await halfSent(port);
      const hanging = await halfSent(port);
      const idle = await fetch(`http://127.0.0.1:${port}/healthz`);
      expect(idle.status).toBe(200);

      process.kill(target(group), signal);
      const code = codeWithin(ended);
      // Later than the signal has certainly arrived, once by itself and once by way of npm.
      await new Promise((resolve) => setTimeout(resolve, 1_000));
      finishing.socket.write(BODY.slice(20));

      expect(await finishing.heard).toMatch(/^HTTP\/1\.1 200 /);
      expect(await code).toBe(0);
      expect(await hanging.heard).toBe('');
      await expect.poll(() => groupLives(group)).toBe(false);
      expect(await freePort(port)).toBe(port);
    },
    PATIENCE,
  );

  it(
    'leaves no process where the signal comes before it listens',
    async () => {
      const { group, ended } = await npmStart('prestart');
      process.kill(group, 'SIGTERM');
      expect(await codeWithin(ended)).not.toBe('still running');
      await expect.poll(() => groupLives(group)).toBe(false);
    },
    PATIENCE,
  );
});
