/** The efficiency that entered power points imply, against worked figures. */
import { describe, it } from 'vitest';
import { expectClose } from '../../expect-close.ts';
import { LH, pumpE, SEA_DENSITY } from './cases.ts';
import { headLaw } from './head-law.ts';

/** Greatest efficiency over flows in L/h of a pump of a head curve and a power [W]. */
function best(head: (flow: number) => number, flows: readonly number[], power: number) {
  const rows = flows.map((flow) => ({
    flow,
    efficiency: (SEA_DENSITY * 9.80665 * flow * LH * head(flow * LH)) / power,
  }));
  return rows.reduce((a, b) => (b.efficiency > a.efficiency ? b : a));
}

// Figures of a separate calculation, three digits.
describe('the best efficiency over the entered points', () => {
  it.each([
    ['too small', 8, 200, [0, 30, 60, 90, 120, 150, 180], 400, 120, 0.00428],
    ['plausible', 6, 10_000, [0, 2000, 4000, 6000, 8000, 9000], 300, 6000, 0.214],
  ])('is %s', (_, shutoff, zero, flows, power, flow, efficiency) => {
    const headPoints = flows.map((at) => ({
      flow: at * LH,
      head: shutoff * (1 - (at / zero) ** 2),
      setting: 100,
    }));
    const law = headLaw({ ...pumpE, headPoints });
    const found = best(law?.at ?? (() => Number.NaN), flows, power);
    expectClose(found.flow, flow, { relative: 1e-12 });
    expectClose(found.efficiency, efficiency, { relative: 2.5e-3 });
  });
});
