/** Water hammer, ratings of pipe and cavitation of valves against worked figures. */
import { describe, it } from 'vitest';
import { expectClose } from '../../expect-close.ts';
import { standardBore } from '../independent/bore.ts';
import { FRESH_DENSITY, STATED } from './cases.ts';
import { vapourPressure } from './npsh.ts';
import { cavitationIndex, hammer, pressureRating, waveSpeed } from './surge.ts';

const INCH = 0.0254;

/** Mean bore [m] of a metric pipe: least wall and half of its tolerance of 0.1 of it and 0.2 mm (EN ISO 1452-2, from memory). */
const metric = (outside: number, leastWall: number) => ({
  outside: outside / 1000,
  bore: (outside - 2 * (leastWall + (0.1 * leastWall + 0.2) / 2)) / 1000,
});

const SCH80_2 = { outside: 2.375 * INCH, bore: standardBore('sch80 2') };
const SCH40_1 = { outside: 1.315 * INCH, bore: standardBore('sch40 1') };

// Figures of a separate calculation, fresh water of 20 degC.
describe('water hammer', () => {
  it.each([
    ['sch80 2', SCH80_2, 536.36, 803.097],
    ['sch40 1', SCH40_1, 569.366, 852.518],
    ['pn10 63', metric(63, 3), 384.34, 575.475],
    ['pn16 63', metric(63, 4.7), 483.129, 723.394],
  ])('in %s', (_, pipe, speed, kilopascals) => {
    expectClose(waveSpeed(pipe, FRESH_DENSITY), speed, STATED);
    expectClose(hammer(pipe, FRESH_DENSITY, 1.5) / 1000, kilopascals, STATED);
  });
});

describe('the rating', () => {
  it.each([
    ['sch80 2', 2.375, 0.218, 2787.41],
    ['sch40 1', 1.315, 0.133, 3103.33],
  ])('of %s', (_, outside, leastWall, kilopascals) => {
    expectClose(pressureRating({ outside, leastWall }) / 1000, kilopascals, STATED);
  });
});

describe('a valve', () => {
  it.each([
    [90, 2.21095],
    [120, 1.65822],
  ])('with a drop of %d kPa at 100 kPa gauge has the index %d', (drop, expected) => {
    const before = 101_325 + 100_000;
    const index = cavitationIndex({ before, vapour: vapourPressure(20), drop: drop * 1000 });
    expectClose(index, expected, STATED);
  });
});
