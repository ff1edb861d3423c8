/** Says that a request names a record that is not there, and what the name stands for where it names another. */
import { KEYS } from '../store/keys.ts';
import type { SiteStore } from '../store/store.ts';
import { invalidRequest, type Place, type Problem, problem } from './problem.ts';

/** The kinds of records that users may give a key, as problems call them, and where they are listed. */
const LISTS = {
  pump: '/v1/pumps',
  loop: '/v1/loops',
  tariff: '/v1/tariffs',
  'maintenance task': '/v1/maintenance-tasks',
} as const;

export type KeyedNoun = keyof typeof LISTS;

export const isKeyedNoun = (noun: string): noun is KeyedNoun => Object.hasOwn(LISTS, noun);

/** What is said of a name of the wrong kind; empty where it names nothing at all. */
async function misnamed(store: SiteStore, name: string): Promise<string> {
  const [other] = await store.of(KEYS).called(name);
  if (other === undefined) return '';
  return `is the ${other.key === name ? 'key' : 'id'} of the ${other.kind.replace('-', ' ')} "${other.name}"`;
}

/** `place` is null where the name stands in the path. */
export async function unknownRecord(
  store: SiteStore,
  { noun, name, place }: { readonly noun: KeyedNoun; readonly name: string; readonly place: Place | null },
): Promise<Problem> {
  const [is, list] = [await misnamed(store, name), `GET ${LISTS[noun]} lists those that there are`];
  if (place === null) {
    const other = is === '' ? '' : `: it ${is}`;
    return problem('not-found', `There is no ${noun} with this id or key${other}. ${list}.`);
  }
  const other = is === '' ? '' : `, but it ${is}`;
  return invalidRequest([{ ...place, detail: `names no ${noun} that is stored${other}; ${list}` }]);
}
