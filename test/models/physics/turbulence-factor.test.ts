/** The clean-steel turbulence factor against the handbook's table. */
import { describe, expect, it } from 'vitest';
import { darcyFriction } from '../../../models/physics/friction-factor.ts';
import { turbulenceFactor } from '../../../models/physics/turbulence-factor.ts';
import { expectClose } from '../../expect-close.ts';
import { TURBULENCE_FACTORS } from '../../reference/fittings.ts';

describe('turbulence factor', () => {
  it.each(TURBULENCE_FACTORS)('rounds to $expected at a bore of $diameter m', (row) => {
    expectClose(turbulenceFactor(row.diameter), row.expected, { absolute: row.tolerance });
  });

  it('is the friction factor of clean steel at a very large Reynolds number', () => {
    const { factor } = darcyFriction({ reynolds: 1e13, relativeRoughness: 4.57e-5 / 0.05 });
    expectClose(turbulenceFactor(0.05), factor, { relative: 1e-6 });
  });

  it('falls as the bore grows', () => {
    expect(turbulenceFactor(0.1)).toBeLessThan(turbulenceFactor(0.05));
  });
});
