/** Gathers the cautions about the condition of a loop. */
import { MS_PER_DAY } from '../../../models/calendar/zone-offsets.ts';
import type { Caution } from '../../../models/cautions/catalogue.ts';
import { conditionCautions } from '../../../models/cautions/condition.ts';
import { loopCautions } from '../../../models/cautions/loop-cautions.ts';
import type { CompiledLoop } from '../../../models/network/compiled-loop.ts';
import type { Reading } from '../../../models/readings/reading.ts';
import type { ScheduleRecord } from '../../records/schedule/kind.ts';
import type { JudgedLoop } from './judge-loop.ts';

/** Verdicts after which nothing is done at pump or pipes. */
const QUIET: readonly string[] = ['as-expected', 'not-enough-readings', 'baseline-forming'];
/** Causes that pressures on both sides of the pump tell apart. */
const PLACES: readonly string[] = ['clogged-intake', 'clogged-discharge', 'worn-pump'];

/** Outlets that readings name and the loop does not have. */
function formerOutlets({ system }: CompiledLoop, readings: readonly Reading[]): readonly string[] {
  const known = new Set(system.outlets.map(({ name }) => name));
  const named = new Set(readings.flatMap(({ outletFlows = {} }) => Object.keys(outletFlows)));
  return [...named].filter((name) => !known.has(name));
}

export function cautionsOf(
  { report, model, readings, total }: JudgedLoop,
  { schedule }: { readonly schedule: ScheduleRecord | null },
): readonly Caution[] {
  const { verdict, causes, entries, counts, shortfall } = report;
  const [first, last] = [readings[0], readings.at(-1)];
  const days = first === undefined || last === undefined ? 0 : (last.time - first.time) / MS_PER_DAY;
  const ofCondition = conditionCautions({
    ...{ used: counts.used, days },
    isSteady: entries.verdict === 'differ',
    isPlaceOpen: causes.filter(({ cause }) => PLACES.includes(cause)).length > 1,
    isStopped: report.isStopped,
    lacksGauges: report.lacksGauges,
    throttles: schedule?.document.phases.some(({ openings }) => openings !== undefined) ?? false,
    formerOutlets: formerOutlets(model, readings),
    isSampled: total > readings.length,
    hasDate: shortfall !== null,
    asksForService: !QUIET.includes(verdict),
  });
  return [...ofCondition, ...loopCautions(model)];
}
