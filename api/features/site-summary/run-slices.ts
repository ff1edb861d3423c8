/** Computes the figures of some loops of a site, each once for the versions that it follows from. */
import { type Result, success } from '../../../curves/result.ts';
import { type LoopFigures, worthOfSaved } from '../../../models/site-summary/loop-figures.ts';
import type { Problem } from '../../http/problem.ts';
import { runJob } from '../../http/run-job.ts';
import { type AnswerCache, answerCache } from '../../question/answer-cache.ts';
import type { PumpRecord } from '../../records/pump/kind.ts';
import type { WorkerPool } from '../../threads/worker-pool.ts';
import { type StoredPump, type SummarySlice, siteSummaryJob } from './job.ts';
import type { SummaryLoop } from './page-of-loops.ts';

/** By the versions of all that the figures follow from; null figures where the equations were not solved. */
export type LoopAnswers = AnswerCache<{ readonly figures: LoopFigures | null }>;

/** Figures of a loop take some hundred bytes. */
const KEPT_LOOPS = 20_000;

export const loopAnswers = (): LoopAnswers => answerCache({ max: KEPT_LOOPS });

/** Loops and pumps of one job: some tenths of a second, between which other long work gets its turn. */
export const SLICE = { loops: 25, pumps: 200, judged: 1_000 } as const;

export interface SliceTerms {
  readonly pumps: readonly PumpRecord[];
  readonly terms: Pick<SummarySlice, 'price' | 'flatPrice' | 'elevation' | 'timeZone' | 'year'>;
  /** The versions of all that the figures of every loop follow from. */
  readonly shared: string;
}

/** One a loop, in their order. */
export async function sliceFigures(
  { workers, answers }: { readonly workers: WorkerPool; readonly answers: LoopAnswers },
  asked: SliceTerms,
  loops: readonly SummaryLoop[],
): Promise<Result<readonly (LoopFigures | null)[], Problem>> {
  const keys = loops.map(({ versions }) => `${asked.shared} ${versions}`);
  const known = keys.map((key) => answers.kept(key));
  const missing = loops.filter((_, place) => known[place] === undefined);
  const worked = await workedOut(workers, asked, missing);
  if (!worked.ok) return worked;
  const computed = worked.value.values();
  return success(
    known.map((before, place) => {
      if (before !== undefined) return before.figures;
      const figures = computed.next().value ?? null;
      answers.keep(keys[place] ?? '', { figures });
      return figures;
    }),
  );
}

/** Job after job, one under way at a time: a second thread stays free for others. */
async function workedOut(
  workers: WorkerPool,
  { pumps, terms }: SliceTerms,
  loops: readonly SummaryLoop[],
): Promise<Result<readonly (LoopFigures | null)[], Problem>> {
  let best: readonly (LoopFigures | null)[] = [];
  if (loops.length === 0) return success(best);
  const slices = loops.map(({ slice }) => slice);
  for (let firstPump = 0; firstPump === 0 || firstPump < pumps.length; firstPump += SLICE.pumps) {
    const some = pumps.slice(firstPump, firstPump + SLICE.pumps).map(modelOf);
    const work = { ...terms, loops: slices, pumps: some, firstPump };
    const done = await runJob(workers, siteSummaryJob, { ready: null, work });
    if (!done.ok) return done;
    const before = best;
    best = done.value.map((figures, place) => withBetter(before[place] ?? null, figures));
  }
  return success(best);
}

const modelOf = ({ id, document, fit }: PumpRecord): StoredPump => ({ id, entered: document, fit });

/** The figures with the larger saving of two sets of pumps. */
function withBetter(before: LoopFigures | null, figures: LoopFigures | null): LoopFigures | null {
  const [one, other] = [before?.otherPump ?? null, figures?.otherPump ?? null];
  if (figures === null || one === null) return figures;
  return other === null || worthOfSaved(one) >= worthOfSaved(other)
    ? { ...figures, otherPump: one }
    : figures;
}
