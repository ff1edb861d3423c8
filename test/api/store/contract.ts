/** What a store must do on every database. */
import { afterEach, beforeEach, describe } from 'vitest';
import { defaultSite, SITE } from '../../../api/records/site/kind.ts';
import type { Store } from '../../../api/store/store.ts';
import { calibrations } from '../features/calibration/contract.ts';
import { comparisons } from '../features/comparison/contract.ts';
import { siteContents } from '../features/site-copy/contract.ts';
import { upgradePlans } from '../features/upgrade-plan/contract.ts';
import { loops } from '../records/loop/contract.ts';
import { pumpsOneByOne } from '../records/pump/contract.ts';
import { pumpLists } from '../records/pump/contract-lists.ts';
import { readings } from '../records/reading/contract.ts';
import { schedules } from '../records/schedule/contract.ts';
import { sites } from '../records/site/contract.ts';
import { tariffs } from '../records/tariff/contract.ts';
import { maintenance } from '../records/task/contract.ts';
import { keys } from './contract/keys.ts';
import { races } from './contract/races.ts';
import { A, B } from './contract/two-sites.ts';
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
      for (const siteId of [A, B])
        await store.of(siteId, SITE).ensure({ document: defaultSite('EUR'), now: T0 });
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
    tariffs(() => store);
    comparisons(() => store);
    upgradePlans(() => store);
    schedules(() => store);
    siteContents(() => store);
    maintenance(() => store);
    readings(() => store);
    keys(() => store);
    races(() => store);
  });
}
