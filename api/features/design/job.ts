/** The job of a design searches sizes, pumps and settings, and computes the duty of the best in its loop. */
import { type Result, success } from '../../../curves/result.ts';
import type { Caution } from '../../../models/cautions/catalogue.ts';
import { designCautions } from '../../../models/cautions/designs.ts';
import { gravityCautions } from '../../../models/cautions/gravity.ts';
import { loopCautions } from '../../../models/cautions/loop-cautions.ts';
import type { DesignFailure } from '../../../models/designs/design-failure.ts';
import { countRuns, listsOf } from '../../../models/designs/design-loop.ts';
import { type Designs, designs } from '../../../models/designs/designs.ts';
import type { BestDesign, DesignQuestion, DesignRow } from '../../../models/designs/search-designs.ts';
import { dutyPoint } from '../../../models/duty/duty-point.ts';
import { sampleLoop } from '../../../models/duty/sampled-loop.ts';
import { type CompiledLoop, compileLoop } from '../../../models/network/compiled-loop.ts';
import { solving, type Unsolved } from '../../../models/network/solve-failure.ts';
import { type PumpAtSetting, pumpAtSetting } from '../../../models/pump/pump-at-setting.ts';
import { gridSize } from '../../../models/pump/settings-grid.ts';
import { closeToBest } from '../../../models/selection/close-to.ts';
import { dutyHeat } from '../../../models/selection/duty-heat.ts';
import { select } from '../../../models/selection/select.ts';
import { type CandidateWork, pumpReference } from '../../question/candidates.ts';
import { plainJob } from '../../threads/job.ts';
import { type DutyAnswer, dutyAnswer } from '../duty-point/duty-answer.ts';
import { uncertaintyAnswer } from '../duty-point/uncertainty-answer.ts';

export interface DesignWork extends Omit<DesignQuestion, 'candidates'> {
  readonly candidates: readonly CandidateWork[];
}

/** The best design in its own loop. */
export interface BestInLoop {
  readonly duty: DutyAnswer;
  /** Smallest setting [%] that a recommendation on the loop finds feasible; null where it finds none. */
  readonly recommendedSetting: number | null;
  /** Candidates that may as well be the best, in the order of the ranking. */
  readonly closeTo: readonly number[];
  /** The candidate whose power is to be measured; null where nothing is close. */
  readonly measure: DesignRow | null;
}

export interface DesignFigures {
  readonly designs: Designs;
  readonly best: BestInLoop | null;
  /** Of the loop, whatever the pump. */
  readonly cautions: readonly Caution[];
}

/** Searches of less are shorter than sending them to another thread: runs, sizes of all lists, settings of all candidates. */
const SHORT = { runs: 20, sizes: 40, settings: 300 } as const;

export const designJob = plainJob<DesignWork, Result<DesignFigures, DesignFailure>>({
  name: 'design',
  isLong: ({ loop, candidates }) =>
    countRuns(loop) > SHORT.runs ||
    listsOf(loop).reduce((sum, { pipes }) => sum + pipes.length, 0) > SHORT.sizes ||
    candidates.reduce((sum, { entered: { settings } }) => sum + gridSize(settings), 0) > SHORT.settings,
  compute,
});

function compute(work: DesignWork): Result<DesignFigures, DesignFailure> {
  const found = designs({
    ...work,
    candidates: work.candidates.map((candidate) => ({ pump: candidate, count: candidate.count })),
  });
  if (!found.ok) return found;
  const { best, gravity } = found.value;
  const given = [...gravityCautions(gravity), ...designCautions()];
  if (best === null) return success({ designs: found.value, best, cautions: given });
  const model = compileLoop(best.loop);
  if (!model.ok) throw new Error(`invariant: the loop of a design does not compile: ${model.failure.code}`);
  const inLoop = bestInLoop(model.value, found.value, { best, work });
  if (!inLoop.ok) return inLoop;
  return success({
    designs: found.value,
    best: inLoop.value,
    cautions: [...given, ...loopCautions(model.value)],
  });
}

function bestInLoop(
  loop: CompiledLoop,
  { ranking }: Designs,
  { best, work }: { readonly best: BestDesign; readonly work: DesignWork },
): Result<BestInLoop, Unsolved> {
  const { price, hoursPerDay, elevation, limits } = work;
  const running = { price, hoursPerDay, elevation };
  const candidate = candidateAt(work, best.candidate);
  const { count } = candidate;
  return solving(() => {
    const duty = dutyPoint(loop, pumpAtSetting(candidate, { setting: best.setting, count }));
    const land = (pump: PumpAtSetting) => dutyPoint(loop, pump, duty.state ?? undefined);
    const uncertainty = uncertaintyAnswer({ pump: candidate, duty, running, assurance: null, land });
    const context = { loop, pump: candidate, limits, elevation };
    const { annualEnergy, annualCost } = best;
    const use = { annualEnergy, annualCost, heat: dutyHeat(context, duty, running) };
    const [recommended] = select({
      ...{ sampled: sampleLoop(loop), limits, running },
      candidates: [{ pump: candidate, count }],
    }).ranking;
    const close = closeToBest(
      [best, ...ranking].map((row) => ({
        row,
        lifeCycleCost: row.presentValue,
        rankedBy: row.presentValueRange,
      })),
    );
    return {
      duty: dutyAnswer({
        ...{ candidate: best.candidate, pump: pumpReference(candidate), context, duty, use },
        ...{ trims: [], uncertainty },
      }),
      recommendedSetting: recommended?.duty.setting ?? null,
      closeTo: close.closeTo.map(({ row }) => row.candidate),
      measure: close.measure?.row ?? null,
    };
  });
}

export function candidateAt({ candidates }: Pick<DesignWork, 'candidates'>, place: number): CandidateWork {
  const candidate = candidates[place];
  if (candidate === undefined) throw new Error(`invariant: there is no candidate ${place}`);
  return candidate;
}
