/** Gives the cautions about what valves take from the head of the pump, and what that does to them. */

import { cavitationIndex } from '../components/cavitation-index.ts';
import type { ExactDuty } from '../duty/duty-point.ts';
import { pointerTo } from '../loop/document-path.ts';
import type { CompiledLoop } from '../network/compiled-loop.ts';
import { type ElementState, elementStates } from '../network/element-states.ts';
import { velocityIn } from '../network/velocity-in.ts';
import { atmosphericPressure } from '../physics/atmosphere.ts';
import { GRAVITY } from '../physics/gravity.ts';
import { vapourPressure } from '../physics/vapour-pressure.ts';
import { type CautionOf, topic } from './topic.ts';

export const VALVES = topic({
  'valve-throttles': {
    severity: 'warning',
    sentence:
      'A valve takes more than half of the head of the pump. Open it and lower the setting, or choose a smaller pump.',
    source: 'network solution',
  },
  'valve-cavitates': {
    severity: 'warning',
    sentence:
      'The pressure falls so far in a valve that the water can boil in it, which wears it and is loud. Share the loss between several valves, or lower the setting; ball and butterfly valves cavitate sooner than others.',
    source:
      "cavitation index as in ISA-RP75.23; half of the pressure above that of vapour as allowable drop, a valve maker's sizing sheet",
  },
});

type ValveCaution = CautionOf<typeof VALVES>;

/** Share of the pump's head that a valve may take. */
const SHARE_MOST = 0.5;
/** Cavitation index below which a valve cavitates. */
const INDEX_LEAST = 2;

/** What a year at the duty takes: its energy [kWh], and its cost [money], null without a price. */
export interface YearAtDuty {
  readonly annualEnergy: number;
  readonly annualCost: number | null;
}

/**
 * Judges every valve that passes water at a duty, check and foot valves apart.
 *
 * @param site elevation above sea level [m].
 * @param year energy [kWh] and cost [money] of the whole duty, of which a valve takes its share; null: not known.
 */
export function valveCautions(
  loop: CompiledLoop,
  duty: ExactDuty,
  { elevation, year }: { readonly elevation: number; readonly year: YearAtDuty | null },
): readonly ValveCaution[] {
  const solution = duty.state?.network;
  if (loop.network === null || duty.deadHead || solution === null || solution === undefined) return [];
  const valves = elementStates(loop.network, solution).filter(
    ({ element, flow }) => element.kind === 'valve' && element.role === 'valve' && flow !== 0,
  );
  return [...throttling(valves, duty, year), ...cavitating(loop, valves, elevation)];
}

const lostIn = ({ headBefore, headBehind }: ElementState): number => Math.abs(headBefore - headBehind);

function throttling(
  valves: readonly ElementState[],
  { flow: total, head }: ExactDuty,
  year: YearAtDuty | null,
): readonly ValveCaution[] {
  const found = valves.flatMap((valve) => {
    const value = lostIn(valve) / head;
    if (!(value > SHARE_MOST)) return [];
    const pointer = pointerTo(valve.element.path);
    const cost = year === null ? '' : `: ${costWords(year, (Math.abs(valve.flow) / total) * value)}`;
    return [{ subject: `${pointer}${cost}`, pointer, value, limit: SHARE_MOST, excess: value }];
  });
  return VALVES.worst('valve-throttles', found);
}

/** What a share [-] of a year's energy costs. */
const costWords = ({ annualEnergy, annualCost }: YearAtDuty, share: number): string =>
  annualCost === null
    ? `${(share * annualEnergy).toFixed(0)} kWh a year`
    : `${(share * annualCost).toFixed(2)} of money a year`;

function cavitating(
  { entered, water: { density } }: CompiledLoop,
  valves: readonly ElementState[],
  elevation: number,
): readonly ValveCaution[] {
  const perHead = density * GRAVITY;
  const atmosphere = atmosphericPressure(elevation);
  const vapour = vapourPressure(entered.water.temperature);
  const found = valves.flatMap((valve) => {
    const { element, branch, flow, bore, headBefore, headBehind } = valve;
    const height = branch?.highestElevation ?? entered.pumpElevation;
    const inlet = flow > 0 ? headBefore : headBehind;
    const velocityHead = bore === null ? 0 : velocityIn(bore, flow) ** 2 / (2 * GRAVITY);
    const before = atmosphere + perHead * (inlet - height - velocityHead);
    const value = cavitationIndex({ before, vapour, drop: perHead * lostIn(valve) });
    if (!(value < INDEX_LEAST)) return [];
    const pointer = pointerTo(element.path);
    return [{ subject: pointer, pointer, value, limit: INDEX_LEAST, excess: -value }];
  });
  return VALVES.worst('valve-cavitates', found);
}
