/** Loops that are kept compiled. */
import { describe, expect, it } from 'vitest';
import { loopCache } from '../../../../api/records/loop/compiled-loops.ts';
import { expectValue } from '../../../curves/expect-value.ts';
import { kelpFlume } from '../../../reference/independent/kelp-flume.ts';

const stored = (version: number) => ({ id: 'flume', version, document: kelpFlume });

describe('the cache of loops', () => {
  it('keeps what it made ready for one version', () => {
    const loops = loopCache();
    const first = expectValue(loops.ready(stored(1), []));
    expect(expectValue(loops.ready(stored(1), []))).toBe(first);
    expect(expectValue(loops.ready(stored(2), []))).not.toBe(first);
    expect(first.balanced('trimmed')).toBe(first.balanced('trimmed'));
    expect(first.balanced('trimmed')).not.toBe(first.balanced('as-built'));
  });

  it('keeps no loop that came with a request', () => {
    const loops = loopCache();
    const inline = { id: null, version: null, document: kelpFlume };
    expect(expectValue(loops.ready(inline, []))).not.toBe(expectValue(loops.ready(inline, [])));
  });

  it('tells a fault where it stands in the body', () => {
    const document = { ...kelpFlume, suction: [{ pipe: 'sch80 7', length: 1 }] };
    const ready = loopCache().ready({ id: null, version: null, document }, ['loop']);
    expect(ready).toMatchObject({ ok: false, failure: { errors: [{ pointer: '/loop/suction/0/pipe' }] } });
  });
});
