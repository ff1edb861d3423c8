/** Gives the cautions about a loop whose entries look like a slip of scale. */
import { type DocumentPath, pointerTo } from '../loop/document-path.ts';
import type { Branch, Loop, RunElement } from '../loop/loop.ts';
import { type CautionOf, COMMON_PRACTICE, type Place, topic } from './topic.ts';

export const LOOP_ENTRY = topic({
  'opening-range': {
    severity: 'warning',
    sentence:
      'A valve is open by less than 1 %: the opening looks like a fraction. Enter it in percent, as 100 for fully open.',
    source: COMMON_PRACTICE,
  },
});

/** Opening [%] below which it looks like a fraction. */
const FRACTION_MOST = 1;

/** Judges the openings of the valves of a loop. */
export function loopEntryCautions(loop: Loop): readonly CautionOf<typeof LOOP_ENTRY>[] {
  if ('systemCurve' in loop) return [];
  const places = [
    ...oddOpenings(loop.suction, ['suction']),
    ...oddOpeningsBeyond(loop.discharge, ['discharge']),
  ];
  return LOOP_ENTRY.worst('opening-range', places);
}

function oddOpeningsBeyond(branch: Branch, path: DocumentPath): readonly Place[] {
  const beyond = (branch.branches ?? []).flatMap((child, index) =>
    oddOpeningsBeyond(child, [...path, 'branches', index]),
  );
  return [...oddOpenings(branch.run, [...path, 'run']), ...beyond];
}

function oddOpenings(run: readonly RunElement[], path: DocumentPath): readonly Place[] {
  return run.flatMap((element, index) => {
    const value = 'valve' in element ? element.opening : undefined;
    if (value === undefined || !(value > 0 && value < FRACTION_MOST)) return [];
    const pointer = pointerTo([...path, index]);
    return [{ subject: pointer, pointer, value, limit: FRACTION_MOST, excess: -value }];
  });
}
