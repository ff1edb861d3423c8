/** Single rules of a design, on small loops. */
import { describe, expect, it } from 'vitest';
import { DEFAULT_LIMITS } from '../../../models/loop/limits.ts';
import { expectClose } from '../../expect-close.ts';
import { fitted } from './question.ts';
import {
  bore,
  designsOf,
  LITRE_PER_HOUR,
  list,
  loopOf,
  outlet,
  pipe,
  prices,
  pumpOf,
} from './small-designs.ts';

const plain = loopOf({ run: [list([32, 40, 50], 8)], outlet: outlet('end', 4000) });
const candidate = (facts: Parameters<typeof pumpOf>[0] = {}, count = 1) => ({
  pump: fitted(pumpOf(facts)),
  count,
});

describe('the velocity limit', () => {
  // 4000 L/h in 40 mm: 0.884 m/s, in 32 mm 1.382 m/s.
  it('leaves out sizes that are too fast', () => {
    const cheap = { price: 0 };
    expect(designsOf(plain, cheap).best?.runs[0]?.pipe).toEqual(bore(32));
    expect(designsOf(plain, { ...cheap, pipeVelocity: 1 }).best?.runs[0]?.pipe).toEqual(bore(40));
  });

  it('names the first list that is too fast in every size', () => {
    const { best, tooFast, rejected, frontier } = designsOf(plain, { pipeVelocity: 0.3 });
    expect(best).toBeNull();
    expect(tooFast).toMatchObject({ path: ['discharge', 'run', 0], limit: 0.3 });
    expectClose(tooFast?.velocity ?? Number.NaN, (4000 * LITRE_PER_HOUR) / ((Math.PI / 4) * 0.05 ** 2), {
      relative: 1e-12,
    });
    expect(rejected).toEqual([{ candidate: 0, reasons: ['pipe-velocity'], shortcomings: [] }]);
    expect(frontier).toEqual([]);
  });

  it('leaves pipes alone that are not to be chosen', () => {
    const fixed = loopOf({ run: [pipe(32, 1), list([50, 63], 8)], outlet: outlet('end', 4000) });
    expect(designsOf(fixed, { pipeVelocity: 1 }).best?.runs[0]?.pipe).toEqual(bore(50));
  });
});

describe('costs that are equal', () => {
  it('go to the earlier pump', () => {
    const { best, ranking } = designsOf(plain, { candidates: [candidate(), candidate()] });
    expect(best?.candidate).toBe(0);
    expect(ranking.map((row) => row.candidate)).toEqual([1]);
  });

  it('go to the lower setting, then to the size that requires less head', () => {
    const same = prices.map(({ pipe: size }) => ({ pipe: size, price: 2 }));
    const { best } = designsOf(plain, { price: 0, prices: same });
    const free = designsOf(plain, { price: 0 });
    expect(best?.runs[0]?.pipe).toEqual(bore(50));
    expect(best?.setting).toBeLessThan(free.best?.setting ?? 0);
  });
});

describe('a candidate without a design', () => {
  it('lacks a price, or head, or a setting', () => {
    const { best, rejected } = designsOf(plain, {
      candidates: [
        candidate({ price: null }),
        candidate({ shutoff: 0.05, head: 0.01, power: 20 }),
        candidate(),
      ],
    });
    expect(best?.candidate).toBe(2);
    expect(rejected.map(({ candidate: place, reasons }) => ({ place, reasons }))).toEqual([
      { place: 0, reasons: ['no-price'] },
      { place: 1, reasons: ['not-enough-head'] },
    ]);
    const [, short] = rejected;
    const [shortcoming] = short?.shortcomings ?? [];
    expect(shortcoming?.setting).toBe(100);
    expect(shortcoming?.value).toBeLessThan(shortcoming?.limit ?? 0);
  });

  it('breaks a limit at every setting', () => {
    // At 100 % the pump is asked for 4000 L/h, and 9000 L/h is its least flow.
    const { best, rejected } = designsOf(plain, {
      candidates: [candidate({ least: 14_000 * LITRE_PER_HOUR })],
    });
    expect(best).toBeNull();
    expect(rejected[0]?.reasons).toEqual(['pump-below-minimum']);
  });

  it('runs elsewhere than at the required flow', () => {
    // Its head rises from 1 m at rest to 2 m at 6000 L/h: with water to be lifted by 1.2 m it does not start.
    const drooping = {
      ...pumpOf(),
      headPoints: [
        [0, 1],
        [2000, 1.556],
        [4000, 1.889],
        [6000, 2],
        [8000, 1.889],
        [10_000, 1.556],
        [12_000, 1],
      ].map(([flow = 0, head = 0]) => ({ flow: flow * LITRE_PER_HOUR, head, setting: 100 })),
      settings: { min: 100, max: 100, step: 1 },
    };
    const lifted = loopOf({ run: [list([50, 63], 2)], outlet: outlet('end', 6000) }, { staticHead: 1.2 });
    const { best, rejected } = designsOf(lifted, { candidates: [{ pump: fitted(drooping), count: 1 }] });
    expect(best).toBeNull();
    expect(rejected[0]?.reasons).toEqual(['not-enough-head']);
    const level = loopOf({ run: [list([50, 63], 2)], outlet: outlet('end', 6000) });
    expect(designsOf(level, { candidates: [{ pump: fitted(drooping), count: 1 }] }).best?.setting).toBe(100);
  });
});

describe('enforced NPSH', () => {
  it('widens the suction', () => {
    const loop = loopOf(
      { run: [list([32, 40], 3)], outlet: outlet('end', 4000) },
      { suction: [list([32, 40, 50, 63], 12)], pumpElevation: 2.6 },
    );
    const npsh = { atRest: 6, atLargest: 7.6 };
    const facts = { candidates: [candidate({ npsh, settings: { min: 100, max: 100, step: 1 } })] };
    const free = designsOf(loop, { ...facts, price: 0.01 }).best;
    const enforced = designsOf(loop, {
      ...facts,
      price: 0.01,
      limits: { ...DEFAULT_LIMITS, enforceNpsh: true },
    }).best;
    const boreOfSuction = (best: typeof free) => {
      const size = best?.runs[0]?.pipe;
      return typeof size === 'object' ? size.insideDiameter : Number.NaN;
    };
    expect(boreOfSuction(enforced)).toBeGreaterThan(boreOfSuction(free));
    expect(enforced?.presentValue).toBeGreaterThan(free?.presentValue ?? Number.NaN);
  });
});

describe('trims', () => {
  const branches = [
    { run: [pipe(25, 1)], outlet: outlet('near', 1500) },
    { run: [pipe(25, 9)], outlet: outlet('far', 1500) },
    { run: [pipe(25, 1)], outlet: outlet('closed', 0) },
  ];
  const { best } = designsOf(loopOf({ run: [pipe(40, 2)], branches }));

  it('are paid one a branch but one, and one behind the pump', () => {
    expect(best?.trimCost).toBe(30);
  });

  it('are valves at the ends of runs', () => {
    expect(best?.trims.map(({ path, closed }) => ({ path, closed }))).toEqual([
      { path: ['discharge', 'run', 1], closed: false },
      { path: ['discharge', 'branches', 0, 'run', 1], closed: false },
      { path: ['discharge', 'branches', 2, 'run', 1], closed: true },
    ]);
    expect(best?.loop.discharge.branches?.[2]?.run[1]).toEqual({ valve: 'ball', opening: 0 });
  });
});

describe('the frontier', () => {
  it('shows every size of one list by its head and cost', () => {
    const { frontier } = designsOf(plain);
    expect(frontier.map(({ cost }) => cost)).toEqual([40, 32, 25.6]);
    const heads = frontier.map(({ head }) => head);
    expect(heads.toSorted((a, b) => a - b)).toEqual(heads);
  });

  it('shows at most 100 points of many, both ends among them', () => {
    const run = Array.from({ length: 7 }, (_, place) => list([32, 40, 50, 63], 1 + place / 7));
    const loop = loopOf({ run, outlet: outlet('end', 4000) }, { boreChanges: 'ignored' });
    const { frontier } = designsOf(loop);
    const metres = 7 + 3;
    expect(frontier.length).toBe(100);
    expectClose(frontier[0]?.cost ?? Number.NaN, 6.3 * metres, { relative: 1e-12 });
    expectClose(frontier.at(-1)?.cost ?? Number.NaN, 3.2 * metres, { relative: 1e-12 });
  });
});
