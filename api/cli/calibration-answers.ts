/** The answers about calibrations that the document shows. */
import { example } from '../http/examples.ts';

type Ask = (path: string, init?: RequestInit) => Promise<Record<string, unknown>>;

const posting = (document: unknown, headers: Readonly<Record<string, string>> = {}): RequestInit => ({
  method: 'POST',
  headers: { 'Content-Type': 'application/json', ...headers },
  body: JSON.stringify(document),
});

const objectFrom = (value: unknown): object => (typeof value === 'object' && value !== null ? value : {});

/** By file name in openapi/examples; of a flume of its own with this pump installed, which is measured first. */
export async function calibrationAnswers(ask: Ask, pump: string): Promise<ReadonlyMap<string, unknown>> {
  const installed = { pump, count: 1, setting: 80 };
  const flume = { ...objectFrom(example('loop-kelp-flume')), name: 'Kelp flume, measured', installed };
  const { id } = await ask('/v1/loops', posting(flume));
  await ask(`/v1/loops/${id}/readings`, posting(example('readings-calibration')));
  const path = `/v1/loops/${id}/calibration`;
  const request = objectFrom(example('calibration'));
  const told = await ask(path, posting(request));
  await ask(path, posting({ ...request, apply: true }, { 'If-Match': '*' }));
  return new Map<string, unknown>([
    ['answers/calibration.json', told],
    ['answers/calibrations.json', await ask(path)],
  ]);
}
