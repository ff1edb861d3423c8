/** Where the head goes: what the rows add up to, and the heads of a loop worked by hand. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lossRows } from '../../../models/losses/loss-rows.ts';
import type { CompiledLoop } from '../../../models/network/compiled-loop.ts';
import { GRAVITY } from '../../../models/physics/gravity.ts';
import { expectClose } from '../../expect-close.ts';
import { featuredCase } from '../../random-featured-loop.ts';
import { randomCase } from '../../random-loop.ts';
import { kelpFlume } from '../../reference/independent/kelp-flume.ts';
import { LITRE_PER_HOUR, loopOf, modelOf, nested, outlet, pipe, trimmedModelOf } from '../example-loops.ts';

const L = LITRE_PER_HOUR;

function listed(model: CompiledLoop, flow: number) {
  const list = lossRows(model, model.system.stateAt(flow));
  if (list === null) throw new Error('the pump does work');
  return list;
}

/** Shares add up to 1, powers to rho g Q H, both within 1e-9. */
function expectAddsUp(model: CompiledLoop, flow: number): void {
  const state = model.system.stateAt(flow);
  const list = lossRows(model, state);
  const ofPump = model.water.density * GRAVITY * flow * state.head;
  if (list === null) {
    expect(ofPump).toBeLessThanOrEqual(0);
    return;
  }
  expectClose(list.hydraulicPower, ofPump, { relative: 1e-12 });
  const powers = list.rows.map(({ power }) => power);
  // Lifts up and down cancel: what is rounded away is a share of what was added.
  const size = powers.reduce((sum, power) => sum + Math.abs(power), 0);
  expectClose(
    powers.reduce((sum, power) => sum + power, 0),
    ofPump,
    { absolute: 1e-9 * Math.max(ofPump, size) },
  );
}

describe('the powers of all elements', () => {
  it('add up to rho g Q H of the pump: invented loops, as built and trimmed', () => {
    const cases = fc.record({
      seed: fc.integer({ min: 1, max: 5000 }),
      flow: fc.double({ min: 200, max: 20_000, noNaN: true }),
    });
    fc.assert(
      fc.property(cases, ({ seed, flow }) => {
        const { loop } = randomCase({ seed, everyOutlet: true });
        expectAddsUp(modelOf(loop), flow * L);
        expectAddsUp(trimmedModelOf(loop), flow * L);
      }),
      { seed: 1, numRuns: 60, endOnFailure: true },
    );
  });

  it('add up where valves close, outlets lie in air, bores step and tees reduce', () => {
    const cases = fc.record({
      seed: fc.integer({ min: 1, max: 5000 }),
      flow: fc.double({ min: 200, max: 20_000, noNaN: true }),
    });
    fc.assert(
      fc.property(cases, ({ seed, flow }) => {
        const { loop } = featuredCase({ seed, everyOutlet: true });
        expectAddsUp(modelOf(loop), flow * L);
        expectAddsUp(trimmedModelOf(loop), flow * L);
      }),
      { seed: 1, numRuns: 40, endOnFailure: true },
    );
  });

  it.each([undefined, 'tee-90'] as const)('add up through 32 levels of branches, split %s', (split) => {
    expectAddsUp(modelOf(loopOf(nested(32, split))), 9000 * L);
  });

  it('add up where outlets stand at different levels and one feeds another', () => {
    const ends = [outlet('up', { staticHead: 0.4 }, [pipe(0.03, 1)]), outlet('down', { staticHead: -0.3 })];
    const model = modelOf(loopOf({ run: [pipe(0.04, 2)], branches: ends }, { staticHead: 0.5 }));
    for (const flow of [100 * L, 3000 * L]) expectAddsUp(model, flow);
    const kinds = listed(model, 3000 * L).rows.filter(({ kind }) => kind === 'lift');
    expect(kinds.map(({ name }) => name)).toEqual(['up', 'down']);
    expectClose(kinds[0]?.head ?? 0, 0.9, { relative: 1e-12 });
    expectClose(kinds[1]?.head ?? 0, 0.2, { relative: 1e-12 });
  });

  it('add up for a loop known by its system curve, lift and friction apart', () => {
    const model = modelOf({
      ...{ name: 'curve', water: { temperature: 20, salinity: 0 }, pumpElevation: 0, frictionMultiplier: 1 },
      systemCurve: { staticHead: 1.8, points: [{ flow: 2e-3, head: 3 }] },
      outlets: [{ name: 'all', share: 1 }],
    });
    expectAddsUp(model, 1e-3);
    const { rows } = listed(model, 1e-3);
    expect(rows.map(({ kind }) => kind)).toEqual(['lift', 'system-curve']);
    // 1.2 m at 2 L/s is 0.3 m at 1 L/s.
    expectClose(rows[0]?.head ?? 0, 1.8, { relative: 1e-12 });
    expectClose(rows[1]?.head ?? 0, 0.3, { relative: 1e-9 });
    expectClose(rows[0]?.share ?? 0, 1.8 / 2.1, { relative: 1e-9 });
  });
});

describe('the rows of the flume', () => {
  const { rows } = listed(modelOf(kelpFlume), 7500 * L);

  it('name every element at its place, the intake first', () => {
    expect(rows.map(({ path, kind }) => `${path.join('/')} ${kind}`)).toEqual([
      'intake intake',
      'suction/0 pipe',
      'suction/1 fitting',
      'discharge/run/0 pipe',
      'discharge/branches/0/run/0 pipe',
      'discharge/branches/0/run/1 valve',
      'discharge/branches/0/outlet outlet',
      'discharge/branches/1 tee-branch',
      'discharge/branches/1/run/0 loss',
      'discharge/branches/1/branches/0/outlet outlet',
      'discharge/branches/1/branches/1/outlet outlet',
    ]);
    expect(rows.map(({ name }) => name)).toContain('far end');
  });

  it('carry K v^2/2g of the intake in the suction bore', () => {
    const [intake] = rows;
    const bore = intake?.bore ?? Number.NaN;
    const velocity = (7500 * L) / ((Math.PI / 4) * bore ** 2);
    expectClose(intake?.head ?? 0, (0.5 * velocity ** 2) / (2 * GRAVITY), { relative: 1e-12 });
  });

  it('carry (v_c^2 + 0.6 v_b^2)/2g at the side of the tee', () => {
    const tee = rows.find(({ kind }) => kind === 'tee-branch');
    const bore = rows.find(({ name }) => name === 'sch80 1-1/2')?.bore ?? Number.NaN;
    const area = (Math.PI / 4) * bore ** 2;
    const combined = (7500 * L) / area;
    const side = (tee?.flow ?? Number.NaN) / area;
    expectClose(tee?.head ?? 0, (combined ** 2 + 0.6 * side ** 2) / (2 * GRAVITY), { relative: 1e-9 });
  });

  it('make every way to an outlet as long as the head of the pump', () => {
    const { head } = modelOf(kelpFlume).system.stateAt(7500 * L);
    const sum = (places: readonly number[]) => places.reduce((total, i) => total + (rows[i]?.head ?? 0), 0);
    const common = [0, 1, 2, 3];
    expectClose(sum([...common, 4, 5, 6]), head, { relative: 1e-9 });
    expectClose(sum([...common, 7, 8, 9]), head, { relative: 1e-9 });
  });

  it('have a trim where one is set', () => {
    const kinds = listed(trimmedModelOf(kelpFlume), 7000 * L).rows.map(({ kind }) => kind);
    expect(kinds.filter((kind) => kind === 'trim')).toHaveLength(1);
  });

  it('are none where no water moves', () => {
    const model = modelOf(kelpFlume);
    expect(lossRows(model, model.system.stateAt(0))).toBeNull();
  });
});

describe('the rows of a stepped run with a reducing tee', () => {
  const model = modelOf(
    loopOf({
      run: [pipe(0.06, 1), pipe(0.05, 1)],
      split: 'tee-90',
      branches: [outlet('on', {}, [pipe(0.05, 1)]), outlet('side', {}, [pipe(0.04, 1)])],
    }),
  );
  const { rows } = listed(model, 7500 * L);

  it('name a step at the place of the pipe after it, and the tee at both branches', () => {
    const named = rows.map(({ path, kind }) => `${path.join('/')} ${kind}`);
    expect(named).toContain('discharge/run/1 bore-change');
    expect(named.filter((one) => one.endsWith('tee-branch'))).toEqual([
      'discharge/branches/0 tee-branch',
      'discharge/branches/1 tee-branch',
    ]);
  });

  it('carry K v^2/2g of the step in the smaller bore', () => {
    const step = rows.find(({ kind }) => kind === 'bore-change');
    const velocity = (7500 * L) / ((Math.PI / 4) * 0.05 ** 2);
    const lossCoefficient = 0.5 * (1 - (0.05 / 0.06) ** 2);
    expect(step?.bore).toBe(0.05);
    expectClose(step?.head ?? 0, (lossCoefficient * velocity ** 2) / (2 * GRAVITY), { relative: 1e-12 });
  });
});
