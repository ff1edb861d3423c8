/** Computes the exposure to a leak, from the request to its answer. */

import type { z } from '@hono/zod-openapi';
import { failed, type Result, success } from '../../../curves/result.ts';
import { SECONDS_PER_MINUTE } from '../../../models/calendar/time-factors.ts';
import { leakCautions } from '../../../models/cautions/installation.ts';
import { type LeakFailure, type LeakFigures, leak } from '../../../models/hazards/leak.ts';
import { basisOf } from '../../fields/basis.ts';
import type { WithoutUnits } from '../../http/answer-form.ts';
import { invalidRequest, type Problem } from '../../http/problem.ts';
import type { UnitSystem } from '../../units/unit-system.ts';
import { say, sayNumber } from '../../wording/numbers-in-words.ts';
import type { leakSchema } from './answer-schema.ts';
import type { leakRequest } from './request-schema.ts';

type Request = z.output<ReturnType<typeof leakRequest>>;
type Answer = WithoutUnits<z.output<ReturnType<typeof leakSchema>>>;

export function computeLeak(request: Request, system: UnitSystem): Result<Answer, Problem> {
  const { drop = 0, level = null, floorArea = null, ...asked } = request;
  const figures = leak({ ...asked, drop, level, floorArea });
  if (!figures.ok) return failed(leakProblem(figures.failure, system));
  return success({
    ...figures.value,
    summary: sentenceOf(figures.value, system),
    cautions: [...leakCautions()],
    basis: basisOf({ loop: null, pumps: [] }),
  });
}

function leakProblem(failure: LeakFailure, system: UnitSystem): Problem {
  switch (failure.code) {
    case 'level-above-surface': {
      const detail = `must be at most ${say(failure.depth, 'depth', system)}, the depth of the hole`;
      return invalidRequest([{ pointer: '/level', detail }]);
    }
    case 'opening-wider-than-tank': {
      const detail = `is ${say(failure.openingArea, 'area', system)} wide, as much as the tank or more`;
      return invalidRequest([{ pointer: '/opening', detail }]);
    }
  }
}

function sentenceOf({ flow, timeToHole, volume, floodDepth }: LeakFigures, system: UnitSystem): string {
  const minutes = sayNumber(timeToHole / SECONDS_PER_MINUTE);
  const depth = floodDepth === null ? '' : `, ${say(floodDepth, 'depth', system)} deep on the floor`;
  return `${say(flow, 'flow', system)} leave at first; after ${minutes} min ${say(volume, 'volume', system)} are out${depth}.`;
}
