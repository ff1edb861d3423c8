/** The answers about routine checks that the document shows. */
import { example } from '../http/examples.ts';

type Ask = (path: string, init?: RequestInit) => Promise<Record<string, unknown>>;

const posting = (document: unknown): RequestInit => ({
  method: 'POST',
  headers: { 'Content-Type': 'application/json' },
  body: JSON.stringify(document),
});

const objectFrom = (value: unknown): object => (typeof value === 'object' && value !== null ? value : {});

/** By file name in openapi/examples; of a loop that has a pump installed. */
export async function maintenanceAnswers(ask: Ask, loop: string): Promise<ReadonlyMap<string, unknown>> {
  const tasks = '/v1/maintenance-tasks';
  const task = { ...objectFrom(example('maintenance-task')), loop };
  const { id } = await ask(tasks, posting(task));
  const completion = await ask(`${tasks}/${id}/completions`, posting(example('completion')));
  const starter = await ask(`/v1/loops/${loop}/starter-tasks`, posting(example('starter-tasks')));
  return new Map<string, unknown>([
    ['answers/completion.json', completion],
    ['answers/completions.json', await ask(`${tasks}/${id}/completions`)],
    ['answers/maintenance-task.json', await ask(`${tasks}/${id}`)],
    ['answers/maintenance-tasks.json', await ask(`${tasks}?limit=3`)],
    ['answers/starter-tasks.json', starter],
  ]);
}
