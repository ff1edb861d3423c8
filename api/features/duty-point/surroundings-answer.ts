/** What a duty does to the animals, the temperature and the people around a loop, as answers carry it. */
import type { z } from '@hono/zod-openapi';
import type { ExactDuty } from '../../../models/duty/duty-point.ts';
import { coveredIntake } from '../../../models/intake/covered-intake.ts';
import { screenVelocities } from '../../../models/intake/screen.ts';
import { pumpAtSetting } from '../../../models/pump/pump-at-setting.ts';
import type { CriteriaContext } from '../../../models/selection/criteria.ts';
import type { dutySchema } from './duty-schema.ts';

type Duty = z.output<ReturnType<typeof dutySchema>>;

export function surroundingsAnswer(
  { loop, pump, limits: { cloggedFraction }, elevation }: CriteriaContext,
  duty: ExactDuty,
): Pick<Duty, 'screen' | 'coveredIntake'> {
  const covered = coveredIntake(loop, pumpAtSetting(pump, duty), { elevation });
  const screen = loop.entered.intake?.screen;
  if (screen === undefined) return { screen: null, coveredIntake: covered };
  const { mean, peak } = screenVelocities({ screen, flow: duty.flow, cloggedFraction });
  return {
    screen: { meanVelocity: mean, peakVelocity: peak, cloggedFraction },
    coveredIntake: covered,
  };
}
