/** What pipes bear, and what builds up in them and in valves, against worked figures. */
import { describe, it } from 'vitest';
import { cavitationIndex } from '../../../models/components/cavitation-index.ts';
import { findPipe } from '../../../models/components/pipe-sizes.ts';
import { pressureRating } from '../../../models/components/pressure-rating.ts';
import { surgePressure, waveSpeed } from '../../../models/components/pressure-wave.ts';
import { vapourPressure } from '../../../models/physics/vapour-pressure.ts';
import { expectClose } from '../../expect-close.ts';
import { FRESH_DENSITY, STATED } from '../../reference/independent-complementarity/cases.ts';

function sizeOf(name: string) {
  const size = findPipe(name);
  if (size === undefined) throw new Error(`no pipe ${name}`);
  return size;
}

// Figures of a separate calculation in fresh water of 20 degC, repeated by test/reference/independent-complementarity.
describe('water that is stopped at once', () => {
  it.each([
    ['sch80 2', 536.36, 803.097],
    ['sch40 1', 569.366, 852.518],
    ['pn10 63', 384.34, 575.475],
    ['pn16 63', 483.129, 723.394],
  ])('at 1.5 m/s in %s sends a wave of %d m/s and %d kPa', (name, speed, kilopascals) => {
    expectClose(waveSpeed(sizeOf(name), FRESH_DENSITY), speed, STATED);
    const rise = surgePressure(sizeOf(name), { density: FRESH_DENSITY, velocity: 1.5 });
    expectClose(rise / 1000, kilopascals, STATED);
  });
});

describe('the rating', () => {
  // ASTM D1785: 2 x 13.79 MPa x t/(OD - t) by hand; PN in bar.
  it.each([
    ['sch80 2', 2787.41],
    ['sch40 1', 3103.33],
    ['pn10 63', 1000],
    ['pn16 25', 1600],
  ])('of %s is %d kPa', (name, kilopascals) => {
    expectClose(pressureRating(sizeOf(name)) / 1000, kilopascals, STATED);
  });
});

describe('the cavitation index', () => {
  it.each([
    [90, 2.21095],
    [120, 1.65822],
  ])('of a drop of %d kPa at 100 kPa above the air is %d', (drop, expected) => {
    const pressures = { before: 201_325, vapour: vapourPressure(20), drop: 1000 * drop };
    expectClose(cavitationIndex(pressures), expected, STATED);
  });
});
