/** What trimming saves against the loop as built, as answers carry it. */
import type { z } from '@hono/zod-openapi';
import type { DutyAnswer } from '../duty-point/duty-answer.ts';
import type { recommendationSchema } from './answer-schema.ts';

export type AgainstAsBuilt = z.output<ReturnType<typeof recommendationSchema>>['againstAsBuilt'];

/** Null where one of the two serves at no setting. */
export function againstAsBuilt(trimmed: DutyAnswer | null, asBuilt: DutyAnswer | null): AgainstAsBuilt {
  if (trimmed === null || asBuilt === null) return null;
  const { candidate, pump, count, setting, annualEnergy, annualCost } = asBuilt;
  return {
    ...{ candidate, pump, count, setting, annualEnergy, annualCost },
    energySaving: annualEnergy - trimmed.annualEnergy,
    costSaving: annualCost === null || trimmed.annualCost === null ? null : annualCost - trimmed.annualCost,
  };
}
