/** Computes the best candidates of the same question without trims or assurance, to compare with. */
import { type Result, success } from '../../../curves/result.ts';
import type { Problem } from '../../http/problem.ts';
import type { DutyAnswer } from '../duty-point/duty-answer.ts';
import type { RecommendationFigures, RecommendationWork } from './job.ts';

export interface Baselines {
  /** As built, where the question is about trimmed pipework. */
  readonly asBuilt: DutyAnswer | null;
  /** Without the assurance, where the question states one. */
  readonly unassured: DutyAnswer | null;
}

export async function computeBaselines(
  work: RecommendationWork,
  compute: (work: RecommendationWork) => Promise<Result<RecommendationFigures, Problem>>,
): Promise<Result<Baselines, Problem>> {
  const bestWith = async (
    other: Partial<RecommendationWork>,
  ): Promise<Result<DutyAnswer | null, Problem>> => {
    const done = await compute({ ...work, ...other, detail: 'plain', rankingLimit: 1 });
    return done.ok ? success(done.value.ranking[0] ?? null) : done;
  };
  const isTrimmed = work.balancing === 'trimmed';
  const asBuilt = isTrimmed ? await bestWith({ balancing: 'as-built' }) : success(null);
  if (!asBuilt.ok) return asBuilt;
  const isAssured = work.assurance !== null;
  const unassured = isAssured ? await bestWith({ assurance: null }) : success(null);
  if (!unassured.ok) return unassured;
  return success({ asBuilt: asBuilt.value, unassured: unassured.value });
}
