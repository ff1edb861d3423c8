/** Keeps planned loops by the versions that they follow from, since controllers ask every minute. */

import { failed, type Result, success } from '../../../curves/result.ts';
import { MINUTES_PER_HOUR } from '../../../models/calendar/time-factors.ts';
import { MS_PER_DAY, MS_PER_MINUTE } from '../../../models/calendar/zone-offsets.ts';
import { newMemory } from '../../../models/schedule/run-blocks.ts';
import { type Step, stepsWithin } from '../../../models/schedule/setpoints.ts';
import { siteYear } from '../../clock/site-time.ts';
import { zoneAround } from '../../clock/zone.ts';
import type { Problem } from '../../http/problem.ts';
import { unknownRecord } from '../../http/unknown-record.ts';
import { answerCache } from '../../question/answer-cache.ts';
import { SCHEDULES } from '../../records/schedule/kind.ts';
import type { SiteStore } from '../../store/store.ts';
import { type PlanDeps, type PlannedLoop, plannedLoop } from './planned-loop.ts';

export interface SteppedLoop {
  readonly planned: PlannedLoop;
  /** The step that holds at an instant. */
  stepAt(instant: number): Step;
  /** The steps that touch an interval, in order. */
  steps(from: number, until: number): readonly Step[];
}

export interface PlanCache {
  /** By the id of a loop. */
  find(store: SiteStore, id: string): Promise<Result<SteppedLoop, Problem>>;
}

/** A quarter of an hour [ms]: what is older does not show whether the pump follows now. */
export const LATEST_WITHIN = (MINUTES_PER_HOUR / 4) * MS_PER_MINUTE;

const KEPT_PLANS = 500;

export function planCache(deps: Omit<PlanDeps, 'store'>): PlanCache {
  const answers = answerCache<SteppedLoop>({ max: KEPT_PLANS });
  return {
    async find(store, id) {
      const versions = await store.of(SCHEDULES).setpointVersions(id);
      if (versions === undefined)
        return failed(await unknownRecord(store, { noun: 'loop', name: id, place: null }));
      return answers.answer(`${store.siteId} ${id} ${JSON.stringify(versions)}`, async () => {
        const planned = await plannedLoop({ ...deps, store }, id);
        return planned.ok ? success(steppedLoop(planned.value)) : planned;
      });
    },
  };
}

function steppedLoop(planned: PlannedLoop): SteppedLoop {
  const memory = newMemory();
  let window: { from: number; until: number; steps: readonly Step[] } = { from: 0, until: 0, steps: [] };
  const steps = (from: number, until: number): readonly Step[] => {
    const { plan, rates, sources } = planned;
    const zoneName = sources.site.document.timeZone;
    const zone = zoneAround(zoneName, siteYear(zoneName, from));
    const calendar = { phases: plan.phases.map(({ phase }) => phase), holidays: rates.holidays, zone };
    return stepsWithin(plan, calendar, { rates, zone }, { from, until }, memory);
  };
  return {
    planned,
    steps,
    stepAt(instant) {
      if (instant < window.from || instant >= window.until) {
        // Readings of a while ago are held against the step of their time.
        const [from, until] = [instant - LATEST_WITHIN, instant + MS_PER_DAY];
        window = { from, until, steps: steps(from, until) };
      }
      const step = window.steps.find(({ until }) => until > instant);
      if (step === undefined) throw new Error('invariant: a phase runs at every instant');
      return step;
    },
  };
}
