/** What a leak lets out: openings, breaks below the tank, floods. */
import { describe, expect, it } from 'vitest';
import { type Leak, leak, openingArea } from '../../../models/hazards/leak.ts';
import { expectValue } from '../../curves/expect-value.ts';
import { expectClose } from '../../expect-close.ts';

const HOLE: Leak = {
  opening: { diameter: 0.025 },
  dischargeCoefficient: 0.61,
  depth: 0.4,
  drop: 0,
  level: null,
  tank: { area: 4 },
  floorArea: null,
};

const figuresOf = (change: Partial<Leak> = {}) => expectValue(leak({ ...HOLE, ...change }));

describe('a leak', () => {
  it('of 25 mm under 0.4 m lets out Cd a sqrt(2 g h) at first', () => {
    const byHand = 0.61 * (Math.PI / 4) * 0.025 ** 2 * Math.sqrt(2 * 9.80665 * 0.4);
    expectClose(figuresOf().flow, byHand, { relative: 1e-12 });
  });

  it('of a gaping seal is a slit round the fitting: 0.5 mm at 60 mm is 94.2 mm2', () => {
    expectClose(openingArea({ gap: 5e-4, fittingDiameter: 0.06 }), 94.2478e-6, { relative: 1e-5 });
  });

  it('loses the water above the hole, and no more than the tank has', () => {
    expectClose(figuresOf().volume, 1.6, { relative: 1e-12 });
    expect(figuresOf({ tank: { area: 4, volume: 1.5 } }).volume).toBe(1.5);
  });

  it('stands on the floor as deep as its volume over the area', () => {
    expectClose(figuresOf({ floorArea: 12 }).floodDepth ?? 0, 1.6 / 12, { relative: 1e-12 });
    expect(figuresOf().floodDepth).toBeNull();
  });

  it('reaches a level before the hole, the level of the hole with it, the surface at once', () => {
    const { timeToHole } = figuresOf();
    expect(figuresOf().timeToLevel).toBeNull();
    expect(figuresOf({ level: 0.2 }).timeToLevel).toBeLessThan(timeToHole);
    expect(figuresOf({ level: 0 }).timeToLevel).toBe(timeToHole);
    expect(figuresOf({ level: 0.4 }).timeToLevel).toBe(0);
  });

  it('through a pipe broken below the tank runs faster, and under nearly one head all the way', () => {
    const { flow, timeToHole, volume } = figuresOf({ drop: 40 });
    expectClose(flow / figuresOf().flow, Math.sqrt(40.4 / 0.4), { relative: 1e-12 });
    expectClose(timeToHole, volume / flow, { relative: 5e-3 });
    expect(volume).toBe(figuresOf().volume);
  });

  it('drains sooner by a wider hole, a deeper break, a smaller tank', () => {
    const { timeToHole } = figuresOf();
    expect(figuresOf({ opening: { diameter: 0.03 } }).timeToHole).toBeLessThan(timeToHole);
    expect(figuresOf({ drop: 0.5 }).timeToHole).toBeLessThan(timeToHole);
    expect(figuresOf({ tank: { area: 3 } }).timeToHole).toBeLessThan(timeToHole);
  });
});

describe('a leak that makes no sense', () => {
  it('has its level above the surface', () => {
    expect(leak({ ...HOLE, level: 0.41 })).toMatchObject({
      failure: { code: 'level-above-surface', depth: 0.4 },
    });
  });

  it('is as wide as the tank', () => {
    expect(leak({ ...HOLE, tank: { area: 4e-4 } })).toMatchObject({
      failure: { code: 'opening-wider-than-tank' },
    });
  });
});
