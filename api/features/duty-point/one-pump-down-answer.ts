/** What a loop still gets with one pump at rest, as answers carry it. */
import type { z } from '@hono/zod-openapi';
import type { ExactDuty } from '../../../models/duty/duty-point.ts';
import { onePumpDown } from '../../../models/duty/one-pump-down.ts';
import { outletFigures } from '../../../models/network/margins.ts';
import { solving } from '../../../models/network/solve-failure.ts';
import { type CriteriaContext, EQUAL } from '../../../models/selection/criteria.ts';
import type { dutySchema } from './duty-schema.ts';

export type OnePumpDownAnswer = z.output<ReturnType<typeof dutySchema>>['onePumpDown'];

export function onePumpDownAnswer(
  { loop, pump }: Pick<CriteriaContext, 'loop' | 'pump'>,
  duty: ExactDuty,
): OnePumpDownAnswer {
  if (duty.flow === 0) return null;
  const down = solving(() => onePumpDown(loop, pump, duty));
  if (!down.ok || down.value === null) return null;
  const { outletFlows, ...figures } = down.value;
  const outlets = outletFigures(loop.system.outlets, outletFlows);
  return {
    ...figures,
    served: outlets.every(({ flow, requiredFlow }) => flow >= (requiredFlow ?? -Infinity) * (1 - EQUAL)),
    outlets: outlets.map(({ name, flow, requiredFlow, margin }) => ({ name, flow, requiredFlow, margin })),
  };
}
