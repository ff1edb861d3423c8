/** Lists what begins a baseline of a loop. */
import { MS_PER_DAY } from '../../../models/calendar/zone-offsets.ts';
import type { BaselineEvent } from '../../../models/condition/baseline.ts';
import type { BaselineStart } from '../../records/baseline/contract.ts';
import type { Remedied } from './maintenance-history.ts';

/** In the order of time; `since`: when the pump was installed [ms], 0: not stated. */
export function baselineEvents({
  start,
  since,
  remedied,
}: {
  readonly start: BaselineStart;
  readonly since: number;
  readonly remedied: readonly Remedied[];
}): readonly BaselineEvent[] {
  const event = (at: number, startedBy: BaselineEvent['startedBy']): BaselineEvent => ({
    ...{ time: at / MS_PER_DAY, startedBy },
  });
  const { requestedFrom, changedAt } = start;
  return [
    ...(since > 0 ? [event(since, 'installation')] : []),
    ...(changedAt === null ? [] : [event(changedAt, 'installation')]),
    ...(requestedFrom === null ? [] : [event(requestedFrom, 'request')]),
    ...remedied.map(({ at, remedy }) => event(at, remedy)),
  ].toSorted((a, b) => a.time - b.time);
}
