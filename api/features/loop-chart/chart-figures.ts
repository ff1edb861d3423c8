/** Gathers what the chart of a stored loop shows: a pump at a setting, its duty point, the curve of the loop. */
import { failed, type Result, success } from '../../../curves/result.ts';
import { fitOnLoop } from '../../../models/calibration/applied.ts';
import type { SiteDependencies } from '../../http/api.ts';
import type { Problem } from '../../http/problem.ts';
import { runJob } from '../../http/run-job.ts';
import { unsolvedProblem } from '../../question/solve-problems.ts';
import type { LoopRecord } from '../../records/loop/kind.ts';
import { sinceInstalled } from '../../records/loop/since-installed.ts';
import { findPump } from '../../records/pump/kind.ts';
import { findSite } from '../../records/site/kind.ts';
import type { UnitSystem } from '../../units/unit-system.ts';
import { answerDutyPoint } from '../duty-point/duty-point.ts';
import type { RecommendationDeps } from '../recommendation/recommendation.ts';
import { recommendationOrNull } from '../recommendation/stored-recommendation.ts';
import { type SystemCurveFigures, systemCurveJob } from '../system-curve/job.ts';
import { chartedFlow } from './chart.ts';
import type { LoopFigures, SettingOrigin, ShownPump } from './figures.ts';
import { measuredPoints } from './measured-points.ts';

/** What a query may state. */
export interface LoopChartQuestion {
  readonly pump?: string | undefined;
  readonly setting?: number | undefined;
  readonly count?: number | undefined;
}

export type LoopChartDeps = SiteDependencies & RecommendationDeps;

interface Asked {
  readonly loop: LoopRecord;
  readonly asked: LoopChartQuestion;
  readonly system: UnitSystem;
}

interface Charted {
  readonly figures: LoopFigures;
  readonly basis: unknown;
}

export interface ChosenPump {
  readonly pump: string;
  readonly setting: number | undefined;
  readonly count: number | undefined;
  readonly origin: SettingOrigin;
}

const SYSTEM_POINTS = 49;

/** The pump and the setting asked for; else those installed; else those recommended; null where none serves. */
async function choose(
  deps: LoopChartDeps,
  { loop, asked, system }: Asked,
): Promise<Result<ChosenPump | null, Problem>> {
  const { installed } = loop.document;
  const { pump = installed?.pump, setting, count } = asked;
  if (pump !== undefined && setting !== undefined) {
    return success({ pump, setting, count, origin: 'asked' });
  }
  const isAsInstalled = count === undefined || count === installed?.count;
  if (installed !== undefined && pump === installed.pump && isAsInstalled) {
    return success({ pump, setting: installed.setting, count: installed.count, origin: 'installed' });
  }
  const recommended = await recommendationOrNull(deps, {
    loop,
    pumps: pump === undefined ? undefined : [pump],
    count: count ?? 1,
    system,
  });
  if (!recommended.ok) return recommended;
  const best = recommended.value?.body.best ?? null;
  const id = best?.pump.id ?? null;
  if (best !== null && id !== null) {
    return success({
      pump: id,
      setting: setting ?? best.setting,
      count: best.count,
      origin: setting === undefined ? 'recommended' : 'asked',
    });
  }
  return success(pump === undefined ? null : { pump, setting, count, origin: 'highest' });
}

async function shownPump(
  deps: LoopChartDeps,
  { loop, system }: Pick<Asked, 'loop' | 'system'>,
  chosen: ChosenPump,
): Promise<Result<{ readonly shown: ShownPump; readonly basis: unknown }, Problem>> {
  const { origin, ...question } = chosen;
  const pump = await findPump(deps.store, chosen.pump, { parameter: 'pump' });
  if (!pump.ok) return pump;
  const answered = await answerDutyPoint(deps, { loop, asked: question, system });
  if (!answered.ok) return answered;
  const { intersections, ...duty } = answered.value.body;
  const model = { entered: pump.value.document, fit: fitOnLoop(pump.value, loop.calibration) };
  return success({
    shown: { model, origin, duty, crossings: intersections },
    basis: answered.value.validator.basis,
  });
}

async function systemCurve(
  deps: LoopChartDeps,
  loop: LoopRecord,
  flow: number | null,
): Promise<Result<SystemCurveFigures, Problem>> {
  const compiled = deps.loops.compile(loop, []);
  if (!compiled.ok) return compiled;
  const asked = { ready: compiled.value, work: { flow, points: SYSTEM_POINTS } };
  const done = await runJob(deps.workers, systemCurveJob, asked);
  if (!done.ok) return done;
  return done.value.ok ? done.value : failed(unsolvedProblem(done.value.failure));
}

/** The chart of a loop with a pump that was chosen already; null: the system alone. */
export async function chosenChartFigures(
  deps: LoopChartDeps,
  question: { readonly loop: LoopRecord; readonly system: UnitSystem },
  chosen: ChosenPump | null,
): Promise<Result<Charted, Problem>> {
  const { loop, system } = question;
  const pump = chosen === null ? success(null) : await shownPump(deps, question, chosen);
  if (!pump.ok) return pump;
  const shown = pump.value?.shown ?? null;
  const compiled = deps.loops.compile(loop, []);
  if (!compiled.ok) return compiled;
  const { density } = compiled.value.water;
  const setting = shown?.duty.setting ?? null;
  const { store } = deps;
  const { installed, gauges } = loop.document;
  const since = installed === undefined ? 0 : sinceInstalled(installed, await findSite(store));
  const lately = await measuredPoints(store, { loop: loop.id, density, gauges, setting, since });
  const measured = lately.points;
  const asNeeded = await systemCurve(deps, loop, null);
  if (!asNeeded.ok) return asNeeded;
  const { requiredDuty } = asNeeded.value;
  const flow = chartedFlow({ required: requiredDuty, shown, measured });
  const curve = flow === null ? asNeeded : await systemCurve(deps, loop, flow);
  if (!curve.ok) return curve;
  const needed = curve.value.points;
  return success({
    figures: { loopName: loop.document.name, system, needed, required: requiredDuty, shown, measured },
    basis: [loop.id, loop.version, pump.value?.basis ?? null, lately.basis],
  });
}

export async function loopChartFigures(
  deps: LoopChartDeps,
  question: Asked,
): Promise<Result<Charted, Problem>> {
  const chosen = await choose(deps, question);
  return chosen.ok ? chosenChartFigures(deps, question, chosen.value) : chosen;
}
