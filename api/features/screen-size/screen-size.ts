/** Computes the size of an intake screen, from the request to its answer. */

import type { z } from '@hono/zod-openapi';
import { failed, type Result, success } from '../../../curves/result.ts';
import { sizedScreenCautions } from '../../../models/cautions/intake.ts';
import { LONGEST_IN_DIAMETERS, type SizedScreen, sizeScreen } from '../../../models/intake/screen-size.ts';
import type { IntakeScreen } from '../../../models/loop/loop.ts';
import { basisOf } from '../../fields/basis.ts';
import type { WithoutUnits } from '../../http/answer-form.ts';
import { type Problem, problem } from '../../http/problem.ts';
import type { UnitSystem } from '../../units/unit-system.ts';
import { sayLength } from '../../wording/length.ts';
import { say } from '../../wording/numbers-in-words.ts';
import type { screenSizeSchema } from './answer-schema.ts';
import type { screenSizeRequest } from './request-schema.ts';

/** Of computed figures, and of those that were entered. */
const DIGITS = 3;
const ENTERED_DIGITS = 6;

type Request = z.output<ReturnType<typeof screenSizeRequest>>;
type Answer = WithoutUnits<z.output<ReturnType<typeof screenSizeSchema>>>;

export function computeScreenSize(request: Request, system: UnitSystem): Result<Answer, Problem> {
  const { flow, cloggedFraction, throughSlotVelocity: limit } = request;
  const sized = sizeScreen({ screen: request, flow, cloggedFraction, limit });
  if (!sized.ok) {
    const { limit: most, actual } = sized.failure;
    const detail = `The flow needs ${actual} screens; at most ${most} are computed. Enter a larger diameter.`;
    const errors = [{ pointer: '/diameter', detail: `needs ${actual} screens` }];
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
  const length = sayLength(screen.length, system, 'up');
  if (singleDiameter === null) {
    const drawn = say(flow, 'flow', system, ENTERED_DIGITS);
    const limit = say(throughSlotVelocity, 'velocity', system, DIGITS);
    return `A ${faceWords(screen, system)}, ${length} long, keeps ${drawn} at or below ${limit}.`;
  }
  const several = `${countWord(screen.count)}, each ${length} long, are.`;
  const wide = sayLength(singleDiameter, system, 'up');
  const long = sayLength(LONGEST_IN_DIAMETERS * singleDiameter, system, 'up');
  return `No single ${faceWords(screen, system)} is enough. ${several} One of ${wide}, ${long} long, is as well.`;
}

/** The sizes that were entered. */
function faceWords(screen: IntakeScreen, system: UnitSystem): string {
  switch (screen.shape) {
    case 'cylinder':
      return `cylinder of ${sayLength(screen.diameter, system)}`;
    case 'flat':
      return `flat screen ${sayLength(screen.width, system)} wide`;
    case 'box':
      return `box ${sayLength(screen.width, system)} wide and ${sayLength(screen.height, system)} high`;
  }
}

const COUNTS = ['', '', 'Two', 'Three', 'Four', 'Five', 'Six', 'Seven', 'Eight', 'Nine'];

/** In letters up to nine. */
const countWord = (count: number): string => COUNTS[count] ?? String(count);
