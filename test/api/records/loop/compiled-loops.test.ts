/** Loops that are kept compiled. */
import { describe, expect, it } from 'vitest';
import { compiledLoops } from '../../../../api/records/loop/compiled-loops.ts';
import { expectValue } from '../../../curves/expect-value.ts';
import { kelpFlume } from '../../../reference/independent/kelp-flume.ts';

const stored = (version: number) => ({ id: 'flume', version, document: kelpFlume });

describe('compiled loops', () => {
  it('are kept for one version', () => {
    const loops = compiledLoops();
    const first = expectValue(loops.compile(stored(1), []));
    expect(expectValue(loops.compile(stored(1), []))).toBe(first);
    expect(expectValue(loops.compile(stored(2), []))).not.toBe(first);
  });

  it('are never those of another document, although it came under the same id and version', () => {
    const loops = compiledLoops();
    const first = expectValue(loops.compile(stored(1), []));
    const changed = { ...stored(1), document: { ...kelpFlume, staticHead: 1 } };
    const second = expectValue(loops.compile(changed, []));
    expect(second).not.toBe(first);
    expect(second.entered).toBe(changed.document);
    expect(expectValue(loops.compile(stored(1), [])).entered).toBe(kelpFlume);
  });

  it('are not kept where the loop came with a request', () => {
    const loops = compiledLoops();
    const inline = { id: null, version: null, document: kelpFlume };
    expect(expectValue(loops.compile(inline, []))).not.toBe(expectValue(loops.compile(inline, [])));
  });

  it('name a fault where it stands in the body', () => {
    const document = { ...kelpFlume, suction: [{ pipe: 'sch80 7', length: 1 }] };
    const compiled = compiledLoops().compile({ id: null, version: null, document }, ['loop']);
    expect(compiled).toMatchObject({ ok: false, failure: { errors: [{ pointer: '/loop/suction/0/pipe' }] } });
  });
});
