/** An app whose flume has its pump installed, and readings sent to it. */
import { expect } from 'vitest';
import { created, example, type Json, jsonOf, sent } from '../../requests.ts';
import { type StockedApp, stockedApp } from '../../stocked-app.ts';

export interface MeasuredLoop extends StockedApp {
  readonly readings: string;
  readonly condition: string;
}

export async function measuredLoop(change: Json = {}): Promise<MeasuredLoop> {
  const app = await stockedApp();
  const installed = { pump: app.pumpId, count: 1, setting: 80, checkValves: true };
  const document = { ...example('loop-kelp-flume.json'), installed, ...change };
  const loopId = await created(app, '/v1/loops', document);
  const loop = `/v1/loops/${loopId}`;
  return { ...app, loopId, loop, readings: `${loop}/readings`, condition: `${loop}/condition` };
}

export const posted = ({ call }: StockedApp, path: string, readings: unknown): Promise<Response> =>
  call(path, sent('POST', { readings }));

export const table = ({ call }: StockedApp, path: string, text: string): Promise<Response> =>
  call(path, { method: 'POST', headers: { 'Content-Type': 'text/csv' }, body: text });

/** Readings that must be taken in. */
export async function taken(response: Response): Promise<Json> {
  const body = await jsonOf(response);
  expect(response.status, JSON.stringify(body)).toBe(201);
  return body;
}
