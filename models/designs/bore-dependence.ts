/** Where the head of a run depends on the bores before and after it. */
import type { RunElement } from '../loop/loop.ts';
import { roleOf } from '../loop/role-of-element.ts';
import type { PipePlace, Run } from './run-tree.ts';

/** An element that takes its bore from a pipe. */
function isSizedByPipe(element: RunElement): boolean {
  if ('pipe' in element || 'loss' in element) return false;
  if ('valve' in element && typeof element.valve !== 'string') return false;
  return element.diameter === undefined;
}

/** A reducer or enlargement, whose loss follows from the bores on either side. */
const isBetweenBores = (element: RunElement): boolean => roleOf(element) === 'bore-change';

/** A loss that is said to be that of the step between two pipes. */
const isStatedStep = (element: RunElement): boolean => 'boreChange' in element && element.boreChange === true;

/** Whether the bore at the end of a run changes what its outlet, or the branches beyond with their split, lose. */
export const dependsOnBoreAtEnd = ({ outlet, split, beyond }: Run): boolean =>
  outlet === null
    ? split !== undefined || beyond.some(dependsOnBoreBefore)
    : outlet.nozzleDiameter === undefined;

/** Whether the bore of the last pipe before a run changes what it or what lies beyond it loses. */
export const dependsOnBoreBefore = (run: Run): boolean =>
  run.lead.some(isSizedByPipe) || (run.pipes.length === 0 && dependsOnBoreAtEnd(run));

/** Whether the bore of the next pipe of the run changes what lies between the two pipes loses. */
export const dependsOnNextPipe = ({ after, chargesStep }: PipePlace): boolean =>
  after.some(isBetweenBores) || (chargesStep && !after.some(isStatedStep));

/** Whether the bore of the first pipe beyond a run changes what the run itself loses; boreBefore [m]. */
export function dependsOnBoreBeyond({ lead, pipes }: Run, boreBefore: number | null): boolean {
  const last = pipes.at(-1);
  if (last !== undefined) return last.after.some(isBetweenBores);
  return lead.some((element) => isBetweenBores(element) || (boreBefore === null && isSizedByPipe(element)));
}

/** Whether any pipe lies in the run or beyond it. */
export const hasPipes = ({ pipes, beyond }: Run): boolean => pipes.length > 0 || beyond.some(hasPipes);
