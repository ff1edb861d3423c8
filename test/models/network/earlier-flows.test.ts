/** Regression: loops without one-way runs, outlets in air, steps of bore and reducing tees keep the flows that the service always gave. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { expectClose } from '../../expect-close.ts';
import { plainCases } from './earlier/plain-cases.ts';

/** Figures of the solver of version 0.1.0, written by earlier/write-flows.ts; they are its own, and check nothing but a change. */
const EARLIER = z
  .array(z.object({ seed: z.number(), flow: z.number(), head: z.number(), outletFlows: z.array(z.number()) }))
  .parse(JSON.parse(readFileSync(new URL('./earlier/flows.json', import.meta.url), 'utf8')));

/** Of the head, and of the greatest flow in size. */
const SAME = 1e-12;

const cases = plainCases();

describe('the flows of version 0.1.0', () => {
  it('are of the same loops', () => {
    const named = (list: readonly { readonly seed: number; readonly flow: number }[]) =>
      list.map(({ seed, flow }) => `${seed} at ${flow}`);
    expect(named(cases)).toEqual(named(EARLIER));
  });

  it.each(EARLIER.map((one, place) => ({ ...one, place })))(
    'of seed $seed at $flow m3/s are found again',
    ({ place, head, outletFlows }) => {
      const found = cases[place];
      const greatest = Math.max(1e-9, ...outletFlows.map(Math.abs));
      expectClose(found?.head ?? Number.NaN, head, { relative: SAME, absolute: 1e-15 });
      for (const [i, flow] of outletFlows.entries()) {
        expectClose(found?.outletFlows[i] ?? Number.NaN, flow, { absolute: SAME * greatest });
      }
    },
  );
});
