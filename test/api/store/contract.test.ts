import { join } from 'node:path';
import { storeContract } from './contract.ts';
import { openedStore, removeDirectory, temporaryDirectory } from './opened.ts';

let directory = '';

storeContract('a SQLite file', {
  async open() {
    directory = temporaryDirectory();
    return await openedStore(join(directory, 'not', 'yet', 'there', 'loops.sqlite'));
  },
  async dispose() {
    removeDirectory(directory);
  },
});

storeContract('SQLite in memory', {
  open: () => openedStore(':memory:'),
  async dispose() {},
});
