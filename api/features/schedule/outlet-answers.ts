/** Answers what each outlet receives in a phase. */
import type { z } from '@hono/zod-openapi';
import type { CompiledLoop } from '../../../models/network/compiled-loop.ts';
import { outletFigures } from '../../../models/network/margins.ts';
import { EQUAL } from '../../../models/selection/criterion.ts';
import type { servedOutlets } from './outlet-schema.ts';

type Outlets = z.output<ReturnType<typeof servedOutlets>>;

/** With the shortage of each where its phase is infeasible. */
export const outletAnswers = (
  { system }: Pick<CompiledLoop, 'system'>,
  outletFlows: readonly number[],
  isFeasible: boolean,
): Outlets =>
  outletFigures(system.outlets, outletFlows).map(({ name, flow, requiredFlow, margin, velocity }) => ({
    ...{ name, flow, requiredFlow, margin, velocity },
    ...(isFeasible ? {} : { shortage: shortageOf(flow, requiredFlow) }),
  }));

/** [m3/s]; 0 where the required flow is met, or none is required. */
const shortageOf = (flow: number, required: number | null): number =>
  required === null || flow >= required * (1 - EQUAL) ? 0 : required - flow;
