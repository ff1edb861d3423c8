/** What comes over a socket that no application can be asked about: heads too large, garbage, clients that go away. */
import { connect } from 'node:net';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type RunningServer, startServer } from '../../api/server.ts';
import { type AppUnderTest, appUnderTest } from './app-under-test.ts';
import { problemAnswer } from './read-answers.ts';

let app: AppUnderTest;
let server: RunningServer;
beforeAll(async () => {
  app = await appUnderTest();
  server = await startServer({ fetch: app.api.app.fetch, host: '127.0.0.1', port: 0 });
});
afterAll(() => server.stop());

/** Sends bytes as they are; gives all that comes back until the other side hangs up. */
function spoken(text: string): Promise<string> {
  const port = Number(new URL(server.url).port);
  return new Promise((resolve, reject) => {
    let heard = '';
    const socket = connect(port, '127.0.0.1', () => socket.write(text));
    socket.setEncoding('utf8');
    socket.on('data', (piece) => {
      heard += String(piece);
    });
    socket.on('close', () => resolve(heard)).on('error', reject);
  });
}

async function problemSaid(text: string) {
  const heard = await spoken(text);
  const [head = '', body = ''] = heard.split('\r\n\r\n');
  expect(head).toMatch(/content-type: application\/problem\+json/i);
  const problem = problemAnswer.parse(JSON.parse(body));
  expect(head).toMatch(new RegExp(`^HTTP/1.1 ${problem.status} `));
  expect(head).toMatch(new RegExp(`x-request-id: ${problem.requestId}`, 'i'));
  return problem;
}

const HOST = 'Host: 127.0.0.1\r\nConnection: close\r\n';

describe('a listener', () => {
  it('answers a head that is too large with a problem', async () => {
    const large = `GET /v1/site?x=1 HTTP/1.1\r\n${HOST}X-Long: ${'a'.repeat(40_000)}\r\n\r\n`;
    const problem = await problemSaid(large);
    expect(problem).toMatchObject({ status: 431, code: 'headers-too-large', limit: 32 * 1024 });
  });

  it('answers an address that is too long by its own limit, with the application', async () => {
    const long = `GET /v1/site?x=${'a'.repeat(20_000)} HTTP/1.1\r\n${HOST}\r\n`;
    const problem = await problemSaid(long);
    expect(problem).toMatchObject({ status: 414, code: 'url-too-long', limit: 8192, instance: '/v1/site' });
  });

  it.each([
    'garbage\r\n\r\n',
    'GET /v1/site HTTP/9.9\r\n\r\n',
    `GET /v1/site HTTP/1.1\r\n${HOST}no header\r\n\r\n`,
  ])('answers %j with a problem', async (text) => {
    expect(await problemSaid(text)).toMatchObject({ status: 400, code: 'malformed-request' });
  });

  it.each([
    ['with a length', 'Content-Length: 100\r\n\r\n{"name":'],
    ['in pieces', 'Transfer-Encoding: chunked\r\n\r\n5\r\n{"nam\r\n'],
  ])('takes a client that goes away amid a body %s for no fault of its own', async (_, rest) => {
    const before = app.logLines().length;
    const port = Number(new URL(server.url).port);
    const socket = connect(port, '127.0.0.1', () => {
      socket.write(`POST /v1/pumps HTTP/1.1\r\n${HOST}Content-Type: application/json\r\n${rest}`);
      setTimeout(() => socket.destroy(), 50);
    });
    await expect.poll(() => app.logLines().slice(before).length).toBeGreaterThan(0);
    const lines = app.logLines().slice(before);
    expect(lines.map(({ level, status }) => [level, status])).toEqual([['info', 400]]);
  });
});
