/** Names what an assembly is asked to run, and what it runs at. */

import type { Candidate } from '../../question/candidates.ts';
import type { ScheduleRecord } from '../../records/schedule/kind.ts';
import type { RecommendationAnswer } from '../recommendation/answer-schema.ts';
import type { AskedAssembly, AssemblyLoop } from './assembly/assembly-loop.ts';
import type { VersionOf } from './contract.ts';

/** A duty as a recommendation reports it. */
export type ReportedDuty = RecommendationAnswer['ranking'][number];

export type SettingFrom = 'stated' | 'schedule' | 'installed' | 'recommended' | 'highest' | 'power';

export interface Running {
  readonly setting: number | null;
  readonly settingFrom: SettingFrom;
  readonly feasible: boolean;
  /** Why it is not feasible. */
  readonly detail: string | null;
  readonly power: number;
  readonly annualEnergy: number;
  readonly annualCost: number;
  /** By the uncertainty of the curves; null where nothing is known of it. */
  readonly energyRange: { readonly low: number; readonly high: number } | null;
  /** Null where nothing was solved. */
  readonly duty: ReportedDuty | null;
  /** That of its schedule, where its hours are priced by it. */
  readonly tariff: VersionOf | null;
}

export interface Runnable {
  readonly asked: AskedAssembly;
  readonly found: AssemblyLoop;
  readonly candidate: Candidate;
  /** Of a stored loop; null without one. */
  readonly schedule: ScheduleRecord | null;
  readonly path: readonly (string | number)[];
}
