/** Pipe sizes against the standards' figures. */
import { describe, expect, it } from 'vitest';
import { findPipe, PIPE_SIZES } from '../../../models/components/pipe-sizes.ts';
import { expectClose } from '../../expect-close.ts';
import { CLASS_5_WALLS, INCH_BORES, METRIC_RATIOS } from '../../reference/pipe-sizes.ts';

const MILLIMETRE = 1e-3;
/** Half of the last digit that the tables print. */
const PRINTED = 0.0051 * MILLIMETRE;
/** The tables round the tolerance of the wall to 0.001 in before they print the mean bore: half of that more. */
const PRINTED_MEAN = PRINTED + 0.0005 * 0.0254;

const sizesOf = (series: string) => PIPE_SIZES.filter((size) => size.name.startsWith(`${series} `));

describe('pipe sizes', () => {
  it.each(INCH_BORES)('$name has the mean bore $mean mm, not the greatest', ({ name, mean, greatest }) => {
    const size = findPipe(name);
    expectClose(size?.insideDiameter ?? Number.NaN, mean * MILLIMETRE, { absolute: PRINTED_MEAN });
    const greatestBore = (size?.outsideDiameter ?? Number.NaN) - 2 * (size?.minimumWall ?? Number.NaN);
    expectClose(greatestBore, greatest * MILLIMETRE, { absolute: PRINTED });
  });

  it('lists every inch size that the tables print', () => {
    const inch = [...sizesOf('sch40'), ...sizesOf('sch80')].map((size) => size.name);
    expect(inch).toEqual(INCH_BORES.map((row) => row.name));
  });

  it.each(METRIC_RATIOS)(
    '$series pipe up to $upTo mm has the wall of SDR $ratio',
    ({ series, upTo, ratio }) => {
      const smaller = upTo === 90 ? 0 : 90;
      const sizes = sizesOf(series).filter((size) => {
        const outside = size.outsideDiameter / MILLIMETRE;
        return outside > smaller + 0.5 && outside < upTo + 0.5;
      });
      expect(sizes.length).toBeGreaterThan(0);
      for (const size of sizes) {
        const wall = size.outsideDiameter / ratio;
        expect(size.minimumWall).toBeGreaterThan(wall - 0.06 * MILLIMETRE);
        expect(size.minimumWall).toBeLessThan(wall + 0.15 * MILLIMETRE);
      }
    },
  );

  it.each(CLASS_5_WALLS)('pn10 $outsideDiameter has a bore near that of another 1.0 MPa standard', (row) => {
    const bore = (row.outsideDiameter - row.least - row.greatest) * MILLIMETRE;
    expectClose(findPipe(`pn10 ${row.outsideDiameter}`)?.insideDiameter ?? Number.NaN, bore, {
      relative: 0.03,
    });
  });

  it('takes half of the wall tolerance 0.1 e + 0.2 mm off both sides of a metric bore', () => {
    const size = findPipe('pn10 63');
    expectClose(size?.insideDiameter ?? Number.NaN, (63 - 2 * (3 + 0.25)) * MILLIMETRE, { relative: 1e-12 });
  });

  it('grows in bore within a series', () => {
    for (const series of ['sch40', 'sch80', 'pn10', 'pn16']) {
      const bores = sizesOf(series).map((size) => size.insideDiameter);
      expect(bores).toEqual(bores.toSorted((a, b) => a - b));
    }
  });

  it('names each size once, with its source, and says which figures are from memory', () => {
    expect(new Set(PIPE_SIZES.map((size) => size.name)).size).toBe(PIPE_SIZES.length);
    for (const size of PIPE_SIZES) {
      expect(size.source).toContain(size.standard);
      expect(size.source).toContain('from memory');
      expect(size.name).toBe(`${size.name.split(' ')[0]} ${size.nominal}`);
      expect(size.insideDiameter).toBeLessThan(size.outsideDiameter - 2 * size.minimumWall);
    }
  });

  it.each(['sch80 2 ', 'SCH80 2', '2', 'sch120 2', 'pn10 20', 'constructor', ''])('knows no %j', (name) => {
    expect(findPipe(name)).toBeUndefined();
  });
});
