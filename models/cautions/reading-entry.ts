/** Gives the cautions about readings that are far from what the loop should show. */
import { type Predicted, predictions, type Station } from '../condition/predicted.ts';
import { pointerTo } from '../loop/document-path.ts';
import type { Reading } from '../readings/reading.ts';
import { type CautionOf, COMMON_PRACTICE, type Place, topic } from './topic.ts';

export const READING_ENTRY = topic({
  'reading-far-off': {
    severity: 'warning',
    sentence:
      'A measured flow is more than 20 times the predicted one, or less than a twentieth: look at its unit. L/min for L/h is a factor of 60, m3/h for L/h one of 1000.',
    source: COMMON_PRACTICE,
  },
});

/** Ratio of measured to predicted flow, or its inverse, above which the unit is doubted. */
const RATIO_MOST = 20;

/**
 * Judges the flows of readings, in the order of the request, against those of the installed pumps at their settings.
 * Errors: throws `SolveFailure` where network or search reach a limit.
 */
export function readingEntryCautions(
  station: Station,
  readings: readonly Reading[],
): readonly CautionOf<typeof READING_ENTRY>[] {
  const hasFlow = ({ setting, flow, outletFlows }: Reading) =>
    setting > 0 && (flow !== undefined || outletFlows !== undefined);
  const settings = readings.filter(hasFlow).map(({ setting }) => setting);
  const predicted = predictions(station, settings);
  const names = station.loop.system.outlets.map(({ name }) => name);
  const places = readings.flatMap((reading, index) => {
    const expected = predicted.get(reading.setting) ?? null;
    return expected === null ? [] : farOff(reading, { expected, names, index });
  });
  return READING_ENTRY.worst('reading-far-off', places);
}

function farOff(
  { flow, outletFlows = {} }: Reading,
  {
    expected,
    names,
    index,
  }: { readonly expected: Predicted; readonly names: readonly string[]; readonly index: number },
): readonly Place[] {
  const place = (value: number | undefined, limit: number | undefined, member: readonly string[]) => {
    if (value === undefined || limit === undefined || !(value > 0 && limit > 0)) return [];
    const ratio = Math.max(value / limit, limit / value);
    if (!(ratio > RATIO_MOST)) return [];
    const pointer = pointerTo(['readings', index, ...member]);
    return [{ subject: pointer, pointer, value, limit, quantity: 'flow', excess: ratio } as const];
  };
  return [
    ...place(flow, expected.flow, ['flow']),
    ...names.flatMap((name, i) => place(outletFlows[name], expected.outletFlows[i], ['outletFlows', name])),
  ];
}
