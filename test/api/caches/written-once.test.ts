/** What never changes is made once, when it is first asked for. */
import { expect, it } from 'vitest';
import { writtenOnce } from '../../../api/caches/written-once.ts';

it.each([['a text'], [undefined], [null]])('%j is made once, and not before it is asked for', (value) => {
  let times = 0;
  const text = writtenOnce(() => {
    times += 1;
    return value;
  });
  expect(times).toBe(0);
  expect([text(), text()]).toEqual([value, value]);
  expect(times).toBe(1);
});

it('what fails is made again', () => {
  let times = 0;
  const text = writtenOnce(() => {
    times += 1;
    if (times === 1) throw new Error('not there yet');
    return times;
  });
  expect(text).toThrow('not there yet');
  expect(text()).toBe(2);
});
