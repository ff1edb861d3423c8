/** Shows a design as lines for a terminal. */
import { z } from '@hono/zod-openapi';
import { nullable } from '../../fields/nullable.ts';

export const designView = z.object({
  best: nullable(
    z.object({
      runs: z.array(z.object({ pointer: z.string(), pipe: z.unknown(), velocity: z.number() })),
      trims: z.array(z.object({ pointer: z.string(), kv: nullable(z.number()) })),
      loop: z.object({ name: z.string() }),
    }),
  ),
  summary: z.string(),
  units: z.object({ velocity: z.string() }),
});

const pipeWords = (pipe: unknown): string => (typeof pipe === 'string' ? pipe : JSON.stringify(pipe));

export function designLines({ best, summary, units }: z.output<typeof designView>): readonly string[] {
  if (best === null) return [`  ${summary}`];
  const width = Math.max(...[...best.runs, ...best.trims].map(({ pointer }) => pointer.length));
  return [
    `${best.loop.name}, pipes and pump chosen together:`,
    ...best.runs.map(
      ({ pointer, pipe, velocity }) =>
        `    ${pointer.padEnd(width)}  ${pipeWords(pipe)}, ${velocity.toFixed(2)} ${units.velocity}`,
    ),
    ...best.trims.map(
      ({ pointer, kv }) => `    ${pointer.padEnd(width)}  trim, ${kv === null ? 'closed' : `Kv ${kv}`}`,
    ),
    `  ${summary}`,
  ];
}
