/** Writes pumps to a store and says of each write that it was acknowledged, only after it was; then keeps the store open. */

import { writeSync } from 'node:fs';
import { DEFAULT_SITE_ID } from '../../../api/access/site.ts';
import { PUMPS } from '../../../api/records/pump/kind.ts';
import { defaultSite, SITE } from '../../../api/records/site/kind.ts';
import { openSqliteStore } from '../../../api/store/sqlite.ts';
import { exampleFit, examplePump, T0 } from './examples.ts';

const [path = '', round = '', writes = ''] = process.argv.slice(2);
const say = (line: string) => writeSync(1, `${line}\n`);

const opened = await openSqliteStore(path);
if (!opened.ok) {
  say(opened.failure.code);
  process.exit(3);
}

const store = opened.value;
const siteId = DEFAULT_SITE_ID;
await store.of(siteId, SITE).ensure({ document: defaultSite('EUR'), now: T0 });
say('open');
for (let write = 0; write < Number(writes); write += 1) {
  const id = `${round}-${write}`;
  const pump = { id, fit: exampleFit, now: T0 };
  await store.of(siteId, PUMPS).insert({ ...pump, document: examplePump('first') });
  say(`inserted ${id}`);
  await store.of(siteId, PUMPS).replace({ ...pump, document: examplePump('second'), expectedVersion: 1 });
  say(`replaced ${id}`);
}
setInterval(() => {}, 60_000);
