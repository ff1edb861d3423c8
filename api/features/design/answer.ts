/** Answers a design from its figures, with sentences in the units that are asked for. */
import { meanPriceCautions } from '../../../models/cautions/time.ts';
import { type DesignLoop, listsOf, type Pipe } from '../../../models/designs/design-loop.ts';
import type { BestDesign, DesignRow } from '../../../models/designs/search-designs.ts';
import type { SizeChange } from '../../../models/designs/size-changes.ts';
import { basisOf } from '../../fields/basis.ts';
import { toPointer } from '../../http/json-pointer.ts';
import { pumpReference } from '../../question/candidates.ts';
import { tariffAnswer } from '../../question/tariff-answer.ts';
import type { UnitSystem } from '../../units/unit-system.ts';
import type { DesignAnswer } from './answer-schema.ts';
import type { ComputedDesign } from './design.ts';
import { type BestInLoop, candidateAt, type DesignWork } from './job.ts';
import { rejectedDesigns } from './rejected.ts';
import { designSentence } from './sentence.ts';

/** Of the site the currency alone counts here. */
type Answerable = Omit<ComputedDesign, 'site'> & {
  readonly site: { readonly document: { readonly currency: string } };
};

export function designAnswer(
  computed: Answerable,
  { system, rankingLimit }: { readonly system: UnitSystem; readonly rankingLimit: number },
): DesignAnswer {
  const { loop, candidates, tariff, work, figures } = computed;
  const { designs, best: inLoop, cautions } = figures;
  const { best, ranking, frontier, optimalityGap } = designs;
  const rejected = rejectedDesigns(designs, work, system);
  const { currency } = computed.site.document;
  const answered = best === null || inLoop === null ? null : bestAnswer(best, inLoop, work);
  return {
    best: answered,
    ranking: ranking.slice(0, rankingLimit).map((row) => rowAnswer(row, work)),
    frontier: [...frontier],
    rejected: [...rejected],
    solution: optimalityGap > 0 ? 'bounded' : 'optimal',
    optimalityGap,
    counts: {
      candidates: work.candidates.length,
      feasible: ranking.length + (best === null ? 0 : 1),
      rejected: rejected.length,
      lists: listsOf(work.loop).length,
    },
    assumptions: assumptionsOf(computed),
    summary: designSentence(answered, { ...{ figures, work, currency, system, rejected } }),
    cautions: [
      ...cautions,
      ...meanPriceCautions({ tariff: tariff?.name ?? null, hoursPerDay: work.hoursPerDay }),
    ],
    basis: basisOf({ loop, pumps: candidates }),
  };
}

function assumptionsOf({ site, tariff, work }: Answerable): DesignAnswer['assumptions'] {
  const { price, hoursPerDay, trimPrice, lifeCycle, limits, pipeVelocity } = work;
  return {
    ...{ price, tariff: tariffAnswer(tariff), currency: site.document.currency, hoursPerDay, trimPrice },
    ...lifeCycle,
    limits: { ...limits, pipeVelocity },
  };
}

function rowAnswer(row: DesignRow, work: DesignWork): DesignAnswer['ranking'][number] {
  const { candidate, setting, flow, requiredHead, head, power, annualEnergy, annualCost } = row;
  const { presentValue, pumpCost, energyCost, pipeCost, trimCost } = row;
  const pumps = candidateAt(work, candidate);
  return {
    ...{ candidate, pump: pumpReference(pumps), count: pumps.count, setting, flow, requiredHead, head },
    ...{ power, annualEnergy, annualCost, presentValue, pumpCost, energyCost, pipeCost, trimCost },
  };
}

type BestAnswer = NonNullable<DesignAnswer['best']>;

function bestAnswer(
  best: BestDesign,
  { duty: { uncertainty, npsh, suctionPressure, notChecked, cautions }, closeTo }: BestInLoop,
  work: DesignWork,
): BestAnswer {
  return {
    ...rowAnswer(best, work),
    runs: best.runs.map(({ path, ...run }) => ({ pointer: toPointer(path), ...run })),
    trims: best.trims.map(({ path, head, lossCoefficient, kv }) => ({
      ...{ pointer: toPointer(path), head, lossCoefficient, kv },
    })),
    sizeChanges: best.changes.map((change) => changeAnswer(change, best, work.loop)),
    closeTo: [...closeTo],
    ...{ uncertainty, npsh, suctionPressure, notChecked, cautions },
    loop: best.loop,
  };
}

function changeAnswer(
  { list, direction, place, option }: SizeChange,
  best: DesignRow,
  loop: DesignLoop,
): BestAnswer['sizeChanges'][number] {
  const { path, pipe } = sizeAt(loop, list, place);
  const changed = { pointer: toPointer(path), direction, pipe };
  if (option === null) return changed;
  const { candidate, setting, presentValue } = option;
  return {
    ...{ ...changed, candidate, setting, presentValue },
    cost: option.pipeCost - best.pipeCost,
    saving: best.pumpCost + best.energyCost - option.runningCost,
  };
}

function sizeAt(loop: DesignLoop, list: number, place: number) {
  const found = listsOf(loop)[list];
  const pipe: Pipe | undefined = found?.pipes[place];
  if (found === undefined || pipe === undefined) throw new Error(`invariant: list ${list} has no such size`);
  return { path: found.path, pipe };
}
