/** Calls the service as any program would. */

/** The service answered with a problem, which no demo can correct. */
export class CallFailed extends Error {}

export interface Service {
  get(path: string): Promise<unknown>;
  send(method: 'POST' | 'PUT', path: string, body: unknown): Promise<unknown>;
}

export function serviceAt(url: string): Service {
  const call = async (path: string, init: RequestInit): Promise<unknown> => {
    const response = await fetch(`${url}${path}`, init);
    const body: unknown = await response.json();
    if (!response.ok) throw new CallFailed(`${init.method} ${path}: ${JSON.stringify(body)}`);
    return body;
  };
  return {
    get: (path) => call(path, { method: 'GET' }),
    send: (method, path, body) =>
      call(path, {
        method,
        headers: { 'Content-Type': 'application/json', ...(method === 'PUT' ? { 'If-Match': '*' } : {}) },
        body: JSON.stringify(body),
      }),
  };
}
