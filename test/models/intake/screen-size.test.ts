/** The screen that a flow takes, checked by the velocities of what is answered and by published areas. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { screenVelocities } from '../../../models/intake/screen.ts';
import { LONGEST_IN_DIAMETERS, type ScreenToSize, sizeScreen } from '../../../models/intake/screen-size.ts';
import { expectValue } from '../../curves/expect-value.ts';
import { expectClose } from '../../expect-close.ts';
import { SCREEN_AREAS } from '../../reference/screens.ts';

const CYLINDER = { shape: 'cylinder', diameter: 0.1, openFraction: 0.35 } as const;
const FLAT = { shape: 'flat', width: 0.3, openFraction: 0.4 } as const;
const BOX = { shape: 'box', width: 0.2, height: 0.15, openFraction: 0.4 } as const;

const LIMITS = { cloggedFraction: 0.5, limit: 0.1524 };

const sized = (screen: ScreenToSize, flow: number, limits: Partial<typeof LIMITS> = {}) =>
  expectValue(sizeScreen({ screen, flow, ...LIMITS, ...limits }));

const velocitiesOf = (screen: Parameters<typeof screenVelocities>[0]['screen'], flow: number) =>
  screenVelocities({ screen, flow, cloggedFraction: LIMITS.cloggedFraction });

describe('a flat screen', () => {
  it.each(SCREEN_AREAS)('for $flow m3/s at $velocity m/s has $expected m2 ($source)', (row) => {
    const screen = { shape: 'flat', width: 1, openFraction: 1 } as const;
    const limits = { cloggedFraction: 0, limit: row.velocity };
    expectClose(sized(screen, row.flow, limits).screen.length, row.expected, { relative: row.tolerance });
  });

  it('is as long as makes its mean the limit, clogged, and never more than one', () => {
    const { screen, velocities, singleDiameter } = sized(FLAT, 2e-3);
    expectClose(velocities.mean, LIMITS.limit, { relative: 1e-12 });
    expect(velocities.peak).toBe(velocities.mean);
    expect(screen.count).toBe(1);
    expect(singleDiameter).toBeNull();
  });
});

describe('a box', () => {
  it('counts four sides and top', () => {
    const { screen, velocities } = sized(BOX, 6e-3);
    expectClose(velocities.mean, LIMITS.limit, { relative: 1e-12 });
    const sides = 2 * (0.2 + screen.length) * 0.15 + 0.2 * screen.length;
    expectClose(velocities.mean, 6e-3 / (0.4 * 0.5 * sides), { relative: 1e-12 });
  });

  it('is no shorter than it is wide', () => {
    const { screen, velocities } = sized(BOX, 1e-5);
    expect(screen.length).toBe(0.2);
    expect(velocities.mean).toBeLessThan(LIMITS.limit);
  });
});

describe('a cylinder', () => {
  it('of the least length has its peak at the limit, and a shorter one above it', () => {
    const { screen, velocities } = sized(CYLINDER, 4e-4);
    expect(screen.count).toBe(1);
    expectClose(velocities.peak, LIMITS.limit, { relative: 1e-9 });
    expect(velocities.mean).toBeLessThan(velocities.peak);
    expect(velocitiesOf({ ...screen, length: 0.99 * screen.length }, 4e-4).peak).toBeGreaterThan(
      LIMITS.limit,
    );
  });

  it('is not made longer where length does not help: it is several, one less of which would not do', () => {
    const flow = 2e-3;
    const { screen, velocities } = sized(CYLINDER, flow);
    expect(screen.count).toBeGreaterThan(1);
    expect(screen.length).toBeLessThanOrEqual(LONGEST_IN_DIAMETERS * 0.1);
    expect(velocities.peak).toBeLessThanOrEqual(LIMITS.limit * (1 + 1e-9));
    const longest = { ...screen, count: screen.count - 1, length: LONGEST_IN_DIAMETERS * 0.1 };
    expect(velocitiesOf(longest, flow).peak).toBeGreaterThan(LIMITS.limit);
  });

  it('or it is wider: ten diameters long the one just does', () => {
    const flow = 2e-3;
    const { singleDiameter } = sized(CYLINDER, flow);
    const diameter = singleDiameter ?? 0;
    const longest = { ...CYLINDER, diameter, length: LONGEST_IN_DIAMETERS * diameter, count: 1 };
    expectClose(velocitiesOf(longest, flow).peak, LIMITS.limit, { relative: 1e-9 });
    expect(sized({ ...CYLINDER, diameter: 1.0001 * diameter }, flow).screen.count).toBe(1);
    expect(sized({ ...CYLINDER, diameter: 0.9999 * diameter }, flow).screen.count).toBe(2);
  });

  it('fails where it takes over a thousand', () => {
    const failed = sizeScreen({ screen: { ...CYLINDER, diameter: 0.001 }, flow: 1, ...LIMITS });
    expect(failed).toMatchObject({ failure: { code: 'too-many-screens', limit: 1000 } });
  });

  it('of any bore, openness and flow keeps to the limit with as few as do', () => {
    const draw = {
      diameter: fc.double({ min: 0.02, max: 0.5, noNaN: true }),
      openFraction: fc.double({ min: 0.05, max: 1, noNaN: true }),
      flow: fc.double({ min: 1e-5, max: 1e-2, noNaN: true }),
      cloggedFraction: fc.double({ min: 0, max: 0.9, noNaN: true }),
    };
    fc.assert(
      fc.property(fc.record(draw), ({ diameter, openFraction, flow, cloggedFraction }) => {
        const limit = 0.1524;
        const need = { screen: { ...CYLINDER, diameter, openFraction }, flow, cloggedFraction, limit };
        const answer = sizeScreen(need);
        fc.pre(answer.ok);
        const { screen, velocities } = answer.value;
        expect(velocities.peak).toBeLessThanOrEqual(limit * (1 + 1e-9));
        expect(screen.length).toBeLessThanOrEqual(LONGEST_IN_DIAMETERS * diameter * (1 + 1e-12));
        const fewer = { ...screen, count: screen.count - 1, length: LONGEST_IN_DIAMETERS * diameter };
        if (fewer.count === 0) return;
        const short = screenVelocities({ screen: fewer, flow, cloggedFraction });
        expect(short.peak).toBeGreaterThan(limit * (1 - 1e-9));
      }),
      { seed: 1 },
    );
  });

  it('never shrinks with more clogging, less openness or a stricter limit', () => {
    const face = ({ screen }: ReturnType<typeof sized>) => screen.count * screen.length;
    const here = face(sized(CYLINDER, 2e-3));
    expect(face(sized(CYLINDER, 2e-3, { cloggedFraction: 0.6 }))).toBeGreaterThan(here);
    expect(face(sized({ ...CYLINDER, openFraction: 0.3 }, 2e-3))).toBeGreaterThan(here);
    expect(face(sized(CYLINDER, 2e-3, { limit: 0.12 }))).toBeGreaterThan(here);
  });
});
