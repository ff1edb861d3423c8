/** What is made of an object is kept with it, and never given for another. */
import { describe, expect, it } from 'vitest';
import { oncePerObject } from '../../../api/caches/once-per-object.ts';

const counting = () => {
  let times = 0;
  const made = oncePerObject(({ name }: { readonly name: string }, variant: string) => {
    times += 1;
    return `${name} ${variant}`;
  });
  return { made, times: () => times };
};

describe('what is made once per object', () => {
  it('is made once for an object and a variant', () => {
    const { made, times } = counting();
    const loop = { name: 'loop' };
    expect([made(loop, 'metric'), made(loop, 'us'), made(loop, 'metric')]).toEqual([
      'loop metric',
      'loop us',
      'loop metric',
    ]);
    expect(times()).toBe(2);
  });

  it('needs no variant', () => {
    const made = oncePerObject(({ name }: { readonly name: string }) => ({ name }));
    const loop = { name: 'loop' };
    expect(made(loop)).toBe(made(loop));
  });

  it('is never that of another object, however alike', () => {
    const { made, times } = counting();
    expect([made({ name: 'a' }, 'metric'), made({ name: 'a' }, 'metric')]).toEqual(['a metric', 'a metric']);
    expect(times()).toBe(2);
  });

  it('is remembered too where it is nothing', () => {
    let times = 0;
    const made = oncePerObject((_: object, _variant: string) => {
      times += 1;
      return undefined;
    });
    const one = {};
    expect([made(one, 'metric'), made(one, 'metric')]).toEqual([undefined, undefined]);
    expect(times).toBe(1);
  });

  it('is made for a bounded number of variants', () => {
    const { made, times } = counting();
    const loop = { name: 'loop' };
    for (let variant = 0; variant < 100; variant += 1) made(loop, String(variant));
    expect(made(loop, '0')).toBe('loop 0');
    expect(times()).toBe(101);
  });
});
