/** Stores opened for a test, on files in a directory of its own. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openSqliteStore } from '../../../api/store/sqlite.ts';
import type { Store } from '../../../api/store/store.ts';

export const temporaryDirectory = (): string => mkdtempSync(join(tmpdir(), 'loopwright-'));

export const removeDirectory = (path: string): void => rmSync(path, { recursive: true, force: true });

export async function openedStore(path: string): Promise<Store> {
  const opened = await openSqliteStore(path);
  if (!opened.ok) throw new Error(`not opened: ${JSON.stringify(opened.failure)}`);
  return opened.value;
}
