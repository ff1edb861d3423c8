/** Turns the names that a request gives to stored records, ids or keys, into ids: in its path, its query, its body. */
import { failed, type Result, success } from '../../curves/result.ts';
import { isKey } from '../store/key-form.ts';
import { KEYS } from '../store/keys.ts';
import type { SiteStore } from '../store/store.ts';
import type { KeyedTable } from '../store/tables.ts';
import type { Problem } from './problem.ts';
import { type KeyedNoun, unknownRecord } from './unknown-record.ts';

interface Kind {
  readonly table: KeyedTable;
  readonly noun: KeyedNoun;
}

/** Members and parameters that name a record; with an s those that name several, with Id the parts of a path. */
const KINDS: ReadonlyMap<string, Kind> = new Map([
  ['pump', { table: 'pump', noun: 'pump' }],
  ['loop', { table: 'loop', noun: 'loop' }],
  ['tariff', { table: 'tariff', noun: 'tariff' }],
  ['task', { table: 'maintenance_task', noun: 'maintenance task' }],
]);

/** Whether records called by such a name may have a key. */
export const mayHaveKey = (name: string): boolean => KINDS.has(name);

const without = (ending: string, name: string): string =>
  name.endsWith(ending) ? name.slice(0, -ending.length) : '';

type Texts = Readonly<Record<string, string>>;

/** The parts of a path; what names nothing stays as it is. */
export async function pathWithIds(params: Texts, store: SiteStore): Promise<Texts> {
  const entries = Object.entries(params).map(async ([part, name]) => {
    const kind = KINDS.get(without('Id', part));
    if (kind === undefined || !isKey(name)) return [part, name];
    const record = await store.of(KEYS).one(kind.table, name);
    return [part, record?.id ?? name];
  });
  return Object.fromEntries(await Promise.all(entries));
}

/** A query as its schema read it, whose names may be lists with commas; a name of nothing is a problem. */
export async function queryWithIds<Query extends object>(
  query: Query,
  store: SiteStore,
): Promise<Result<Query, Problem>> {
  const changed: Record<string, string> = {};
  for (const [parameter, value] of Object.entries(query)) {
    const kind = KINDS.get(parameter);
    if (kind === undefined || typeof value !== 'string') continue;
    const names = value.split(',');
    const ids = await store.of(KEYS).ids(kind.table, [...new Set(names)]);
    const unknown = names.find((name) => !ids.has(name));
    if (unknown !== undefined) {
      const place = { parameter };
      return failed(await unknownRecord(store, { noun: kind.noun, name: unknown, place }));
    }
    changed[parameter] = names.map((name) => ids.get(name)).join(',');
  }
  return success({ ...query, ...changed });
}

type Rename = (kind: Kind, name: string) => string;

/** The value with the names in it renamed, wherever they stand. */
function renamed(value: unknown, rename: Rename): unknown {
  if (Array.isArray(value)) return value.map((item) => renamed(item, rename));
  if (typeof value !== 'object' || value === null) return value;
  const members = Object.entries(value).map(([member, held]) => {
    const one = KINDS.get(member);
    if (one !== undefined && typeof held === 'string') return [member, rename(one, held)];
    const several = KINDS.get(without('s', member));
    if (several === undefined || !Array.isArray(held)) return [member, renamed(held, rename)];
    const items = held.map((item) =>
      typeof item === 'string' ? rename(several, item) : renamed(item, rename),
    );
    return [member, items];
  });
  return Object.fromEntries(members);
}

/** A body as it came, before its schema reads it; what names nothing stays as it is, to be refused at its place. */
export async function bodyWithIds(body: unknown, store: SiteStore): Promise<unknown> {
  const names = new Map<KeyedTable, Set<string>>();
  renamed(body, ({ table }, name) => {
    if (isKey(name)) names.set(table, (names.get(table) ?? new Set()).add(name));
    return name;
  });
  if (names.size === 0) return body;
  const ids = new Map<KeyedTable, ReadonlyMap<string, string>>();
  for (const [table, asked] of names) ids.set(table, await store.of(KEYS).ids(table, [...asked]));
  return renamed(body, ({ table }, name) => ids.get(table)?.get(name) ?? name);
}
