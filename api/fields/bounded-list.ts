/** Reads a list of limited length, and stops after a few faulty items. */

import { z } from '@hono/zod-openapi';
import type { SchemaContext } from '../units/schema-context.ts';
import { FAULTS_MAX } from './limits.ts';
import { relayIssues } from './relay-issues.ts';

interface Bounds {
  readonly min?: number;
  readonly max: number;
}

/** `item` is asked for late, so that lists may hold what holds them. */
export function boundedList<T>(
  context: SchemaContext,
  item: () => z.ZodType<T>,
  { min = 0, max }: Bounds,
): z.ZodType<T[]> {
  if (context.documented) return min === 0 ? z.array(item()).max(max) : z.array(item()).min(min).max(max);
  const raw = z.array(z.unknown()).min(min).max(max);
  return z.codec(raw, z.array(z.custom<T>()), {
    decode(values, payload) {
      const items: T[] = [];
      let faulty = 0;
      for (const [index, value] of values.entries()) {
        const read = item().safeParse(value);
        if (read.success) items.push(read.data);
        else {
          relayIssues(payload, { issues: read.error.issues, at: [index] });
          faulty += 1;
          if (faulty === FAULTS_MAX) break;
        }
      }
      return items;
    },
    encode: (items) => items.map((value) => z.encode(item(), value)),
  });
}
