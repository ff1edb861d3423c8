/** Work that takes turns. */
import { describe, expect, it } from 'vitest';
import { oneAtATime } from '../../../../api/features/site-summary/one-at-a-time.ts';
import { success } from '../../../../curves/result.ts';

const later = () => new Promise((resolve) => setTimeout(resolve, 1));

describe('work that takes turns', () => {
  it('runs one after the other, in the order it came', async () => {
    const inTurn = oneAtATime();
    const seen: string[] = [];
    const work = (name: string) => async () => {
      seen.push(`${name} begins`);
      await later();
      seen.push(`${name} ends`);
      return success(name);
    };
    const done = await Promise.all(['a', 'b', 'c'].map((name) => inTurn(work(name))));
    expect(done.map((one) => one.ok && one.value)).toEqual(['a', 'b', 'c']);
    expect(seen).toEqual(['a begins', 'a ends', 'b begins', 'b ends', 'c begins', 'c ends']);
  });

  it('goes on after work that threw', async () => {
    const inTurn = oneAtATime();
    const broken = inTurn(() => Promise.reject(new Error('broken')));
    const sound = inTurn(async () => success('sound'));
    await expect(broken).rejects.toThrow('broken');
    expect(await sound).toEqual(success('sound'));
  });

  it('refuses what would wait behind too much', async () => {
    const inTurn = oneAtATime();
    const all = Array.from({ length: 9 }, () =>
      inTurn(async () => {
        await later();
        return success(null);
      }),
    );
    const done = await Promise.all(all);
    expect(done.map(({ ok }) => ok)).toEqual([...Array(8).fill(true), false]);
    expect(done.at(-1)).toMatchObject({ failure: { code: 'unavailable', headers: { 'Retry-After': '30' } } });
    expect(await inTurn(async () => success('again'))).toEqual(success('again'));
  });
});
