/** Passes on the issues of an inner schema, for a codec that runs it itself. */
import type { z } from '@hono/zod-openapi';

export function relayIssues(
  payload: z.core.ParsePayload,
  { issues, at = [] }: { issues: readonly z.core.$ZodIssue[]; at?: readonly PropertyKey[] },
): void {
  for (const issue of issues)
    payload.issues.push({ ...issue, input: undefined, path: [...at, ...issue.path] });
}
