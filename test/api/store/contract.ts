/** What a store must do on every database. */
import { afterEach, beforeEach, describe } from 'vitest';
import { defaultSite } from '../../../api/records/site/kind.ts';
import type { Store } from '../../../api/store/store.ts';
import { baselines } from './contract/baselines.ts';
import { calibrations } from './contract/calibrations.ts';
import { comparisons } from './contract/comparisons.ts';
import { loops } from './contract/loops.ts';
import { maintenance } from './contract/maintenance.ts';
import { pumpLists } from './contract/pump-lists.ts';
import { pumpsOneByOne } from './contract/pumps.ts';
import { races } from './contract/races.ts';
import { readings } from './contract/readings.ts';
import { siteContents } from './contract/site-contents.ts';
import { sites } from './contract/sites.ts';
import { summaryReads } from './contract/summary-reads.ts';
import { tariffs } from './contract/tariffs.ts';
import { A, B } from './contract/two-sites.ts';
import { upgradePlans } from './contract/upgrade-plans.ts';
import { T0 } from './examples.ts';

/** `open` gives a store with no rows; `dispose` releases what was opened. */
export interface StoreMaker {
  open(): Promise<Store>;
  dispose(): Promise<void>;
}

export function storeContract(title: string, maker: StoreMaker): void {
  describe(`a store on ${title}`, () => {
    let store: Store;

    beforeEach(async () => {
      store = await maker.open();
      for (const siteId of [A, B]) await store.ensureSite({ siteId, document: defaultSite('EUR'), now: T0 });
    });
    afterEach(async () => {
      await store.close();
      await maker.dispose();
    });

    sites(() => store);
    pumpsOneByOne(() => store);
    pumpLists(() => store);
    loops(() => store);
    calibrations(() => store);
    baselines(() => store);
    tariffs(() => store);
    comparisons(() => store);
    upgradePlans(() => store);
    summaryReads(() => store);
    siteContents(() => store);
    maintenance(() => store);
    readings(() => store);
    races(() => store);
  });
}
