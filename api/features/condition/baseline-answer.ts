/** Answers the baseline of a loop. */
import type { z } from '@hono/zod-openapi';
import type { ConditionReport } from '../../../models/condition/condition-report.ts';
import { shareOf } from '../../../models/condition/gauge-report.ts';
import type { baselineSchema } from './baseline-schema.ts';
import { instantText } from './instant-text.ts';

type Answer = z.output<ReturnType<typeof baselineSchema>>;

export function baselineAnswer(report: ConditionReport): Answer | undefined {
  const { baseline, cleaningEffect } = report;
  if (baseline === null) return undefined;
  const { from, to, startedBy, dayCount, requiredDayCount, complete } = baseline;
  return {
    ...{ from: instantText(from), to: instantText(to) },
    ...{ startedBy, dayCount, requiredDayCount, complete },
    cleaningEffect:
      cleaningEffect.length === 0
        ? undefined
        : cleaningEffect.map(({ gauge, change, wonBack }) => ({
            ...{ measure: gauge.measure, outlet: gauge.outlet ?? undefined },
            change: shareOf(gauge, change),
            wonBack: wonBack === null ? undefined : shareOf(gauge, wonBack),
          })),
  };
}
