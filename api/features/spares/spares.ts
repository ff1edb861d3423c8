/** Computes the spares of a model of device, from the request and what is stored to the answer. */

import type { z } from '@hono/zod-openapi';
import { failed, type Result, success } from '../../../curves/result.ts';
import { DAYS_PER_YEAR } from '../../../models/calendar/time-factors.ts';
import { sparesCautions } from '../../../models/cautions/money.ts';
import { type FailureCounts, failureRate } from '../../../models/money/failure-rate.ts';
import { type Shelf, SPARES_MAX, sparesFor } from '../../../models/money/spares.ts';
import { basisOf } from '../../fields/basis.ts';
import type { WithoutUnits } from '../../http/answer-form.ts';
import { invalidRequest, type Problem, problem } from '../../http/problem.ts';
import type { LoopRecord } from '../../records/loop/kind.ts';
import { LOOPS } from '../../records/loop/kind.ts';
import { findPump, type PumpRecord } from '../../records/pump/kind.ts';
import type { SiteStore } from '../../store/store.ts';
import type { Page, PageStart } from '../../store/versions.ts';
import { sayNumber } from '../../wording/numbers-in-words.ts';
import type { sparesSchema } from './answer-schema.ts';
import type { sparesRequest } from './request-schema.ts';

type Request = z.output<ReturnType<typeof sparesRequest>>;
type Answer = WithoutUnits<z.output<ReturnType<typeof sparesSchema>>>;

/** A question whose counts and positions are known. */
interface Known {
  readonly failures: FailureCounts;
  readonly positions: number;
  readonly leadTimeDays: number;
  readonly confidence: number;
  /** Null where no stored pump took part. */
  readonly pump: PumpRecord | null;
}

export async function answerSpares(store: SiteStore, request: Request): Promise<Result<Answer, Problem>> {
  const known = await complete(store, request);
  return known.ok ? computeSpares(known.value) : known;
}

/** What the question leaves out, from the stored pump and the loops that have it installed. */
async function complete(store: SiteStore, request: Request): Promise<Result<Known, Problem>> {
  const { pump: id, leadTimeDays, confidence } = request;
  const found = id === undefined ? success(null) : await findPump(store, id, { pointer: '/pump' });
  if (!found.ok) return found;
  const pump = found.value;
  const failures = request.failures ?? pump?.document.failures;
  if (failures === undefined) {
    const detail =
      pump === null
        ? 'must be stated where no pump is'
        : 'must be stated: the pump has no failure counts of its own';
    return failed(invalidRequest([{ pointer: '/failures', detail }]));
  }
  if (request.positions !== undefined) {
    return success({ failures, positions: request.positions, leadTimeDays, confidence, pump });
  }
  if (pump === null) {
    const detail = 'must be stated where no pump is';
    return failed(invalidRequest([{ pointer: '/positions', detail }]));
  }
  const positions = await positionsOf(store, pump.id);
  if (positions.outcome === 'too-many') {
    const detail = `must be stated: more than ${positions.limit} loops have the pump installed`;
    return failed(invalidRequest([{ pointer: '/positions', detail }]));
  }
  return success({ failures, positions: positions.devices, leadTimeDays, confidence, pump });
}

interface AskedShelf extends Shelf {
  readonly meanDemand: number;
}

function computeSpares(known: Known): Result<Answer, Problem> {
  const { failures, positions, leadTimeDays, confidence, pump } = known;
  const rate = failureRate(failures);
  const shelfAt = (perYear: number): Result<AskedShelf, Problem> => {
    const meanDemand = (perYear * positions * leadTimeDays) / DAYS_PER_YEAR;
    const shelf = sparesFor({ meanDemand, confidence });
    return shelf.ok ? success({ ...shelf.value, meanDemand }) : failed(tooMany(meanDemand));
  };
  const shelf = shelfAt(rate.value);
  if (!shelf.ok) return shelf;
  const atHighRate = shelfAt(rate.high);
  if (!atHighRate.ok) return atHighRate;
  return success({
    ...shelf.value,
    atHighRate: atHighRate.value,
    failuresPerDeviceYear: rate,
    ...{ positions, leadTimeDays, confidence },
    summary: sentenceOf(known, shelf.value, atHighRate.value),
    cautions: [...sparesCautions({ failures: failures.count })],
    basis: basisOf({ loop: null, pumps: pump === null ? [] : [pump] }),
  });
}

function tooMany(meanDemand: number): Problem {
  const detail = `More than ${SPARES_MAX} spares would be needed: ${sayNumber(meanDemand)} failures are expected in one lead time.`;
  return problem('limit-exceeded', detail, {
    limit: SPARES_MAX,
    actual: Math.ceil(meanDemand),
    errors: [
      { pointer: '/leadTimeDays', detail: 'makes for too many failures with these positions and counts' },
    ],
  });
}

const several = (count: number, noun: string): string => `${count} ${noun}${count === 1 ? '' : 's'}`;

function sentenceOf({ failures, positions, leadTimeDays }: Known, shelf: Shelf, atHighRate: Shelf): string {
  const probability = `${sayNumber(100 * shelf.probability)} %`;
  const days = `${sayNumber(leadTimeDays)} ${leadTimeDays === 1 ? 'day' : 'days'}`;
  const keep = shelf.spares === 0 ? 'No spare is needed' : `Keep ${several(shelf.spares, 'spare')}`;
  const seen = failures.count === 0 ? 'None of the devices watched failed; going by that, ' : '';
  const first = `${seen}${seen === '' ? keep : keep.charAt(0).toLowerCase() + keep.slice(1)} for ${several(positions, 'device')}: with a probability of ${probability} no more fail within ${days}.`;
  if (atHighRate.spares === shelf.spares) return first;
  return `${first} If they fail as often as the counts still allow, ${several(atHighRate.spares, 'spare')}.`;
}

const PAGE = 200;
/** Loops looked at for one answer. */
const LOOPS_MAX = 20_000;

type Positions =
  | { readonly outcome: 'counted'; readonly devices: number }
  | { readonly outcome: 'too-many'; readonly limit: number };

/** The devices of a pump that the loops of a site state as installed. */
async function positionsOf(store: SiteStore, pump: string): Promise<Positions> {
  let devices = 0;
  let after: PageStart | null = null;
  for (let seen = 0; seen < LOOPS_MAX; seen += PAGE) {
    const page: Page<LoopRecord> = await store.of(LOOPS).list({
      limit: PAGE,
      after,
      installedPump: pump,
    });
    for (const { document } of page.records) devices += document.installed?.count ?? 0;
    const last = page.records.at(-1);
    if (!page.more || last === undefined) return { outcome: 'counted', devices };
    after = { createdAt: last.createdAt, id: last.id };
  }
  return { outcome: 'too-many', limit: LOOPS_MAX };
}
