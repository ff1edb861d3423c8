/** Answers the duty point of a stored loop, for the pump and the price that are meant. */

import type { z } from '@hono/zod-openapi';
import { failed, type Result, success } from '../../../curves/result.ts';
import { fitOnLoop } from '../../../models/calibration/applied.ts';
import { borrowedCalibration } from '../../../models/cautions/measured.ts';
import { meanPriceCautions } from '../../../models/cautions/time.ts';
import { drainBack } from '../../../models/hazards/drain-back.ts';
import { limitsOf } from '../../../models/loop/limits.ts';
import type { InstalledPump } from '../../../models/loop/loop.ts';
import { basisOf } from '../../fields/basis.ts';
import { HOURS_DEFAULT } from '../../fields/running-fields.ts';
import type { WithoutUnits } from '../../http/answer-form.ts';
import { type Problem, problem } from '../../http/problem.ts';
import { runJob } from '../../http/run-job.ts';
import { settingProblem } from '../../question/setting-problem.ts';
import { unsolvedProblem } from '../../question/solve-problems.ts';
import { tariffPrice } from '../../question/tariff-price.ts';
import type { CompiledLoops } from '../../records/loop/compiled-loops.ts';
import { dataBasisOf } from '../../records/loop/data-basis.ts';
import type { LoopRecord } from '../../records/loop/kind.ts';
import type { PumpRecord } from '../../records/pump/kind.ts';
import { findPump } from '../../records/pump/kind.ts';
import { findSite } from '../../records/site/kind.ts';
import type { SiteStore } from '../../store/store.ts';
import type { WorkerPool } from '../../threads/worker-pool.ts';
import type { UnitSystem } from '../../units/unit-system.ts';
import type { dutyPointSchema } from './answer-schema.ts';
import { dutyPointJob } from './job.ts';
import { dutyPointSentence } from './sentence.ts';

/** What a query may state. */
export interface DutyPointQuestion {
  readonly pump?: string | undefined;
  readonly setting?: number | undefined;
  readonly count?: number | undefined;
  readonly price?: number | undefined;
  readonly hoursPerDay?: number | undefined;
  /** Velocity [m/s] down to which the reach of outlets is given. */
  readonly velocity?: number | undefined;
}

interface Answered {
  readonly body: WithoutUnits<z.output<ReturnType<typeof dutyPointSchema>>>;
  /** All that the answer follows from besides the query. */
  readonly validator: { readonly basis: unknown };
}

interface Chosen {
  readonly pump: PumpRecord;
  readonly setting: number;
  readonly count: number;
}

async function choosePump(
  store: SiteStore,
  installed: InstalledPump | undefined,
  asked: DutyPointQuestion,
): Promise<Result<Chosen, Problem>> {
  const id = asked.pump ?? installed?.pump;
  if (id === undefined) {
    return failed(problem('no-installed-pump', 'The loop has no installed pump: name one by `pump`.'));
  }
  const pump = await findPump(store, id, { parameter: 'pump' });
  if (!pump.ok) return pump;
  const isInstalled = id === installed?.pump;
  const setting = asked.setting ?? (isInstalled ? installed.setting : pump.value.document.settings.max);
  const wrong = settingProblem(pump.value.document, setting);
  if (wrong !== null) return failed(wrong);
  return success({ pump: pump.value, setting, count: asked.count ?? (isInstalled ? installed.count : 1) });
}

interface DutyPointDeps {
  readonly clock: () => Date;
  readonly store: SiteStore;
  readonly workers: WorkerPool;
  readonly loops: CompiledLoops;
}

export async function answerDutyPoint(
  { store, clock, workers, loops }: DutyPointDeps,
  {
    loop,
    asked,
    system,
  }: { readonly loop: LoopRecord; readonly asked: DutyPointQuestion; readonly system: UnitSystem },
): Promise<Result<Answered, Problem>> {
  const { document } = loop;
  const chosen = await choosePump(store, document.installed, asked);
  if (!chosen.ok) return chosen;
  const site = await findSite(store);
  const compiled = loops.compile(loop, []);
  if (!compiled.ok) return compiled;
  const { pump, setting, count } = chosen.value;
  const { elevation, currency } = site.document;
  const tariff = await tariffPrice({ store, clock }, site, asked, { parameter: 'price' });
  if (!tariff.ok) return tariff;
  const { price = tariff.value?.price ?? site.document.price, hoursPerDay = HOURS_DEFAULT } = asked;
  const { id, key } = pump;
  const candidate = { id, key, count, entered: pump.document, fit: fitOnLoop(pump, loop.calibration) };
  const running = { price, hoursPerDay, elevation };
  const reachVelocity = asked.velocity ?? null;
  const work = { candidate, setting, limits: limitsOf(document.limits), running, reachVelocity };
  const done = await runJob(workers, dutyPointJob, { ready: compiled.value, work });
  if (!done.ok) return done;
  if (!done.value.ok) return failed(unsolvedProblem(done.value.failure));
  const { duty, intersections, gravity } = done.value.value;
  const basis = basisOf({ loop, pumps: [pump] });
  const summary = dutyPointSentence(duty, { loopName: document.name, currency, system, gravity });
  return success({
    body: {
      ...duty,
      cautions: [
        ...duty.cautions,
        ...borrowedCalibration(loop.calibration, [pump]),
        ...meanPriceCautions({ tariff: tariff.value?.name ?? null, hoursPerDay }),
      ],
      intersections: [...intersections],
      drainBack: drainBack(document),
      summary,
      dataBasis: dataBasisOf(loop),
      basis,
    },
    validator: { basis: { ...basis, site: site.version, tariff: tariff.value } },
  });
}
