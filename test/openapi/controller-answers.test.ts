/** The controller script against services that are dead, hang, refuse or lie. */
import type { RequestListener } from 'node:http';
import { createServer, type Server, type Socket } from 'node:net';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type ControllerBench, controllerBench, setpoint } from './controller-bench.ts';

let bench: ControllerBench;
beforeEach(() => {
  bench = controllerBench();
});
afterEach(() => bench.dispose());

const FELL_BACK = { code: 1, applied: ['55'] };

const whole = JSON.stringify(setpoint(70));
const withText = (setting: string) => `{"setting":${setting},"feasible":true,"fallback":{"setting":60}}`;

describe('an answer that is no setpoint', () => {
  it.each<[string, string | Buffer]>([
    ['nothing', ''],
    ['a blank', ' '],
    ['a byte of zero', Buffer.from([0])],
    ['zeros alone', Buffer.alloc(300)],
    ['a zero within the number', Buffer.from(withText('7\u00000'))],
    ['a zero behind the document', Buffer.from(`${whole}\u0000`)],
    ['the setting alone, without its document', '70'],
    ['a text', '"70"'],
    ['a list', '[70]'],
    ['null', 'null'],
    ['an empty document', '{}'],
    ['a document without a setting', JSON.stringify(setpoint(undefined))],
    ['a document without feasible', JSON.stringify(setpoint(70, { feasible: undefined }))],
    ['feasible as a text', JSON.stringify(setpoint(70, { feasible: 'true' }))],
    ['feasible as a number', JSON.stringify(setpoint(70, { feasible: 1 }))],
    ['null as the setting', JSON.stringify(setpoint(null))],
    ['a setting as a text', JSON.stringify(setpoint('70'))],
    ['a setting in a list', JSON.stringify(setpoint([70]))],
    ['a setting deeper down alone', `{"answer":${whole}}`],
    ['a setting below 0', withText('-5')],
    ['a setting above 100', withText('101')],
    ['a setting just above 100', withText('100.0000001')],
    ['an exponent', withText('7e1')],
    ['not a number', withText('NaN')],
    ['infinity', withText('Infinity')],
    ['hexadecimal', withText('0x46')],
    ['a leading zero', withText('070')],
    ['a point without digits', withText('70.')],
    ['a comma for a point', withText('70,5')],
    ['other digits', withText('٧٠')],
    ['two numbers', withText('70 80')],
    ['two points', withText('7.0.1')],
    ['a number without end', withText('7'.repeat(400))],
    ['two settings', `{"setting":70,"setting":5,"feasible":true}`],
    ['a command', withText('$(reboot)')],
    ['a quote and a command', "70'; reboot; '"],
    ['a page', '<html>70</html>'],
    ['half of the document', whole.slice(0, whole.length / 2)],
    ['all but the last brace', whole.slice(0, -1)],
    ['a document with more behind it', `${whole}70`],
    ['a trailing comma', withText('70').replace('}}', '},}')],
    ['a line break within a text', whole.replace('the ', 'the\n')],
    ['braces without end', '{"a":'.repeat(100_000)],
    ['lists 110 deep', `{"a":${'['.repeat(110)}${']'.repeat(110)},${whole.slice(1)}`],
    ['a megabyte', 'x'.repeat(1_000_000)],
    ['a megabyte of line breaks', '\n'.repeat(1_000_000)],
    ['a good document within a megabyte', `${' '.repeat(1_000_000)}${whole}`],
    ['a mark of byte order', `\ufeff${whole}`],
    ['another coding of characters', Buffer.from(whole, 'utf16le')],
  ])('leads to the fallback: %s', async (_what, body) => {
    expect(await bench.run({ SERVICE: await bench.answering(body) })).toMatchObject(FELL_BACK);
  });
});

describe('a status other than 200', () => {
  it.each([201, 204, 304, 401, 403, 404, 422, 429, 500, 503])(
    'leads to the fallback, whatever the body: %i',
    async (status) => {
      expect(await bench.run({ SERVICE: await bench.answering(whole, status) })).toMatchObject(FELL_BACK);
    },
  );

  it('is told with the detail of its problem', async () => {
    const detail = 'There is no loop "kelp-flume". See GET /v1/loops.';
    const problem = { type: 'urn:loopwright:problem:not-found', status: 404, detail };
    const { errors } = await bench.run({ SERVICE: await bench.answering(JSON.stringify(problem), 404) });
    expect(errors).toContain(`the service answered 404: ${detail}; falling back to 55\n`);
  });

  it('does not lead the script elsewhere', async () => {
    const good = await bench.answering(whole);
    const SERVICE = await bench.listening(
      (_request, response) => void response.writeHead(307, { Location: good }).end(),
    );
    expect(await bench.run({ SERVICE })).toMatchObject(FELL_BACK);
  });
});

describe('a service', () => {
  it.each<[string, RequestListener]>([
    ['hangs', () => {}],
    ['hangs up', (request) => void request.destroy()],
    [
      'stops half way',
      (_request, response) => {
        response.writeHead(200, { 'Content-Length': String(whole.length + 1) });
        response.write(whole);
      },
    ],
    [
      'hangs up half way',
      (request, response) => {
        response.writeHead(200, { 'Content-Length': String(whole.length + 1) });
        response.write(whole, () => request.destroy());
      },
    ],
    [
      'never ends its answer',
      (_request, response) => {
        const send = () => {
          while (response.write(' '.repeat(65_536)));
        };
        response.on('drain', send);
        send();
      },
    ],
  ])('that %s leads to the fallback', async (_what, answer) => {
    expect(await bench.run({ SERVICE: await bench.listening(answer), TIMEOUT: '1' })).toMatchObject(
      FELL_BACK,
    );
  });

  it('that is dead leads to the fallback, and the log says so', async () => {
    const { code, applied, errors } = await bench.run({ SERVICE: 'http://127.0.0.1:1' });
    expect({ code, applied }).toEqual(FELL_BACK);
    expect(errors).toContain('no whole answer from http://127.0.0.1:1; falling back to 55');
  });

  it.each(['ftp://127.0.0.1', 'file:///etc/passwd?', '-o/tmp/x', 'nowhere', 'http://'])(
    'of the address %s is none',
    async (SERVICE) => {
      expect(await bench.run({ SERVICE })).toMatchObject(FELL_BACK);
    },
  );

  it('that does not speak HTTP leads to the fallback', async () => {
    const server: Server = createServer((socket: Socket) => {
      socket.on('error', () => {}).on('data', () => socket.end(`${whole}\n`));
    });
    await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
    bench.endsToo({ close: () => new Promise((resolve) => server.close(() => resolve())) });
    const address = server.address();
    const port = typeof address === 'object' && address !== null ? address.port : 0;
    expect(await bench.run({ SERVICE: `http://127.0.0.1:${port}` })).toMatchObject(FELL_BACK);
  });
});
