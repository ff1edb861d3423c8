/** Computes a design, from the request to its figures. */
import { failed, type Result, success } from '../../../curves/result.ts';
import type { DesignLoop } from '../../../models/designs/design-loop.ts';
import { type Limits, limitsOf } from '../../../models/loop/limits.ts';
import { LIFE_CYCLE_DEFAULTS } from '../../fields/life-cycle-terms.ts';
import type { SiteDependencies } from '../../http/api.ts';
import { invalidRequest, type Problem } from '../../http/problem.ts';
import { runJob } from '../../http/run-job.ts';
import { allCandidates, type Candidate, findCandidates } from '../../question/candidates.ts';
import { candidateRequests } from '../../question/sources.ts';
import { type TariffPrice, tariffPrice } from '../../question/tariff-price.ts';
import { findLoop } from '../../records/loop/kind.ts';
import { findSite, type SiteRecord } from '../../records/site/kind.ts';
import type { SiteStore } from '../../store/store.ts';
import { perMetre } from '../../units/per-metre.ts';
import type { UnitSystem } from '../../units/unit-system.ts';
import { type DesignFigures, type DesignWork, designJob } from './job.ts';
import { designProblem } from './problems.ts';
import { type DesignRequest, PIPE_VELOCITY } from './request-schema.ts';

/** The loop of a design with the version that it was read at; null where it came with the request. */
interface AskedLoop {
  readonly id: string | null;
  readonly version: number | null;
  readonly document: DesignLoop;
}

/** All that an answer is made of, whatever its units. */
export interface ComputedDesign {
  readonly site: SiteRecord;
  readonly loop: AskedLoop;
  readonly candidates: readonly Candidate[];
  readonly tariff: TariffPrice | null;
  readonly work: DesignWork;
  readonly figures: DesignFigures;
}

export async function computeDesign(
  deps: Pick<SiteDependencies, 'store' | 'clock' | 'workers'>,
  { body, system }: { readonly body: DesignRequest; readonly system: UnitSystem },
): Promise<Result<ComputedDesign, Problem>> {
  const { store, workers } = deps;
  const loop = await loopAsked(store, body.loop);
  if (!loop.ok) return loop;
  const { pumps } = body;
  const candidates =
    pumps === undefined
      ? await allCandidates(store, 1)
      : await findCandidates(store, candidateRequests(pumps));
  if (!candidates.ok) return candidates;
  const site = await findSite(store);
  const tariff = await tariffPrice(deps, site, body, { pointer: '/tariff' });
  if (!tariff.ok) return tariff;
  const price = body.price ?? tariff.value?.price ?? site.document.price;
  if (price === null) {
    const detail = 'is needed: state price or tariff, or enter one for the site';
    return failed(invalidRequest([{ pointer: '/price', detail }]));
  }
  const { document } = loop.value;
  const work = workOf(body, { price, site, loop: document, candidates: candidates.value, system });
  const done = await runJob(workers, designJob, { ready: null, work });
  if (!done.ok) return done;
  if (!done.value.ok) return failed(designProblem(done.value.failure, loop.value.id === null));
  const asked = { site, loop: loop.value, candidates: candidates.value, tariff: tariff.value };
  return success({ ...asked, work, figures: done.value.value });
}

/** Pipes that are to be entered are new: a calibration of the loop does not count. */
async function loopAsked(
  store: SiteStore,
  asked: DesignRequest['loop'],
): Promise<Result<AskedLoop, Problem>> {
  if (typeof asked !== 'string') return success({ id: null, version: null, document: asked });
  const found = await findLoop(store, asked, { pointer: '/loop' });
  if (!found.ok) return found;
  const { id, version, document } = found.value;
  if ('discharge' in document) return success({ id, version, document });
  const detail = 'is known by its system curve alone: a design needs pipework';
  return failed(invalidRequest([{ pointer: '/loop', detail }]));
}

interface Facts {
  readonly price: number;
  readonly site: SiteRecord;
  readonly loop: DesignLoop;
  readonly candidates: readonly Candidate[];
  readonly system: UnitSystem;
}

function workOf(body: DesignRequest, { price, site, loop, candidates, system }: Facts): DesignWork {
  const { years, discountRate, inflation, energyInflation = inflation, labourRate } = body;
  const { minutesPerFailure } = LIFE_CYCLE_DEFAULTS;
  return {
    loop,
    candidates,
    ...limitsAsked(body.limits, loop.limits),
    prices: body.pipePrices.map((one) => ({ ...one, price: perMetre(one.price, system) })),
    ...{ trimPrice: body.trimPrice, price, hoursPerDay: body.hoursPerDay },
    elevation: site.document.elevation,
    lifeCycle: {
      ...{ years, discountRate, inflation, energyInflation, minutesPerFailure },
      labourRate: labourRate ?? site.document.labourRate ?? 0,
    },
  };
}

/** Where no velocity limits the sizes, pipes are still cautioned above the default. */
function limitsAsked(
  stated: DesignRequest['limits'],
  ofLoop: DesignLoop['limits'],
): { readonly limits: Limits; readonly pipeVelocity: number | null } {
  const { pipeVelocity: asked, ...others } = stated ?? {};
  const pipeVelocity = asked === undefined ? (ofLoop?.pipeVelocity ?? PIPE_VELOCITY) : asked;
  const limits = limitsOf({ ...others, pipeVelocity: pipeVelocity ?? PIPE_VELOCITY }, ofLoop);
  return { limits, pipeVelocity };
}
