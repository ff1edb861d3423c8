/** Invented check valves, steps of bore, reducing tees and unlike outlets, put into pipework that has none. */
import { standardBore } from '../reference/independent/bore.ts';
import type { Draw } from './draw.ts';
import type { ExtendedBranch, ExtendedElement, ExtendedLoop, ExtendedOutlet } from './extended-loop.ts';

/** Probability that each place of pipework has a feature. */
export interface Features {
  readonly checkValve: number;
  readonly boreStep: number;
  readonly reducingTee: number;
  /** An outlet at a level of its own, and one whose exit is stated. */
  readonly level: number;
  readonly exit: number;
}

/** Everything at once, each often enough that most loops have some. */
export const EVERY_FEATURE: Features = {
  checkValve: 0.2,
  boreStep: 0.2,
  reducingTee: 0.4,
  level: 0.35,
  exit: 0.3,
};

const ONE_WAY = [
  'check-swing',
  'check-swing-clear',
  'check-lift',
  'check-lift-angle',
  'check-tilting-disc',
  'foot-poppet',
  'foot-hinged',
] as const;

const LEAST_BORE = 0.008;

const boreOf = (element: ExtendedElement): number | undefined => {
  if (!('pipe' in element)) return undefined;
  return typeof element.pipe === 'string' ? standardBore(element.pipe) : element.pipe.insideDiameter;
};

const pipeOf = (draw: Draw, bore: number): ExtendedElement => ({
  pipe: { insideDiameter: Math.max(LEAST_BORE, bore) },
  length: draw.scaled(0.1, 2),
});

type Run = readonly ExtendedElement[];

const inserted = (run: Run, index: number, elements: Run): Run => [
  ...run.slice(0, index),
  ...elements,
  ...run.slice(index),
];

function withCheckValve(draw: Draw, run: Run): Run {
  const name = draw.pick(ONE_WAY);
  const valve = draw.chance(0.7) ? { fitting: name } : { valve: name };
  return inserted(run, draw.whole(0, run.length), [valve]);
}

/** A pipe of another bore after one of the run's, the step entered or not. */
function withStep(draw: Draw, run: Run): Run {
  const places = run.flatMap((element, index) => {
    const bore = boreOf(element);
    return bore === undefined ? [] : [{ index, bore }];
  });
  if (places.length === 0) return run;
  const { index, bore } = draw.pick(places);
  const next = pipeOf(draw, bore * draw.pick([draw.between(0.5, 0.95), draw.between(1.05, 1.6)]));
  const narrower = (boreOf(next) ?? bore) < bore;
  const entered = draw.pick<Run>([
    [],
    [],
    [{ fitting: narrower ? 'reducer' : 'enlargement' }],
    [{ lossCoefficient: draw.between(0.05, 0.4), boreChange: true }],
  ]);
  return inserted(run, index + 1, [...entered, next]);
}

function changedRun(draw: Draw, features: Features, run: Run): Run {
  const checked = draw.chance(features.checkValve) ? withCheckValve(draw, run) : run;
  return draw.chance(features.boreStep) ? withStep(draw, checked) : checked;
}

function changedOutlet(draw: Draw, features: Features, outlet: ExtendedOutlet): ExtendedOutlet {
  const level = draw.chance(features.level) ? { staticHead: draw.between(-0.5, 1) } : {};
  const exit = draw.chance(features.exit) ? { exit: draw.pick(['submerged', 'free'] as const) } : {};
  return { ...outlet, ...level, ...exit };
}

/** Ratios of a side's bore to the leg's, one from each part of the published law. */
const ratioOf = (draw: Draw): number =>
  draw.pick([
    draw.between(0.35, 0.63),
    draw.between(0.635, 0.665),
    draw.between(0.67, 0.81),
    draw.between(0.82, 0.98),
    1,
  ]);

const outletsOf = (branch: ExtendedBranch): number =>
  branch.branches === undefined ? 1 : branch.branches.reduce((sum, child) => sum + outletsOf(child), 0);

function changedBranch(
  draw: Draw,
  features: Features,
  branch: ExtendedBranch,
  above?: number,
): ExtendedBranch {
  const run = changedRun(draw, features, branch.run);
  const bore = run.flatMap((element) => boreOf(element) ?? []).at(-1) ?? above;
  const outlet = branch.outlet && changedOutlet(draw, features, branch.outlet);
  if (branch.branches === undefined) return { ...branch, run, outlet };
  // The branch with the most outlets runs straight on, as it is built.
  const branches = branch.branches
    .map((child) => changedBranch(draw, features, child, bore))
    .sort((a, b) => outletsOf(b) - outletsOf(a));
  if (bore === undefined || !draw.chance(features.reducingTee)) return { ...branch, run, branches };
  const reduced = branches.map((child, index) =>
    index === 0 ? child : { ...child, run: [pipeOf(draw, bore * ratioOf(draw)), ...child.run] },
  );
  return { ...branch, run, branches: reduced, split: 'tee-90' };
}

/** The same pipework with features drawn for each of its places. */
export function withFeatures(draw: Draw, features: Features, loop: ExtendedLoop): ExtendedLoop {
  const suction = changedRun(draw, features, loop.suction);
  const bore = suction.flatMap((element) => boreOf(element) ?? []).at(-1);
  return {
    ...loop,
    suction,
    discharge: changedBranch(draw, features, loop.discharge, bore),
    ...(draw.chance(0.15) ? { boreChanges: 'ignored' as const } : {}),
  };
}
