/** The settings of a controller. */
import { describe, expect, it } from 'vitest';
import { gridSize, isOnGrid, settingAt } from '../../../models/pump/settings-grid.ts';

const all = (settings: { min: number; max: number; step: number }) =>
  Array.from({ length: gridSize(settings) }, (_, index) => settingAt(settings, index));

describe('a grid of settings', () => {
  it.each([
    [{ min: 30, max: 33, step: 1 }, [30, 31, 32, 33]],
    [{ min: 30, max: 100, step: 33 }, [30, 63, 96, 100]],
    [{ min: 50, max: 50, step: 1 }, [50]],
    [{ min: 0, max: 0.3, step: 0.1 }, [0, 0.1, 0.2, 0.3]],
    [{ min: 30, max: 31, step: 5 }, [30, 31]],
  ])('of %o is min + i step, and max', (settings, expected) => {
    expect(all(settings)).toEqual(expected);
  });

  it('of tenths has no rounding noise', () => {
    const tenths = all({ min: 30, max: 100, step: 0.1 });
    expect(tenths).toHaveLength(701);
    for (const setting of tenths) expect(setting).toBe(Math.round(setting * 10) / 10);
  });

  it('knows its own settings and no others', () => {
    const settings = { min: 30, max: 100, step: 7 };
    for (const setting of all(settings)) expect(isOnGrid(settings, setting)).toBe(true);
    for (const setting of [30.5, 36, 99]) expect(isOnGrid(settings, setting)).toBe(false);
  });
});
