/** Calibrates a stored loop by its readings, and applies the factors where that is asked for. */

import { failed, type Result, success } from '../../../curves/result.ts';
import type { AppliedCalibration } from '../../../models/calibration/applied.ts';
import { type Calibration, stationFor } from '../../../models/calibration/calibrate.ts';
import { isFarOff } from '../../../models/calibration/misfit.ts';
import { loopCautions } from '../../../models/cautions/loop-cautions.ts';
import { calibrationCautions } from '../../../models/cautions/measured.ts';
import { MODEL_VERSION } from '../../../models/model-version.ts';
import type { CompiledLoop } from '../../../models/network/compiled-loop.ts';
import { basisOf } from '../../fields/basis.ts';
import { type Problem, problem } from '../../http/problem.ts';
import { runJob } from '../../http/run-job.ts';
import { unsolvedProblem } from '../../question/solve-problems.ts';
import { compileLoopOrProblem } from '../../records/loop/compile.ts';
import { dataBasisOf } from '../../records/loop/data-basis.ts';
import type { LoopRecord } from '../../records/loop/kind.ts';
import { sinceInstalled } from '../../records/loop/since-installed.ts';
import type { PumpRecord } from '../../records/pump/kind.ts';
import { findPump } from '../../records/pump/kind.ts';
import { READINGS } from '../../records/reading/kind.ts';
import { findSite } from '../../records/site/kind.ts';
import { writeProblem } from '../../records/write-problems.ts';
import type { SiteStore } from '../../store/store.ts';
import type { WorkerPool } from '../../threads/worker-pool.ts';
import { type CalibrationAnswer, calibrationFigures } from './answer.ts';
import { collectReadings } from './collect-readings.ts';
import { calibrationJob } from './job.ts';
import { CALIBRATIONS } from './kind.ts';
import { calibrationSentence } from './sentence.ts';

interface Deps {
  readonly store: SiteStore;
  readonly clock: () => Date;
  readonly workers: WorkerPool;
}

interface Asked {
  readonly loop: LoopRecord;
  readonly from: number | undefined;
  readonly to: number | undefined;
  readonly apply: boolean;
}

interface Calibrated {
  readonly body: CalibrationAnswer;
  readonly loop: LoopRecord;
}

interface Read {
  readonly calibration: Calibration;
  readonly model: CompiledLoop;
  readonly pump: PumpRecord;
  /** The first instant whose readings count [ms]; 0: all. */
  readonly from: number;
}

/** Of loop and pump as entered, whatever calibration is in use. */
async function readAll(
  { store, workers }: Deps,
  { loop, from: asked = 0 }: Asked,
  before: number,
): Promise<Result<Read, Problem>> {
  const { installed } = loop.document;
  if (installed === undefined) {
    const detail = 'The loop has no installed pump that its readings could be of.';
    return failed(problem('no-installed-pump', detail));
  }
  // Readings before are of another pump.
  const from = Math.max(asked, sinceInstalled(installed, await findSite(store)));
  const pump = await findPump(store, installed.pump, null);
  if (!pump.ok) return pump;
  const model = compileLoopOrProblem(loop.document);
  if (!model.ok) return model;
  const { document, fit } = pump.value;
  const installation = { loop: model.value, pump: { entered: document, fit }, count: installed.count };
  const choice = { loop: loop.id, from, before };
  const measured = await collectReadings(store, choice, stationFor(installation));
  if (!measured.ok) return measured;
  const { settings } = document;
  const setting = Math.min(settings.max, Math.max(settings.min, installed.setting));
  const { count, pump: fitted } = installation;
  const done = await runJob(workers, calibrationJob, {
    ready: model.value,
    work: { pump: fitted, count, setting, measured: measured.value },
  });
  if (!done.ok) return done;
  if (!done.value.ok) return failed(unsolvedProblem(done.value.failure));
  return success({ calibration: done.value.value, model: model.value, pump: pump.value, from });
}

/** Every reading before it is taken, none of which is later than now. */
const justAfter = (now: number): number => now + 1;

export async function answerCalibration(deps: Deps, asked: Asked): Promise<Result<Calibrated, Problem>> {
  const now = deps.clock().getTime();
  const read = await readAll(deps, asked, asked.to ?? justAfter(now));
  if (!read.ok) return read;
  const { calibration, model, pump, from } = read.value;
  const to = asked.to ?? now;
  const loop = asked.apply ? await applied(deps, asked, { ...read.value, now, to }) : success(asked.loop);
  if (!loop.ok) return loop;
  return success({
    loop: loop.value,
    body: {
      ...calibrationFigures(calibration),
      readings: { used: calibration.used, rows: calibration.rows, from: from === 0 ? null : from, to },
      applied: asked.apply,
      dataBasis: dataBasisOf(loop.value),
      summary: calibrationSentence(calibration, asked.apply),
      cautions: [...calibrationCautions(calibration), ...loopCautions(model)],
      basis: basisOf({ loop: loop.value, pumps: [pump] }),
    },
  });
}

async function applied(
  { store }: Deps,
  { loop }: Asked,
  { calibration, pump, from: earliest, now, to }: Read & { readonly now: number; readonly to: number },
): Promise<Result<LoopRecord, Problem>> {
  const { parameters, factors, badEnd, used } = calibration;
  if (parameters.length === 0) {
    const detail =
      'The readings determine no factor that can be applied: see `notIdentifiable` of the answer without `apply`.';
    return failed(problem('not-calibrated', detail, { errors: [{ pointer: '/apply', detail }] }));
  }
  if (isFarOff(calibration.misfits)) {
    const detail =
      'The factors do not give the flows that were measured: a reading is off by over 15 %, see `misfits` of the answer without `apply`. Mend what is off, or leave those readings out by `from` and `to`.';
    return failed(problem('not-calibrated', detail, { errors: [{ pointer: '/apply', detail }] }));
  }
  const { range } = await store.of(READINGS).span(loop.id);
  const from = Math.max(earliest, range?.first ?? to);
  const kept: AppliedCalibration = {
    ...{ parameters, factors, badEnd, from, to },
    pump: { id: pump.id, fit: pump.fit },
    readings: used,
    modelVersion: MODEL_VERSION,
  };
  const expectedVersion = loop.version;
  const outcome = await store.of(CALIBRATIONS).apply({
    id: loop.id,
    now,
    expectedVersion,
    calibration: kept,
  });
  return outcome.outcome === 'applied' ? success(outcome.loop) : failed(writeProblem(outcome, 'loop'));
}
