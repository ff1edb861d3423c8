/** Free outlets that no water reaches. */
import { describe, expect, it } from 'vitest';
import { dutyPoint } from '../../../models/duty/duty-point.ts';
import type { PipeworkLoop } from '../../../models/loop/loop.ts';
import { dryOutlets } from '../../../models/network/dry-outlets.ts';
import { pumpAtSetting } from '../../../models/pump/pump-at-setting.ts';
import { expectClose } from '../../expect-close.ts';
import { DRY, lowAndHigh, raised } from '../../reference/one-way-runs.ts';
import { loopOf, modelOf, networkOf, outlet, pipe, pumpModelOf, solved } from '../example-loops.ts';

function dryOf(loop: PipeworkLoop, setting: number) {
  const model = modelOf(loop);
  const { state } = dutyPoint(model, pumpAtSetting(pumpModelOf(DRY.pump), { setting, count: 1 }));
  if (model.network === null || state === null || state.network === null)
    throw new Error('a pipework has a state');
  return dryOutlets(model.network, state.network);
}

describe('a high outlet into air', () => {
  it.each([
    ['no elevation is stated', undefined, null],
    ['the root lies higher than the water', 1.5, 1.5],
    ['the root lies lower', 0.5, null],
  ])(`is dry where ${'%s'} (${DRY.source})`, (_, highestElevation, airAt) => {
    const [dry, ...others] = dryOf(lowAndHigh(raised, highestElevation), DRY.setting);
    expect(others).toEqual([]);
    expect(dry).toMatchObject({ outlet: { name: 'high' }, airAt });
    expectClose(dry?.head ?? Number.NaN, DRY.head, { relative: DRY.tolerance });
    expectClose(dry?.level ?? Number.NaN, DRY.level, { relative: 1e-12 });
  });

  it('is not where it runs', () => {
    expect(dryOf(lowAndHigh(raised, 1.5), 80)).toEqual([]);
  });
});

describe('dry outlets', () => {
  const branches = [
    outlet('low'),
    {
      run: [pipe(0.03, 1)],
      highestElevation: 0.4,
      branches: [
        { ...outlet('a', { staticHead: 1 }), highestElevation: 0.9 },
        outlet('b', { staticHead: 1.2 }),
        outlet('shut', { staticHead: 1.1 }, [{ valve: 'ball', opening: 0, diameter: 0.03 }]),
      ],
    },
  ];

  it('have the head of the node before them, through lines that rest, and the highest point on their way', () => {
    const network = networkOf(loopOf({ run: [pipe(0.04, 1)], branches }));
    const solution = solved(network, 3e-4);
    const { rootHead } = solution;
    expect(rootHead).toBeLessThan(0.3);
    const dry = dryOutlets(network, solution);
    expect(dry.map(({ outlet: { name }, airAt }) => [name, airAt])).toEqual([
      ['a', 0.9],
      ['b', 0.4],
    ]);
    for (const { head } of dry) expect(head).toBe(solution.heads[0]);
  });

  it('stand full behind a check valve', () => {
    const behind = networkOf(
      loopOf({
        run: [pipe(0.04, 1)],
        branches: [
          outlet('low'),
          {
            run: [pipe(0.03, 1), { valve: 'check-swing' }],
            branches: [outlet('a', { staticHead: 1 }), outlet('b', { staticHead: 1.2 })],
          },
        ],
      }),
    );
    const dry = dryOutlets(behind, solved(behind, 3e-4));
    expect(dry.map(({ head }) => head)).toEqual([1, 1]);
  });
});
