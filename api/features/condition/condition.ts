/** Answers the condition of a stored loop. */
import { type Result, success } from '../../../curves/result.ts';
import { basisOf } from '../../fields/basis.ts';
import type { Problem } from '../../http/problem.ts';
import type { LoopRecord } from '../../records/loop/kind.ts';
import { SCHEDULES } from '../../records/schedule/kind.ts';
import type { UnitSystem } from '../../units/unit-system.ts';
import { type AnsweredLoop, conditionAnswer } from './answer.ts';
import { dueForCleaning } from './due-for-cleaning.ts';
import { type ConditionAsked, type ConditionDeps, type JudgedLoop, judgeLoop } from './judge-loop.ts';

interface Question {
  readonly loop: LoopRecord;
  readonly asked: ConditionAsked;
  readonly system: UnitSystem;
}

export async function answerCondition(
  deps: ConditionDeps,
  question: Question,
): Promise<Result<ReturnType<typeof answerOf>, Problem>> {
  const judged = await judgeLoop(deps, question);
  if (!judged.ok) return judged;
  const { store, clock } = deps;
  const { loop, asked } = question;
  const schedule = (await store.of(SCHEDULES).get(loop.id)) ?? null;
  const isOfNow = asked.from === undefined && asked.to === undefined;
  const now = clock().getTime();
  const cleaning = isOfNow ? await dueForCleaning(store, { ...judged.value, now }) : null;
  return success(answerOf(judged.value, { ...question, schedule, cleaning }));
}

function answerOf(judged: JudgedLoop, rest: Omit<AnsweredLoop, 'basis'>) {
  const { pump, site, sources } = judged;
  const basis = basisOf({ loop: rest.loop, pumps: [pump] });
  return {
    body: conditionAnswer(judged, { ...rest, basis }),
    validator: {
      basis: { ...basis, sources, site: site.version, schedule: rest.schedule?.version, due: rest.cleaning },
    },
  };
}
