/** All the answers that two checkouts are compared by, or the first few of each kind. */
import { type AnswerLine, type Asker, openAsker } from './asker.ts';
import { calibrations } from './calibrations.ts';
import { comparisons } from './comparisons.ts';
import { conditions } from './conditions.ts';
import type { Kind } from './kind.ts';
import { recommendations } from './recommendations.ts';
import { schedules } from './schedules.ts';
import { upgradePlans } from './upgrade-plans.ts';

export const KINDS: readonly Kind[] = [
  recommendations,
  conditions,
  calibrations,
  comparisons,
  schedules,
  upgradePlans,
];

const labelOf = ({ name }: Kind, place: number): string => `${name}-${String(place).padStart(3, '0')}`;

async function asked(kind: Kind, place: number, asker: Asker): Promise<readonly AnswerLine[]> {
  await kind.ask(asker, { place, label: labelOf(kind, place) });
  return asker.taken();
}

/** The lines of a kind's questions, in order. */
export async function* answersOf(kind: Kind, count: number): AsyncGenerator<AnswerLine> {
  const shared = kind.isShared ? await openAsker() : null;
  for (let place = 0; place < count; place += 1) {
    const asker = shared ?? (await openAsker());
    yield* await asked(kind, place, asker);
    if (shared === null) await asker.close();
  }
  await shared?.close();
}
