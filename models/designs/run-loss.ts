/** The head that a piece of a run loses at the run's required flow, for each bore that it can have. */
import { BORE_CHANGES } from '../loop/bore-changes.ts';
import type { RunElement } from '../loop/loop.ts';
import { intakeLoss, placeOutlet } from '../network/build-network.ts';
import { lossOver } from '../network/network.ts';
import { placeRun } from '../network/place-elements.ts';
import type { DesignLoop } from './design-loop.ts';
import { oncePerRun } from './once-per-run.ts';
import type { PipePlace, Run, Size } from './run-tree.ts';

/** Bores [m] of the last pipe before a piece and of the first after it; null where there is none. */
export interface Between {
  readonly before: number | null;
  readonly after: number | null;
}

/** A pipe of a size, and the bore [m] of the next pipe. */
export interface ChosenPipe {
  readonly size: Size;
  readonly after: number | null;
}

/** Losses [m]; null where pieces do not go together: a reducer that would have to widen, for instance. */
export interface RunLosses {
  /** What lies before the first pipe of a run; before that of the suction, the intake as well. */
  lead(run: Run, between: Between): number | null;
  /** The pipe at a place, what lies between it and the next pipe or the end of the run, and the step to the next pipe. */
  pipe(run: Run, place: number, chosen: ChosenPipe): number | null;
  /** Of the outlet at the end of a run, by the bore there. */
  exit(run: Run, bore: number | null): number;
}

/** Losses of the runs of a loop, each worked out once; kinematicViscosity [m2/s]. */
export function runLosses(loop: DesignLoop, kinematicViscosity: number): RunLosses {
  const { frictionMultiplier: multiplier, boreChanges = BORE_CHANGES } = loop;
  const once = oncePerRun<number | null>();
  const lossOf = (run: Run, elements: readonly RunElement[], { before, after }: Between): number | null => {
    const placed = placeRun({
      ...{ run: elements, path: [], upstream: before, downstream: after },
      ...{ kinematicViscosity, multiplier, boreChanges },
    });
    return placed.ok ? lossOver(placed.value.elements, run.flow).head : null;
  };
  const entrance = ({ isSuction, flow, pipes }: Run, bore: number | null): number =>
    isSuction && pipes.length > 0 ? lossOver(intakeLoss(loop, bore), flow).head : 0;
  return {
    lead: (run, between) =>
      once(run, `lead ${between.before} ${between.after}`, () => {
        const lost = run.lead.length === 0 ? 0 : lossOf(run, run.lead, between);
        return lost === null ? null : lost + entrance(run, between.after);
      }),
    pipe: (run, place, { size, after }) =>
      once(run, `${place} ${size.place} ${after}`, () => {
        const { length, after: elements } = placeAt(run, place);
        const isLast = place === run.pipes.length - 1;
        const next = isLast || after === null ? [] : [{ pipe: { insideDiameter: after }, length: 0 }];
        const piece = [{ pipe: size.pipe, length }, ...elements, ...next];
        return lossOf(run, piece, { before: null, after });
      }),
    exit: ({ outlet, flow, path }, bore) => {
      if (outlet === null) return 0;
      const placed = placeOutlet({ outlet }, bore, path);
      if (!placed.ok) throw new Error('invariant: exits that have no bore were refused');
      return lossOver(placed.value.elements, flow).head;
    },
  };
}

/** The pipe at a place [-] of a run. */
export function placeAt({ pipes }: Pick<Run, 'pipes'>, place: number): PipePlace {
  const pipe = pipes[place];
  if (pipe === undefined) throw new Error(`invariant: the run has no pipe ${place}`);
  return pipe;
}
