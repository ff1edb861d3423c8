/** The settings at which a chart shows a pump. */
import { describe, expect, it } from 'vitest';
import { shownSettings } from '../../../../api/features/pump-curves/shown-settings.ts';
import type { Pump } from '../../../../models/pump/pump.ts';

const pump = (min: number, max: number, entered: readonly number[] = [], step = 1): Pump => ({
  name: 'Plain',
  headPoints: entered.map((setting) => ({ flow: 1, head: 1, setting })),
  powerPoints: [],
  settings: { min, max, step },
  standbyPower: 0,
});

describe('the settings shown', () => {
  it('begin with the highest, and go down in round steps', () => {
    expect(shownSettings(pump(30, 100))).toEqual([100, 80, 60, 40]);
  });

  it('include those that points were entered at', () => {
    expect(shownSettings(pump(30, 100, [55]))).toContain(55);
  });

  it('are those of the controller', () => {
    for (const setting of shownSettings(pump(25, 100, [], 15)))
      expect([25, 40, 55, 70, 85, 100]).toContain(setting);
  });

  it('are one where there is but one', () => {
    expect(shownSettings(pump(100, 100, [100, 80]))).toEqual([100]);
  });

  it('are never so many or so near that their names meet', () => {
    const entered = Array.from({ length: 50 }, (_, place) => 30 + place);
    const shown = shownSettings(pump(20, 100, entered));
    expect(shown.length).toBeLessThanOrEqual(5);
    for (const [place, setting] of shown.entries()) {
      expect((shown[place - 1] ?? Number.POSITIVE_INFINITY) - setting).toBeGreaterThan(10);
    }
  });
});
