/** Solves programs of yes and no by the HiGHS package. */
import loadHighs, { type Highs, type Model } from 'highs';
import type {
  BinaryProgram,
  ProgramSolution,
  ProgramSolver,
} from '../../../models/upgrade-plan/integer-program.ts';
import { writtenOnce } from '../../caches/written-once.ts';

/** Proven best to the last digit that the solver distinguishes. */
const EXACT = {
  output_flag: false,
  mip_rel_gap: 0,
  mip_abs_gap: 1e-9,
  mip_feasibility_tolerance: 1e-9,
  primal_feasibility_tolerance: 1e-9,
} as const;

/** Variables of 0 or 1 bound every program, so that one that may be unbounded is infeasible. */
const STATUS = { optimal: 7, infeasible: [8, 9] } as const;

/** What the package reports of a primal solution that keeps all rows. */
const FEASIBLE = 2;

const HALF = 0.5;

/** Once a thread. */
const loaded = writtenOnce(() => loadHighs());

/** Makes solvers that hold their thread, each for so many seconds in all its programs together. */
export async function programSolvers(): Promise<(seconds: number) => ProgramSolver> {
  const highs = await loaded();
  return (seconds) => {
    const end = performance.now() + seconds * MILLISECONDS;
    return (program, start) => {
      if (program.gains.length === 0) return withoutVariables(program);
      const left = Math.max(0, end - performance.now()) / MILLISECONDS;
      return highs.withModel(modelOf(highs, program), (model) =>
        solved(model, program, { start, seconds: left }),
      );
    };
  };
}

const MILLISECONDS = 1000;

/** Rows over no variables stay at 0. */
function withoutVariables({ rows }: BinaryProgram): ProgramSolution {
  const holds = rows.every(({ least, most }) => least <= 0 && most >= 0);
  return holds
    ? { status: 'optimal', chosen: [], bound: 0 }
    : { status: 'infeasible', chosen: null, bound: null };
}

function modelOf(highs: Highs, { gains, rows }: BinaryProgram) {
  const scale = scaleOf(gains);
  const starts = [0];
  for (const { places } of rows) starts.push((starts.at(-1) ?? 0) + places.length);
  return {
    numCols: gains.length,
    numRows: rows.length,
    sense: highs.constants.objectiveSense.maximize,
    colCost: gains.map((gain) => scale * gain),
    colLower: gains.map(() => 0),
    colUpper: gains.map(() => 1),
    integrality: gains.map(() => highs.constants.variableType.integer),
    rowLower: rows.map(({ least }) => (Number.isFinite(least) ? least : -highs.infinity)),
    rowUpper: rows.map(({ most }) => most),
    matrix: {
      format: 'csr',
      numRows: rows.length,
      numCols: gains.length,
      starts,
      indices: rows.flatMap(({ places }) => places),
      values: rows.flatMap(({ coefficients }) => coefficients),
    },
  } as const;
}

/** Larger gains are solved as shares of the largest: the package takes what is larger still for endless. */
const GAIN_MOST = 1e9;

function scaleOf(gains: readonly number[]): number {
  const largest = gains.reduce((most, gain) => Math.max(most, Math.abs(gain)), 0);
  return largest > GAIN_MOST ? GAIN_MOST / largest : 1;
}

/** Whatever else ended the search, a plan that it proved is one, and what it did not prove is reported as such. */
function solved(
  model: Model,
  { gains }: BinaryProgram,
  { start, seconds }: { readonly start: readonly number[] | null; readonly seconds: number },
): ProgramSolution {
  model.options.set({ ...EXACT, time_limit: seconds });
  if (start !== null) {
    const on = new Set(start);
    model.setSolution({ colValue: gains.map((_, place) => (on.has(place) ? 1 : 0)) });
  }
  const { modelStatus } = model.run();
  if (STATUS.infeasible.some((one) => one === modelStatus))
    return { status: 'infeasible', chosen: null, bound: null };
  const isOptimal = modelStatus === STATUS.optimal;
  const isFeasible = model.info.get('primal_solution_status') === FEASIBLE;
  const chosen = isFeasible
    ? [...model.getSolution().colValue.entries()].flatMap(([place, value]) => (value > HALF ? [place] : []))
    : null;
  const bound = Number(model.info.get('mip_dual_bound')) / scaleOf(gains);
  return {
    status: isOptimal ? 'optimal' : 'time-limit',
    chosen,
    bound: Number.isFinite(bound) && Math.abs(bound) < NO_BOUND ? bound : null,
  };
}

/** The package reports that there is no bound by a number this large. */
const NO_BOUND = 1e29;
