import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { DEFAULT_SITE_ID } from '../../../api/access/site.ts';
import { PUMPS } from '../../../api/records/pump/kind.ts';
import { openSqliteStore } from '../../../api/store/sqlite.ts';
import { runTypescript } from '../child-process.ts';
import { openedStore, removeDirectory, temporaryDirectory } from './opened.ts';

const WRITER = 'test/api/store/writing-process.ts';
const ROUNDS = 5;

let directory = '';
let path = '';
beforeEach(() => {
  directory = temporaryDirectory();
  path = join(directory, 'loops.sqlite');
});
afterEach(() => removeDirectory(directory));

/** Only whole lines count: the last one may be cut off. */
const acknowledged = (output: string, word: string): string[] =>
  output
    .split('\n')
    .slice(0, -1)
    .filter((line) => line.startsWith(word))
    .map((line) => line.slice(word.length + 1));

it('has every acknowledged write after the writing process was killed with SIGKILL', async () => {
  let outputs = '';
  for (let round = 0; round < ROUNDS; round += 1) {
    const writer = runTypescript(WRITER, [path, String(round), '1500']);
    // A different moment each round, some of them in the middle of a write.
    await writer.untilOutputHas(`replaced ${round}-${10 + 7 * round}`);
    writer.process.kill('SIGKILL');
    expect(await writer.ended).toBe('SIGKILL');
    outputs += writer.output();
  }
  const inserted = acknowledged(outputs, 'inserted');
  const replaced = acknowledged(outputs, 'replaced');
  expect(replaced.length).toBeGreaterThan(ROUNDS * 10);

  const store = await openedStore(path);
  const pumps = await store.of(DEFAULT_SITE_ID, PUMPS).some(inserted);
  expect(pumps).toHaveLength(inserted.length);
  const replacedThere = new Set(pumps.filter(({ version }) => version === 2).map(({ id }) => id));
  expect(replaced.filter((id) => !replacedThere.has(id))).toEqual([]);
  await store.close();
});

it('belongs to one process: a second one is refused until the first lets go', async () => {
  const writer = runTypescript(WRITER, [path, '0', '1']);
  await writer.untilOutputHas('replaced 0-0');
  expect(await openSqliteStore(path)).toEqual({ ok: false, failure: { code: 'in-use-by-another-process' } });
  writer.process.kill('SIGKILL');
  await writer.ended;

  const store = await openedStore(path);
  const second = runTypescript(WRITER, [path, '1', '1']);
  expect(await second.ended).toBe(3);
  expect(second.output()).toBe('in-use-by-another-process\n');
  // The refused process left the lock and the data of the first alone.
  await expect(store.of(DEFAULT_SITE_ID, PUMPS).get('0-0')).resolves.toMatchObject({ version: 2 });
  await store.close();
});
