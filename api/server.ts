/** Starts and stops the HTTP listener with its timeouts. */
import { randomUUID } from 'node:crypto';
import { createServer, type Server } from 'node:http';
import { getRequestListener } from '@hono/node-server';
import { HEAD_MAX, unreadableAnswer } from './http/unreadable-request.ts';

const LIMITS = {
  maxHeaderSize: HEAD_MAX,
  /** To receive all headers of a request. */
  headersTimeout: 10_000,
  /** To receive a whole request. */
  requestTimeout: 30_000,
  /** An idle connection is kept for this long; above the 60 s of common load balancers, so that they close first. */
  keepAliveTimeout: 65_000,
  connectionsCheckingInterval: 5_000,
} as const;

/** How long requests under way may take to finish when the service stops; the process as a whole has 9 s. */
const STOP_TIMEOUT_MS = 7_000;

/** How often a stopping service closes connections that have become idle. */
const CLOSE_IDLE_EVERY_MS = 50;

export interface RunningServer {
  readonly url: string;
  /** Accepts nothing new, lets what is under way finish within a limit, then resolves. */
  stop(): Promise<void>;
}

interface Listening {
  readonly fetch: (request: Request, env: object) => Response | Promise<Response>;
  readonly host: string;
  readonly port: number;
}

const urlOf = (host: string, port: number): string =>
  `http://${host.includes(':') ? `[${host}]` : host}:${port}`;

/** What the parser refuses never reaches the application, and is answered here. */
function answerUnreadable(server: Server): void {
  server.on('clientError', (error: NodeJS.ErrnoException, socket) => {
    if (error.code === 'ECONNRESET' || !socket.writable) return socket.destroy();
    return socket.end(unreadableAnswer(error, randomUUID()));
  });
}

/** Rejects when the address cannot be listened on. */
export async function startServer({ fetch, host, port }: Listening): Promise<RunningServer> {
  const server = createServer(LIMITS, getRequestListener(fetch));
  answerUnreadable(server);
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject);
    server.listen({ host, port }, () => {
      server.off('error', reject);
      resolve();
    });
  });
  const address = server.address();
  const actualPort = typeof address === 'object' && address !== null ? address.port : port;
  return {
    url: urlOf(host, actualPort),
    async stop() {
      const deadline = setTimeout(() => server.closeAllConnections(), STOP_TIMEOUT_MS);
      // A connection whose last request ends after the stop began would otherwise be kept alive for its full time.
      const closeIdle = setInterval(() => server.closeIdleConnections(), CLOSE_IDLE_EVERY_MS);
      await new Promise<void>((resolve) => server.close(() => resolve()));
      clearTimeout(deadline);
      clearInterval(closeIdle);
    },
  };
}
