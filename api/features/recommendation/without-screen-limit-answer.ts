/** Answers and words the choice that only the intake screen forbids. */
import type { z } from '@hono/zod-openapi';
import type { Limits } from '../../../models/loop/limits.ts';
import type { IntakeScreen } from '../../../models/loop/loop.ts';
import type { WithoutScreenLimit } from '../../../models/selection/without-screen-limit.ts';
import type { UnitSystem } from '../../units/unit-system.ts';
import { say, sayNumber } from '../../wording/numbers-in-words.ts';
import { screenWords } from '../../wording/screen-area.ts';
import type { recommendationSchema } from './answer-schema.ts';

type Answer = z.output<ReturnType<typeof recommendationSchema>>['withoutScreenLimit'];
export type WithoutScreenLimitAnswer = NonNullable<Answer>;

export function withoutScreenLimitAnswer(
  { ranked: { candidate, duty, annualCost }, velocities, screen }: WithoutScreenLimit,
  pump: WithoutScreenLimitAnswer['pump'],
): WithoutScreenLimitAnswer {
  const { count, setting, flow, power } = duty;
  return {
    candidate,
    pump,
    count,
    setting,
    flow,
    power,
    annualCost,
    meanVelocity: velocities.mean,
    peakVelocity: velocities.peak,
    screen: screen === null ? null : { length: screen.length, count: screen.count },
  };
}

/** Why the answer is another with the screen, and what screen would lift that; empty where the screen decides nothing. */
export function screenLimitWords(
  answer: Answer,
  {
    limits: { throughSlotVelocity, screenBasis },
    screen,
    currency,
    system,
  }: {
    readonly limits: Limits;
    /** As the loop has it. */
    readonly screen: IntakeScreen | undefined;
    readonly currency: string;
    readonly system: UnitSystem;
  },
): string {
  if (answer === null || screen === undefined || throughSlotVelocity === null) return '';
  const { pump, count, setting, annualCost, power } = answer;
  const pumps = count === 1 ? pump.name : `${count} x ${pump.name}`;
  const cost =
    annualCost === null ? say(power, 'power', system) : `${sayNumber(annualCost)} ${currency} a year`;
  const velocity = screenBasis === 'mean' ? answer.meanVelocity : answer.peakVelocity;
  const forbidden = `The intake screen decides: ${pumps} at setting ${sayNumber(setting)} % would do for ${cost}, but draws ${say(velocity, 'velocity', system)} through its part-clogged openings, above ${say(throughSlotVelocity, 'velocity', system)}`;
  if (answer.screen === null) return ` ${forbidden}; no thousand screens of its kind would lift that.`;
  return ` ${forbidden}; ${screenWords({ ...screen, ...answer.screen }, system)}, would lift that.`;
}
