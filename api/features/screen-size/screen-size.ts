/** Computes the size of an intake screen, from the request to its answer. */

import type { z } from '@hono/zod-openapi';
import { failed, type Result, success } from '../../../curves/result.ts';
import { sizedScreenCautions } from '../../../models/cautions/intake.ts';
import { LONGEST_IN_DIAMETERS, type SizedScreen, sizeScreen } from '../../../models/intake/screen-size.ts';
import { basisOf } from '../../fields/basis.ts';
import type { WithoutUnits } from '../../http/answer-form.ts';
import { type Problem, problem } from '../../http/problem.ts';
import type { UnitSystem } from '../../units/unit-system.ts';
import { say } from '../../wording/numbers-in-words.ts';
import { screenWords } from '../../wording/screen-area.ts';
import type { screenSizeSchema } from './answer-schema.ts';
import type { screenSizeRequest } from './request-schema.ts';

type Request = z.output<ReturnType<typeof screenSizeRequest>>;
type Answer = WithoutUnits<z.output<ReturnType<typeof screenSizeSchema>>>;

export function computeScreenSize(request: Request, system: UnitSystem): Result<Answer, Problem> {
  const { flow, cloggedFraction, throughSlotVelocity: limit } = request;
  const sized = sizeScreen({ screen: request, flow, cloggedFraction, limit });
  if (!sized.ok) {
    const { limit: most, actual } = sized.failure;
    const detail = `It would take ${actual} screens, more than ${most}: enter a larger diameter.`;
    const errors = [{ pointer: '/diameter', detail: `would take ${actual} screens` }];
    return failed(problem('limit-exceeded', detail, { limit: most, actual, errors }));
  }
  const { screen, velocities, singleDiameter } = sized.value;
  return success({
    shape: screen.shape,
    length: screen.length,
    count: screen.count,
    diameter: singleDiameter,
    openFraction: screen.openFraction,
    meanVelocity: velocities.mean,
    peakVelocity: velocities.peak,
    summary: sentenceOf(sized.value, request, system),
    cautions: [...sizedScreenCautions({ ...request, count: screen.count })],
    basis: basisOf({ loop: null, pumps: [] }),
  });
}

function sentenceOf(
  { screen, singleDiameter }: SizedScreen,
  { flow, throughSlotVelocity }: Request,
  system: UnitSystem,
): string {
  const words = screenWords(screen, system);
  const keeps = `${screen.count === 1 ? 'keeps' : 'keep'} ${say(flow, 'flow', system)} at or below ${say(throughSlotVelocity, 'velocity', system)}`;
  const first = `${words.charAt(0).toUpperCase()}${words.slice(1)}, ${keeps}.`;
  if (singleDiameter === null) return first;
  const length = LONGEST_IN_DIAMETERS * singleDiameter;
  return `${first} No length of a single one would; one of ${say(singleDiameter, 'diameter', system)} and ${say(length, 'length', system)} would.`;
}
