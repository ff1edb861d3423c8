/** What a store remembers is never older than what was written. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { defineKind } from '../../../api/store/kind.ts';
import type { Store } from '../../../api/store/store.ts';
import { openedStore } from './opened.ts';

interface Texts {
  get(id: string): Promise<{ readonly text: string } | undefined>;
  list(): Promise<readonly string[]>;
  put(id: string, text: string): Promise<void>;
  /** Writes half of what it should, then throws. */
  fail(id: string): Promise<void>;
}

/** Kinds over one set of texts, and how often each was read. `gate` holds up a read that has found its text. */
function kinds(gate: () => Promise<void> = async () => {}) {
  const texts = new Map<string, string>();
  const reads: string[] = [];
  const open = () => (siteId: string) => ({
    async get(id: string) {
      reads.push(`${siteId} ${id}`);
      const text = texts.get(`${siteId} ${id}`);
      await gate();
      return text === undefined ? undefined : { text };
    },
    async list() {
      reads.push(`${siteId} list`);
      return [...texts.values()];
    },
    async put(id: string, text: string) {
      texts.set(`${siteId} ${id}`, text);
    },
    async fail(id: string) {
      texts.set(`${siteId} ${id}`, 'half');
      throw new Error('half done');
    },
  });
  const parts = { reads: { get: 'remembered', list: 'read-again' }, open } as const;
  return {
    notes: defineKind<Texts>({ name: 'note', ...parts }),
    labels: defineKind<Texts>({ name: 'label', ...parts }),
    reads,
  };
}

describe('a store that remembers', () => {
  let store: Store;
  beforeEach(async () => {
    store = await openedStore(':memory:');
  });
  afterEach(() => store.close());

  it('reads a record once, apart by site, kind and id', async () => {
    const { notes, labels, reads } = kinds();
    await store.of('a', notes).put('1', 'one');
    const first = await store.of('a', notes).get('1');
    expect(await store.of('a', notes).get('1')).toBe(first);
    expect(reads).toEqual(['a 1']);
    expect(await store.of('b', notes).get('1')).toBeUndefined();
    expect(await store.of('a', notes).get('2')).toBeUndefined();
    await store.of('a', labels).get('1');
    expect(reads).toEqual(['a 1', 'b 1', 'a 2', 'a 1']);
  });

  it('reads again what its kind does not name as remembered', async () => {
    const { notes, reads } = kinds();
    await store.of('a', notes).list();
    await store.of('a', notes).list();
    expect(reads).toEqual(['a list', 'a list']);
  });

  it('reads a record again after any operation that its kind does not name as a read', async () => {
    const { notes } = kinds();
    const { get, put, fail } = store.of('a', notes);
    await put('1', 'one');
    expect(await get('1')).toEqual({ text: 'one' });
    await put('1', 'two');
    expect(await get('1')).toEqual({ text: 'two' });
    await expect(fail('1')).rejects.toThrow('half done');
    expect(await get('1')).toEqual({ text: 'half' });
  });

  it('reads a record again after a write of another kind or site', async () => {
    const { notes, labels, reads } = kinds();
    await store.of('a', notes).put('1', 'one');
    await store.of('a', notes).get('1');
    await store.of('b', labels).put('1', 'other');
    await store.of('a', notes).get('1');
    expect(reads).toEqual(['a 1', 'a 1']);
  });

  it('keeps nothing that was read while a write was under way', async () => {
    let release: () => void = () => {};
    const held = new Promise<void>((resolve) => {
      release = resolve;
    });
    // The first read begins before the write and ends after it, with what was there before.
    const gates = [held];
    const { notes } = kinds(() => gates.shift() ?? Promise.resolve());
    await store.of('a', notes).put('1', 'old');
    const reading = store.of('a', notes).get('1');
    await store.of('a', notes).put('1', 'new');
    release();
    expect(await reading).toEqual({ text: 'old' });
    expect(await store.of('a', notes).get('1')).toEqual({ text: 'new' });
  });

  it('does not remember what is not there', async () => {
    const { notes, reads } = kinds();
    await store.of('a', notes).get('none');
    await store.of('a', notes).get('none');
    expect(reads).toEqual(['a none', 'a none']);
  });

  it('keeps a limited number of records', async () => {
    const { notes, reads } = kinds();
    const { get, put } = store.of('a', notes);
    const ids = Array.from({ length: 1_001 }, (_, place) => String(place));
    for (const id of ids) await put(id, id);
    for (const id of ids) await get(id);
    await get('1000');
    await get('0');
    expect(reads.slice(ids.length)).toEqual(['a 0']);
  });
});
